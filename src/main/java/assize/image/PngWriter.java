package assize.image;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * Writes a picture as PNG (ISO/IEC 15948): 8 bits of red, green and blue, the same bytes on every
 * machine, since it packs them itself.
 */
final class PngWriter {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int NONE = 0;
  private static final int SUB = 1;
  private static final int UP = 2;

  private PngWriter() {}

  static byte[] png(Pixels pixels) {
    ByteBuffer head = ByteBuffer.allocate(13);
    head.putInt(pixels.width()).putInt(pixels.height()).put((byte) 8).put((byte) 2);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    chunk(out, "IHDR", head.array());
    chunk(out, "IDAT", DeterministicDeflater.zlib(filtered(pixels)));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] said) {
    ByteBuffer chunk = ByteBuffer.allocate(said.length + 12);
    chunk.putInt(said.length).put(type.getBytes(StandardCharsets.US_ASCII)).put(said);
    CRC32 crc = new CRC32();
    crc.update(chunk.array(), 4, said.length + 4);
    chunk.putInt((int) crc.getValue());
    out.writeBytes(chunk.array());
  }

  /** Chooses for each row the filter (clause 9) whose bytes are nearest to zero. */
  private static byte[] filtered(Pixels pixels) {
    int length = 3 * pixels.width();
    byte[] all = new byte[pixels.height() * (length + 1)];
    byte[] above = new byte[length];
    for (int y = 0; y < pixels.height(); y++) {
      byte[] row = row(pixels, y);
      byte[] best = filtered(NONE, row, above);
      for (int filter : new int[] {SUB, UP}) {
        byte[] other = filtered(filter, row, above);
        best = distance(other) < distance(best) ? other : best;
      }
      System.arraycopy(best, 0, all, y * (length + 1), length + 1);
      above = row;
    }
    return all;
  }

  private static byte[] row(Pixels pixels, int y) {
    byte[] row = new byte[3 * pixels.width()];
    for (int x = 0; x < pixels.width(); x++) {
      int rgb = pixels.rgb()[y * pixels.width() + x];
      row[3 * x] = (byte) (rgb >> 16);
      row[3 * x + 1] = (byte) (rgb >> 8);
      row[3 * x + 2] = (byte) rgb;
    }
    return row;
  }

  private static byte[] filtered(int filter, byte[] row, byte[] above) {
    byte[] filtered = new byte[row.length + 1];
    filtered[0] = (byte) filter;
    for (int i = 0; i < row.length; i++) {
      int before = filter == SUB && i >= 3 ? row[i - 3] : filter == UP ? above[i] : 0;
      filtered[i + 1] = (byte) (row[i] - before);
    }
    return filtered;
  }

  private static long distance(byte[] filtered) {
    long sum = 0;
    for (int i = 1; i < filtered.length; i++) {
      sum += Math.abs(filtered[i]);
    }
    return sum;
  }
}
