package assize.image;

import assize.text.Parsed;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The chunks of a WebP picture (RFC 9649). */
final class WebpChunks {
  /** The most pixels of a WebP: what reads it takes some 25 bytes for each. */
  static final long MOST_PIXELS = 16_000_000;

  private static final int HEAD = 12;
  private static final int ALPHA = 0x10;
  private static final int START_CODE = 0x2a019d;

  /** Others, of which a file may have millions, are passed over. */
  private static final Set<String> KNOWN =
      Set.of("VP8 ", "VP8L", "ALPH", "EXIF", "ICCP", "ANIM", "ANMF");

  private WebpChunks() {}

  static Parsed<ImageHeader> head(byte[] file) {
    Map<String, ByteBuffer> chunks = new HashMap<>();
    ByteBuffer buffer = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    if (file.length < HEAD + 8) {
      return ImageHeader.endsEarly(ImageFormat.WEBP);
    }
    long end = Integer.toUnsignedLong(buffer.getInt(4)) + 8;
    if (end > file.length) {
      return ImageHeader.endsEarly(ImageFormat.WEBP);
    }
    for (int at = HEAD; at + 8 <= end; ) {
      long length = Integer.toUnsignedLong(buffer.getInt(at + 4));
      if (at + 8 + length > end) {
        return ImageHeader.endsEarly(ImageFormat.WEBP);
      }
      String name = new String(file, at, 4, StandardCharsets.ISO_8859_1);
      if (KNOWN.contains(name)) {
        chunks.putIfAbsent(name, buffer.slice(at + 8, (int) length));
      }
      at += (int) (8 + length + length % 2);
    }
    if (chunks.containsKey("ANMF") || chunks.containsKey("ANIM")) {
      return Parsed.bad("this is a moving WebP picture; save one of its frames as JPEG", 0, 0);
    }
    return head(chunks);
  }

  private static Parsed<ImageHeader> head(Map<String, ByteBuffer> chunks) {
    Optional<int[]> size =
        Optional.ofNullable(chunks.get("VP8 "))
            .flatMap(WebpChunks::lossy)
            .or(() -> Optional.ofNullable(chunks.get("VP8L")).flatMap(WebpChunks::lossless));
    if (size.isEmpty()) {
      return ImageHeader.damaged(ImageFormat.WEBP, "it does not say how large it is");
    }
    int width = size.get()[0];
    int height = size.get()[1];
    if ((long) width * height > MOST_PIXELS) {
      return Parsed.bad(
          "this WebP picture has "
              + Photo.millions((long) width * height)
              + " million pixels; at most 16 million are read: save it as JPEG",
          0,
          0);
    }
    OrientationTransform turn =
        Optional.ofNullable(chunks.get("EXIF"))
            .map(exif -> Orientation.of(withoutPreamble(bytes(exif))))
            .orElse(OrientationTransform.NONE);
    Optional<byte[]> profile =
        Optional.ofNullable(chunks.get("ICCP"))
            .filter(it -> it.capacity() <= ImageHeader.LONGEST_PROFILE)
            .map(WebpChunks::bytes);
    return Parsed.ok(
        new ImageHeader(
            ImageFormat.WEBP, width, height, turn, profile, bare(chunks, width, height)));
  }

  /** Reads the size from the head of a key frame (RFC 6386, 9.1). */
  private static Optional<int[]> lossy(ByteBuffer data) {
    if (data.capacity() < 10 || (data.get(0) & 1) != 0 || (three(data, 3) != START_CODE)) {
      return Optional.empty();
    }
    return sized((three(data, 6) & 0x3fff), (three(data, 7) >> 8 & 0x3fff));
  }

  /** Reads the size from 14 bits each (RFC 9649, 3.4). */
  private static Optional<int[]> lossless(ByteBuffer data) {
    if (data.capacity() < 5 || data.get(0) != 0x2f) {
      return Optional.empty();
    }
    int bits = three(data, 1) | data.get(4) << 24;
    return sized((bits & 0x3fff) + 1, (bits >> 14 & 0x3fff) + 1);
  }

  private static Optional<int[]> sized(int width, int height) {
    return width > 0 && height > 0 ? Optional.of(new int[] {width, height}) : Optional.empty();
  }

  private static int three(ByteBuffer data, int at) {
    return data.get(at) & 0xff | (data.get(at + 1) & 0xff) << 8 | (data.get(at + 2) & 0xff) << 16;
  }

  /** Some programs put the preamble of a JPEG before it. */
  private static byte[] withoutPreamble(byte[] exif) {
    boolean preamble = exif.length > 6 && exif[0] == 'E' && exif[4] == 0 && exif[5] == 0;
    return preamble ? Arrays.copyOfRange(exif, 6, exif.length) : exif;
  }

  private static byte[] bytes(ByteBuffer data) {
    byte[] bytes = new byte[data.capacity()];
    data.get(0, bytes);
    return bytes;
  }

  private static byte[] bare(Map<String, ByteBuffer> chunks, int width, int height) {
    Map<String, ByteBuffer> kept = new LinkedHashMap<>();
    ByteBuffer alpha = chunks.get("ALPH");
    ByteBuffer lossy = chunks.get("VP8 ");
    if (lossy != null && alpha != null) {
      ByteBuffer extended = ByteBuffer.allocate(10).order(ByteOrder.LITTLE_ENDIAN);
      extended.putInt(ALPHA).putShort((short) (width - 1)).put((byte) 0);
      extended.putShort((short) (height - 1)).put((byte) 0);
      kept.put("VP8X", extended);
      kept.put("ALPH", alpha);
    }
    String pixels = lossy != null ? "VP8 " : "VP8L";
    Optional.ofNullable(chunks.get(pixels)).ifPresent(data -> kept.put(pixels, data));
    int length = kept.values().stream().mapToInt(it -> 8 + padded(it)).sum();
    ByteBuffer whole = ByteBuffer.allocate(HEAD + length).order(ByteOrder.LITTLE_ENDIAN);
    whole.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(length + 4);
    whole.put("WEBP".getBytes(StandardCharsets.US_ASCII));
    kept.forEach(
        (name, data) -> {
          whole.put(name.getBytes(StandardCharsets.US_ASCII)).putInt(data.capacity());
          whole.put(whole.position(), data, 0, data.capacity());
          whole.position(whole.position() + padded(data));
        });
    return whole.array();
  }

  private static int padded(ByteBuffer data) {
    return data.capacity() + data.capacity() % 2;
  }
}
