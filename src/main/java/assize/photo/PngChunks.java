package assize.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/** The chunks of a PNG (ISO/IEC 15948): keeps those that make the picture and drops all others. */
final class PngChunks {
  private static final int SIGNATURE = 8;
  private static final Set<String> PICTURE = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");

  private PngChunks() {}

  static byte[] bare(byte[] file) throws IOException {
    ByteArrayOutputStream kept = new ByteArrayOutputStream(file.length);
    kept.write(file, 0, SIGNATURE);
    ByteBuffer buffer = ByteBuffer.wrap(file);
    int at = SIGNATURE;
    while (at + 12 <= file.length) {
      int length = buffer.getInt(at);
      if (length < 0 || length > file.length - at - 12) {
        throw new IOException("a chunk is longer than the file");
      }
      String type = new String(file, at + 4, 4, StandardCharsets.US_ASCII);
      if (PICTURE.contains(type)) {
        kept.write(file, at, length + 12);
      }
      if (type.equals("IEND")) {
        return kept.toByteArray();
      }
      at += length + 12;
    }
    throw new IOException("the file ends before the picture");
  }
}
