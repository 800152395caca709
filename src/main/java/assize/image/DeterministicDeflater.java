package assize.image;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.zip.Adler32;

/**
 * Packs bytes as zlib does (RFC 1950 and 1951), with its fixed code alone: not as small as it could
 * be, yet the same on every machine, which the libraries of different systems are not.
 */
final class DeterministicDeflater {
  private static final int WINDOW = 32_768;
  private static final int SHORTEST = 4;
  private static final int LONGEST = 258;
  private static final int TRIES = 32;
  private static final int HASH_BITS = 15;
  private static final int NOTHING = -1;

  private final byte[] bytes;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final int[] last = new int[1 << HASH_BITS];
  private final int[] before;
  private long held;
  private int bits;

  private DeterministicDeflater(byte[] bytes) {
    this.bytes = bytes;
    this.before = new int[bytes.length];
    Arrays.fill(last, NOTHING);
  }

  static byte[] zlib(byte[] bytes) {
    return new DeterministicDeflater(bytes).packed();
  }

  private byte[] packed() {
    out.write(0x78);
    out.write(0x01);
    put(0b011, 3); // the last block, by the fixed code
    for (int at = 0; at < bytes.length; ) {
      int from = longest(at);
      int length = from == NOTHING ? 0 : common(from, at);
      if (length >= SHORTEST) {
        length(length);
        distance(at - from);
      } else {
        length = 1;
        literal(bytes[at] & 0xff);
      }
      for (int end = at + length; at < end; at++) {
        remember(at);
      }
    }
    literal(256);
    put(0, (8 - bits) % 8);
    Adler32 sum = new Adler32();
    sum.update(bytes);
    for (int shift = 24; shift >= 0; shift -= 8) {
      out.write((int) (sum.getValue() >> shift));
    }
    return out.toByteArray();
  }

  /** Returns where the longest of what stands here stood before. */
  private int longest(int at) {
    int best = NOTHING;
    int length = SHORTEST - 1;
    if (at + SHORTEST <= bytes.length) {
      int from = last[hash(at)];
      for (int i = 0; i < TRIES && from != NOTHING && at - from <= WINDOW; i++) {
        int common = common(from, at);
        if (common > length) {
          best = from;
          length = common;
        }
        from = before[from];
      }
    }
    return best;
  }

  private int common(int from, int at) {
    int most = Math.min(LONGEST, bytes.length - at);
    int length = 0;
    while (length < most && bytes[from + length] == bytes[at + length]) {
      length++;
    }
    return length;
  }

  private void remember(int at) {
    if (at + SHORTEST <= bytes.length) {
      int hash = hash(at);
      before[at] = last[hash];
      last[hash] = at;
    }
  }

  private int hash(int at) {
    int four =
        bytes[at] & 0xff
            | (bytes[at + 1] & 0xff) << 8
            | (bytes[at + 2] & 0xff) << 16
            | bytes[at + 3] << 24;
    return four * 0x9e3779b1 >>> 32 - HASH_BITS;
  }

  /** Writes a byte, the end (256) or the code of a length (RFC 1951, 3.2.6). */
  private void literal(int value) {
    if (value < 144) {
      code(0x30 + value, 8);
    } else if (value < 256) {
      code(0x190 + value - 144, 9);
    } else if (value < 280) {
      code(value - 256, 7);
    } else {
      code(0xc0 + value - 280, 8);
    }
  }

  /** Writes a length of 3 to 258 (RFC 1951, 3.2.5): four codes for each number of further bits. */
  private void length(int length) {
    int over = length - 3;
    if (length == LONGEST) {
      literal(285);
    } else if (over < 8) {
      literal(257 + over);
    } else {
      int further = 29 - Integer.numberOfLeadingZeros(over);
      literal(257 + 4 * further + (over >> further));
      put(over & (1 << further) - 1, further);
    }
  }

  /** Writes a distance of 1 to 32,768: two codes for each number of further bits. */
  private void distance(int distance) {
    int over = distance - 1;
    if (over < 4) {
      code(over, 5);
    } else {
      int further = 30 - Integer.numberOfLeadingZeros(over);
      code(2 * further + (over >> further), 5);
      put(over & (1 << further) - 1, further);
    }
  }

  /** Writes a code, its first bit first. */
  private void code(int code, int length) {
    put(Integer.reverse(code) >>> 32 - length, length);
  }

  /** Writes bits, the last first. */
  private void put(int value, int length) {
    held |= (long) value << bits;
    bits += length;
    while (bits >= 8) {
      out.write((int) held);
      held >>= 8;
      bits -= 8;
    }
  }
}
