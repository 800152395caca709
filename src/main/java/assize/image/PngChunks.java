package assize.image;

import assize.text.Parsed;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * The chunks of a PNG up to its end (ISO/IEC 15948).
 *
 * @param end the byte after the last
 */
record PngChunks(byte[] file, List<Chunk> list, int end) {
  static final int SIGNATURE = 8;

  /** One for each row of the longest picture, and more. */
  private static final int MOST = 100_000;

  private static final int AROUND = 12;
  private static final Set<String> PICTURE = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

  PngChunks {
    list = List.copyOf(list);
  }

  /**
   * A chunk.
   *
   * @param from where what it says begins
   * @param to the byte after what it says; four more hold its check sum
   */
  record Chunk(String type, int from, int to) {
    int length() {
      return to - from;
    }

    boolean isPicture() {
      return PICTURE.contains(type);
    }
  }

  static Parsed<PngChunks> of(byte[] file) {
    ByteBuffer buffer = ByteBuffer.wrap(file);
    List<Chunk> list = new ArrayList<>();
    int count = 0;
    int at = SIGNATURE;
    while (at + AROUND <= file.length) {
      if (++count > MOST) {
        return Parsed.bad(
            "a PNG may have at most 100000 chunks; this one has more: save it again as JPEG", 0, 0);
      }
      int length = buffer.getInt(at);
      if (length < 0 || length > file.length - at - AROUND) {
        return ImageHeader.endsEarly(ImageFormat.PNG);
      }
      String type = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
      Chunk chunk = new Chunk(type, at + 8, at + 8 + length);
      CRC32 crc = new CRC32();
      crc.update(file, at + 4, length + 4);
      if (buffer.getInt(chunk.to()) == (int) crc.getValue()) {
        list.add(chunk);
      } else if (chunk.isPicture()) {
        return ImageHeader.damaged(ImageFormat.PNG, "a check sum does not fit");
      }
      at += length + AROUND;
      if (type.equals("IEND")) {
        return Parsed.ok(new PngChunks(file, list, at));
      }
    }
    return ImageHeader.endsEarly(ImageFormat.PNG);
  }

  Parsed<ImageHeader> head() {
    return PngShape.of(this)
        .then(
            shape -> {
              boolean tooLarge = Photo.tooLarge(shape.width(), shape.height()).isPresent();
              return tooLarge || shape.holds(data()).isEnough()
                  ? Parsed.ok(
                      new ImageHeader(
                          ImageFormat.PNG,
                          shape.width(),
                          shape.height(),
                          turn(),
                          profile(),
                          bare()))
                  : ImageHeader.<ImageHeader>endsEarly(ImageFormat.PNG);
            });
  }

  Optional<Chunk> first(String type) {
    return list.stream().filter(chunk -> chunk.type().equals(type)).findFirst();
  }

  byte[] said(Chunk chunk) {
    return Arrays.copyOfRange(file, chunk.from(), chunk.to());
  }

  /** Returns the pieces that hold the compressed pixels. */
  List<ByteBuffer> data() {
    return list.stream()
        .filter(chunk -> chunk.type().equals("IDAT"))
        .map(chunk -> ByteBuffer.wrap(file, chunk.from(), chunk.length()))
        .toList();
  }

  private OrientationTransform turn() {
    return first("eXIf")
        .map(chunk -> Orientation.of(said(chunk)))
        .orElse(OrientationTransform.NONE);
  }

  /**
   * Returns what an iCCP chunk holds (11.3.3.3): a name, a zero, the method, the packed profile.
   */
  private Optional<byte[]> profile() {
    return first("iCCP")
        .map(this::said)
        .flatMap(
            said -> {
              int name = new String(said, StandardCharsets.ISO_8859_1).indexOf('\0');
              return name < 0 || name + 2 > said.length
                  ? Optional.<byte[]>empty()
                  : BoundedInflater.whole(
                      ByteBuffer.wrap(said, name + 2, said.length - name - 2),
                      ImageHeader.LONGEST_PROFILE);
            });
  }

  /** Returns the file with nothing but the chunks that make the picture. */
  byte[] bare() {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(end);
    kept.write(file, 0, SIGNATURE);
    for (Chunk chunk : list) {
      if (chunk.isPicture()) {
        kept.write(file, chunk.from() - 8, chunk.length() + AROUND);
      }
    }
    return kept.toByteArray();
  }
}
