package assize.image;

import assize.image.JpegSegments.Segment;
import assize.text.Parsed;
import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the head of a JPEG. */
final class JpegHead {
  private static final String EXIF = "Exif";
  private static final String ICC = "ICC_PROFILE";

  /** A progressive picture has about 10 scans; each takes as long as the whole picture. */
  private static final int MOST_SCANS = 100;

  /** As many as 10 scans of the largest picture; more would take longer than anybody waits. */
  private static final long MOST_OF_ALL_SCANS = 500_000_000;

  /** The decoder holds all of a picture of several scans at once. */
  private static final long MOST_IN_SCANS = 50_000_000;

  private static final byte[] START = {(byte) 0xff, (byte) 0xd8};
  private static final byte[] END = {(byte) 0xff, (byte) 0xd9};

  private JpegHead() {}

  static Parsed<ImageHeader> of(byte[] file) {
    return JpegSegments.of(file).then(JpegHead::of);
  }

  private static Parsed<ImageHeader> of(JpegSegments segments) {
    byte[] file = segments.file();
    List<Segment> frames = segments.list().stream().filter(Segment::isFrame).toList();
    long scans = segments.list().stream().filter(one -> one.marker() == JpegSegments.SOS).count();
    if (frames.size() != 1 || scans == 0 || frames.get(0).length() < 6) {
      return ImageHeader.damaged(ImageFormat.JPEG, "it does not say how large it is");
    }
    Segment frame = frames.get(0);
    int height = JpegSegments.two(file, frame.from() + 1);
    int width = JpegSegments.two(file, frame.from() + 3);
    int components = JpegSegments.unsigned(file, frame.from() + 5);
    if (width == 0 || height == 0) {
      return ImageHeader.damaged(ImageFormat.JPEG, "it does not say how large it is");
    }
    if (components == 4) {
      return Parsed.bad(
          "this JPEG has the colors of a printing press (CMYK); save it again as JPEG with RGB"
              + " colors in the photo program",
          0,
          0);
    }
    boolean usual = frame.marker() <= JpegSegments.SOF2 && file[frame.from()] == 8;
    if (!usual || components != 1 && components != 3 || areTooMany(scans, (long) width * height)) {
      return Parsed.bad("this is a rare kind of JPEG; save it again as an ordinary JPEG", 0, 0);
    }
    if (scans > 1 && (long) width * height > MOST_IN_SCANS) {
      return Parsed.bad(
          "this JPEG has "
              + Photo.millions((long) width * height)
              + " million pixels, kept so that none is whole before the end; at most 50 million of"
              + " this kind are read: save it as an ordinary JPEG, not a progressive one",
          0,
          0);
    }
    return Parsed.ok(
        new ImageHeader(
            ImageFormat.JPEG, width, height, turn(segments), profile(segments), bare(segments)));
  }

  private static boolean areTooMany(long scans, long pixels) {
    return scans > MOST_SCANS || pixels <= MOST_IN_SCANS && scans * pixels > MOST_OF_ALL_SCANS;
  }

  private static OrientationTransform turn(JpegSegments segments) {
    return segments.list().stream()
        .filter(one -> one.marker() == JpegSegments.APP1 && segments.begins(one, EXIF))
        .findFirst()
        .map(
            one ->
                Orientation.of(
                    Arrays.copyOfRange(segments.file(), one.from() + EXIF.length() + 2, one.to())))
        .orElse(OrientationTransform.NONE);
  }

  /**
   * Puts the parts of a profile together (ICC.1:2010, B.4): each has its number and their count.
   */
  private static Optional<byte[]> profile(JpegSegments segments) {
    Map<Integer, byte[]> parts = new TreeMap<>();
    int head = ICC.length() + 3;
    for (Segment one : segments.list()) {
      if (one.marker() == JpegSegments.APP2 && segments.begins(one, ICC) && one.length() > head) {
        parts.put(
            JpegSegments.unsigned(segments.file(), one.from() + head - 2),
            Arrays.copyOfRange(segments.file(), one.from() + head, one.to()));
      }
    }
    int length = parts.values().stream().mapToInt(part -> part.length).sum();
    if (length == 0 || length > ImageHeader.LONGEST_PROFILE) {
      return Optional.empty();
    }
    ByteArrayOutputStream whole = new ByteArrayOutputStream(length);
    parts.values().forEach(whole::writeBytes);
    return Optional.of(whole.toByteArray());
  }

  /** Keeps what makes the pixels, and what says how their three numbers are meant. */
  private static byte[] bare(JpegSegments segments) {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(segments.end());
    kept.writeBytes(START);
    for (Segment one : segments.list()) {
      if (one.marker() == JpegSegments.APP0 && segments.begins(one, "JFIF")) {
        kept.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1});
        kept.writeBytes(new byte[] {0, 0, 1, 0, 1, 0, 0});
      } else if (isKept(segments, one)) {
        int start = one.marker() == JpegSegments.SCAN ? one.from() : one.from() - 4;
        kept.write(segments.file(), start, one.to() - start);
      }
    }
    kept.writeBytes(END);
    return kept.toByteArray();
  }

  private static boolean isKept(JpegSegments segments, Segment one) {
    return switch (one.marker()) {
      case JpegSegments.APP14 -> segments.file()[one.from()] == 'A' && one.length() == 12;
      case JpegSegments.SCAN,
          JpegSegments.SOS,
          JpegSegments.DQT,
          JpegSegments.DHT,
          JpegSegments.DRI ->
          true;
      default -> one.isFrame();
    };
  }
}
