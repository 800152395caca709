package assize.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is packed here is unpacked by zlib as Java brings it. */
class DeterministicDeflaterTest {
  private static byte[] unpacked(byte[] packed) throws IOException {
    try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(packed))) {
      return in.readAllBytes();
    }
  }

  /** From one letter, which repeats at once, to all, which hardly repeat. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 17, 256})
  void comesBackAsItWas(int letters) throws IOException {
    Random random = new Random(letters);
    for (int length : new int[] {0, 1, 2, 3, 4, 5, 257, 258, 259, 260, 5_000, 100_000}) {
      byte[] bytes = new byte[length];
      for (int i = 0; i < length; i++) {
        bytes[i] = (byte) random.nextInt(letters);
      }
      assertThat(unpacked(DeterministicDeflater.zlib(bytes))).isEqualTo(bytes);
    }
  }

  /** Distances up to the greatest, 32,768, and lengths up to 258 (RFC 1951, 3.2.5). */
  @Test
  void comesBackWhereItRepeatsFarAway() throws IOException {
    Random random = new Random(5);
    byte[] bytes = new byte[200_000];
    random.nextBytes(bytes);
    for (int at = 40_000; at + 400 < bytes.length; at += 400) {
      int back = 1 + random.nextInt(33_000);
      System.arraycopy(bytes, at - back, bytes, at, 4 + random.nextInt(300));
    }
    byte[] packed = DeterministicDeflater.zlib(bytes);
    assertThat(unpacked(packed)).isEqualTo(bytes);
    assertThat(packed.length).isLessThan(bytes.length * 3 / 4);
  }
}
