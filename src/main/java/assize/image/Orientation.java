package assize.image;

import com.drew.imaging.tiff.TiffProcessingException;
import com.drew.imaging.tiff.TiffReader;
import com.drew.lang.ByteArrayReader;
import com.drew.lang.RandomAccessReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.tiff.DirectoryTiffHandler;
import java.io.IOException;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Reads of all that a camera writes only how the picture was held (Exif 2.32, tag 0x0112). */
final class Orientation extends DirectoryTiffHandler {
  /** A segment of a JPEG has at most this; a longer text of another kind is not looked at. */
  private static final int LONGEST = 1 << 16;

  private Orientation(ExifIFD0Directory directory) {
    super(new Metadata(), new ExifIFD0Directory());
    pushDirectory(directory);
  }

  /**
   * Returns what makes the picture upright.
   *
   * @param exif from the mark of its byte order on (TIFF 6.0, section 2)
   */
  static OrientationTransform of(byte[] exif) {
    ExifIFD0Directory first = new ExifIFD0Directory();
    try {
      if (exif.length <= LONGEST) {
        new TiffReader().processTiff(new ByteArrayReader(exif), new Orientation(first), 0);
      }
    } catch (TiffProcessingException | IOException | RuntimeException e) {
      // what stands before the fault still holds; it is not the picture that is damaged
      return turn(first);
    }
    return turn(first);
  }

  private static OrientationTransform turn(ExifIFD0Directory first) {
    Integer value = first.getInteger(ExifIFD0Directory.TAG_ORIENTATION);
    return OrientationTransform.of(value == null ? 1 : value);
  }

  @Override
  public void setTiffMarker(int marker) {}

  @Override
  public boolean tryEnterSubIfd(int tag) {
    return false;
  }

  @Override
  public boolean hasFollowerIfd() {
    return false;
  }

  @Override
  public @Nullable Long tryCustomProcessFormat(int tag, int format, long count) {
    return null;
  }

  /** Passes over every tag but the one. */
  @Override
  public boolean customProcessTag(
      int offset, Set<Integer> seen, int tiff, RandomAccessReader reader, int tag, int length) {
    return tag != ExifIFD0Directory.TAG_ORIENTATION;
  }
}
