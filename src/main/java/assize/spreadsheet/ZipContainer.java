package assize.spreadsheet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * What lies in a ZIP file, by the list at its end (PKWARE's APPNOTE.TXT 6.3, sections 4.3.7, 4.3.12
 * and 4.3.16, from memory), as spreadsheets read it. The JDK's reader of streams refuses what the
 * library writes, and its other one wants a file.
 */
final class ZipContainer {
  private static final int END = 0x06054b50;
  private static final int LISTED = 0x02014b50;
  private static final int LOCAL = 0x04034b50;
  private static final int END_LENGTH = 22;
  private static final int LISTED_LENGTH = 46;
  private static final int LOCAL_LENGTH = 30;
  private static final int LONGEST_REMARK = 65_535;
  private static final int STORED = 0;
  private static final int DEFLATED = 8;
  private static final int BUFFER = 64 * 1024;

  private final ByteBuffer file;
  private final long most;
  private long inflated;

  private ZipContainer(byte[] file, long most) {
    this.file = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    this.most = most;
  }

  /** One file in it. */
  record Part(String name, byte[] bytes) {}

  /** What is to become of a part. */
  @FunctionalInterface
  interface Taking {
    void take(Part part) throws UnreadableTableException;
  }

  /**
   * Unpacks every part in its order.
   *
   * @param most how many bytes all of them may have
   * @param parts how many there may be
   */
  static void read(byte[] file, long most, int parts, Taking taking)
      throws UnreadableTableException {
    try {
      new ZipContainer(file, most).read(parts, taking);
    } catch (IndexOutOfBoundsException | DataFormatException e) {
      throw broken();
    }
  }

  private static UnreadableTableException broken() {
    return UnreadableTableException.damaged(
        "it ends too early, or a piece of it is not what it says it is");
  }

  private void read(int parts, Taking taking) throws UnreadableTableException, DataFormatException {
    int end = end();
    int count = file.getShort(end + 10) & 0xFFFF;
    int at = file.getInt(end + 16);
    if (count > parts) {
      throw UnreadableTableException.tooMuch();
    }
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (file.getInt(at) != LISTED) {
        throw broken();
      }
      starts.add(at);
      at += LISTED_LENGTH + length(at + 28) + length(at + 30) + length(at + 32);
    }
    for (int start : starts) {
      taking.take(part(start));
    }
  }

  private int end() throws UnreadableTableException {
    int first = Math.max(0, file.capacity() - END_LENGTH - LONGEST_REMARK);
    for (int at = file.capacity() - END_LENGTH; at >= first; at--) {
      if (file.getInt(at) == END) {
        return at;
      }
    }
    throw broken();
  }

  private int length(int at) {
    return file.getShort(at) & 0xFFFF;
  }

  private Part part(int listed) throws UnreadableTableException, DataFormatException {
    boolean locked = (file.getShort(listed + 8) & 1) != 0;
    int method = file.getShort(listed + 10);
    int packed = file.getInt(listed + 20);
    int local = file.getInt(listed + 42);
    if (locked || packed < 0 || file.getInt(local) != LOCAL) {
      throw broken();
    }
    String name =
        new String(bytes(listed + LISTED_LENGTH, length(listed + 28)), StandardCharsets.UTF_8);
    byte[] data = bytes(local + LOCAL_LENGTH + length(local + 26) + length(local + 28), packed);
    byte[] bytes = unpacked(method, data);
    CRC32 sum = new CRC32();
    sum.update(bytes);
    if ((int) sum.getValue() != file.getInt(listed + 16)) {
      throw broken();
    }
    return new Part(name, bytes);
  }

  private byte[] bytes(int from, int length) {
    byte[] bytes = new byte[Math.min(length, file.capacity())];
    file.get(from, bytes);
    return bytes;
  }

  private byte[] unpacked(int method, byte[] data)
      throws UnreadableTableException, DataFormatException {
    if (method == STORED) {
      count(data.length);
      return data;
    }
    if (method != DEFLATED) {
      throw broken();
    }
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(data);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] buffer = new byte[BUFFER];
      while (!inflater.finished()) {
        int read = inflater.inflate(buffer);
        if (read == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
          throw broken();
        }
        count(read);
        out.write(buffer, 0, read);
      }
      return out.toByteArray();
    } finally {
      inflater.end();
    }
  }

  private void count(int more) throws UnreadableTableException {
    inflated += more;
    if (inflated > most) {
      throw UnreadableTableException.tooMuch();
    }
  }
}
