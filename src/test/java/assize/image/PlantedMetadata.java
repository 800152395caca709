package assize.image;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/** Puts into pictures what a camera, a phone or a program would, and what must not travel. */
final class PlantedMetadata {
  /** Stands in every text that is planted. */
  static final String SECRET = "SECRET OF THE OWNER";

  private static final int ASCII = 2;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;

  private PlantedMetadata() {}

  /**
   * One field of a TIFF directory (TIFF 6.0, section 2): 12 bytes, and what does not fit in them.
   */
  private record Field(int tag, int type, int count, byte[] value) {}

  /** Writes Exif: how it was held, who owns what, where it was taken, and a small copy. */
  static byte[] exif(int orientation, ByteOrder order) {
    byte[] owner = text(SECRET);
    Field[] first = {
      new Field(0x0112, SHORT, 1, two(orientation, order)),
      new Field(0x013b, ASCII, owner.length, owner),
      new Field(0x8769, LONG, 1, four(0, order)),
      new Field(0x8825, LONG, 1, four(0, order))
    };
    byte[] serial = text("SERIAL " + SECRET);
    Field[] camera = {new Field(0xa431, ASCII, serial.length, serial)};
    Field[] place = {
      new Field(1, ASCII, 2, text("N")),
      new Field(2, RATIONAL, 3, degrees(48, order)),
      new Field(3, ASCII, 2, text("E")),
      new Field(4, RATIONAL, 3, degrees(11, order))
    };
    byte[] small = jpegWith(0xfe, text(SECRET), CornerColors.file("jpeg", 16, 16));
    Field[] second = {
      new Field(0x0201, LONG, 1, four(0, order)),
      new Field(0x0202, LONG, 1, four(small.length, order))
    };
    int cameraAt = 8 + length(first);
    int placeAt = cameraAt + length(camera);
    int secondAt = placeAt + length(place);
    first[2] = new Field(0x8769, LONG, 1, four(cameraAt, order));
    first[3] = new Field(0x8825, LONG, 1, four(placeAt, order));
    int smallAt = secondAt + length(second);
    second[0] = new Field(0x0201, LONG, 1, four(smallAt, order));
    ByteBuffer out = ByteBuffer.allocate(smallAt + small.length).order(order);
    out.put(text(order == ByteOrder.BIG_ENDIAN ? "MM" : "II"), 0, 2).putShort((short) 42).putInt(8);
    directory(out, first, secondAt);
    directory(out, camera, 0);
    directory(out, place, 0);
    directory(out, second, 0);
    return out.put(small).array();
  }

  private static int length(Field... fields) {
    return 6
        + Arrays.stream(fields)
            .mapToInt(it -> 12 + (it.value().length > 4 ? it.value().length : 0))
            .sum();
  }

  private static void directory(ByteBuffer out, Field[] fields, int next) {
    int beyond = out.position() + 6 + 12 * fields.length;
    ByteArrayOutputStream rest = new ByteArrayOutputStream();
    out.putShort((short) fields.length);
    for (Field one : fields) {
      out.putShort((short) one.tag()).putShort((short) one.type()).putInt(one.count());
      if (one.value().length > 4) {
        out.putInt(beyond + rest.size());
        rest.writeBytes(one.value());
      } else {
        out.put(Arrays.copyOf(one.value(), 4));
      }
    }
    out.putInt(next).put(rest.toByteArray());
  }

  private static byte[] degrees(int whole, ByteOrder order) {
    ByteBuffer out = ByteBuffer.allocate(24).order(order);
    return out.putInt(whole).putInt(1).putInt(30).putInt(1).putInt(0).putInt(1).array();
  }

  private static byte[] two(int value, ByteOrder order) {
    return ByteBuffer.allocate(2).order(order).putShort((short) value).array();
  }

  private static byte[] four(int value, ByteOrder order) {
    return ByteBuffer.allocate(4).order(order).putInt(value).array();
  }

  /** Returns a text with a zero behind it. */
  static byte[] text(String text) {
    return (text + "\0").getBytes(StandardCharsets.ISO_8859_1);
  }

  static byte[] join(byte[]... parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      out.writeBytes(part);
    }
    return out.toByteArray();
  }

  /** Puts a segment (ISO/IEC 10918-1, B.1.1.4) behind the start of a JPEG. */
  static byte[] jpegWith(int marker, byte[] said, byte[] jpeg) {
    ByteBuffer head = ByteBuffer.allocate(4);
    head.put((byte) 0xff).put((byte) marker).putShort((short) (said.length + 2));
    return join(
        Arrays.copyOf(jpeg, 2), head.array(), said, Arrays.copyOfRange(jpeg, 2, jpeg.length));
  }

  static byte[] jpegWithExif(byte[] exif, byte[] jpeg) {
    return jpegWith(0xe1, join(text("Exif\0"), exif), jpeg);
  }

  /** Puts a chunk (ISO/IEC 15948, 5.3) behind the first of a PNG. */
  static byte[] pngWith(String type, byte[] said, byte[] png) {
    int first = 33;
    return join(
        Arrays.copyOf(png, first), chunk(type, said), Arrays.copyOfRange(png, first, png.length));
  }

  static byte[] chunk(String type, byte[] said) {
    ByteBuffer chunk = ByteBuffer.allocate(said.length + 12);
    chunk.putInt(said.length).put(type.getBytes(StandardCharsets.US_ASCII)).put(said);
    CRC32 crc = new CRC32();
    crc.update(chunk.array(), 4, said.length + 4);
    return chunk.putInt((int) crc.getValue()).array();
  }

  static byte[] packed(byte[] bytes) {
    Deflater deflater = new Deflater();
    deflater.setInput(bytes);
    deflater.finish();
    byte[] out = new byte[bytes.length + 100];
    int length = deflater.deflate(out);
    deflater.end();
    return Arrays.copyOf(out, length);
  }

  /** Puts chunks of every kind (RFC 9649, 2.7) around what a plain WebP holds. */
  static byte[] webpWith(byte[] exif, byte[] webp) {
    byte[] shape = {0x0c, 0, 0, 0, 47, 0, 0, 31, 0, 0};
    byte[] all =
        join(
            text("WEBP"),
            riff("VP8X", shape),
            Arrays.copyOfRange(webp, 12, webp.length),
            riff("EXIF", exif),
            riff("XMP ", text(SECRET)));
    byte[] body = join(Arrays.copyOf(all, 4), Arrays.copyOfRange(all, 5, all.length));
    return join(riff("RIFF", body), text(SECRET));
  }

  private static byte[] riff(String name, byte[] said) {
    return ByteBuffer.allocate(8 + said.length + said.length % 2)
        .order(ByteOrder.LITTLE_ENDIAN)
        .put(name.getBytes(StandardCharsets.US_ASCII))
        .putInt(said.length)
        .put(said)
        .array();
  }
}
