package assize.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class BoundedImageStreamTest {
  /** Where a lossless WebP says how wide and high it is: 14 bits each (RFC 9649, 3.4). */
  private static final int SIZE_AT = 21;

  @Test
  void whoeverAsksOnBehindTheEndIsStopped() throws IOException {
    try (BoundedImageStream stream = new BoundedImageStream(new byte[] {7})) {
      assertThat(stream.read()).isEqualTo(7);
      for (int i = 0; i < 1000; i++) {
        assertThat(stream.read()).isEqualTo(-1);
      }
      assertThatThrownBy(stream::read).isInstanceOf(IOException.class);
      assertThatThrownBy(() -> stream.read(new byte[4], 0, 4)).isInstanceOf(IOException.class);
    }
  }

  /** Its decoder takes zeros for what is missing, millions of pixels of them. */
  @Test
  void aPictureOfManyPixelsAndFewBytesIsRefused() throws IOException {
    byte[] whole = Files.readAllBytes(Path.of("src/test/resources/assize/image/lossless.webp"));
    byte[] cut = Arrays.copyOf(whole, 120);
    ByteBuffer bytes = ByteBuffer.wrap(cut).order(ByteOrder.LITTLE_ENDIAN);
    bytes.putInt(4, cut.length - 8).putInt(16, cut.length - 20);
    int old = bytes.getInt(SIZE_AT);
    bytes.putInt(SIZE_AT, old & 0xF0000000 | 3999 << 14 | 3999);
    String said = Photo.of(cut, List.of()).match(it -> "shown", it -> it.reason());
    assertThat(said).contains("damaged");
  }
}
