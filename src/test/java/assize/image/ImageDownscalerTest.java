package assize.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Each pixel of the smaller picture is the mean of what lies under it, to the nearest number. */
class ImageDownscalerTest {
  private final Random random = new Random(5);

  @Test
  void eachPixelIsTheMeanOfItsArea() {
    for (int round = 0; round < 300; round++) {
      Pixels whole = any();
      int most = 1 + random.nextInt(45);
      Pixels small = ImageDownscaler.of(new PixelRows(whole.image(Pixels.SRGB), List.of()), most);
      int longest = Math.max(whole.width(), whole.height());
      assertThat(Math.max(small.width(), small.height())).isEqualTo(Math.min(most, longest));
      for (int i = 0; i < small.rgb().length; i++) {
        assertThat(small.rgb()[i])
            .as("%s by %s to %s, pixel %s", whole.width(), whole.height(), most, i)
            .isEqualTo(mean(whole, small, i % small.width(), i / small.width()));
      }
    }
  }

  @Test
  void howAPictureIsKeptChangesNothing() {
    for (int round = 0; round < 100; round++) {
      Pixels whole = any();
      int width = whole.width();
      int height = whole.height();
      BufferedImage kept = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
      kept.setRGB(0, 0, width, height, whole.rgb(), 0, width);
      int most = 1 + random.nextInt(45);
      List<BlackoutBox> covered =
          round % 2 == 0 ? List.of() : List.of(new BlackoutBox(1000, 2000, 3000, 500));
      Pixels one = ImageDownscaler.of(new PixelRows(kept, covered), most);
      Pixels other = ImageDownscaler.of(new PixelRows(whole.image(Pixels.SRGB), covered), most);
      assertThat(other.rgb()).as("%s by %s to %s", width, height, most).isEqualTo(one.rgb());
    }
  }

  /** The longest picture there may be, all white: no sum may run over. */
  @Test
  void theLongestWhiteStaysWhite() {
    int[] rgb = new int[Photo.LONGEST];
    Arrays.fill(rgb, 0xffffff);
    for (int width : List.of(1, Photo.LONGEST)) {
      Pixels white = new Pixels(width, Photo.LONGEST / width, rgb);
      Pixels small = ImageDownscaler.of(new PixelRows(white.image(Pixels.SRGB), List.of()), 1);
      assertThat(small.rgb()).containsExactly(0xffffff);
    }
  }

  private Pixels any() {
    int width = 1 + random.nextInt(40);
    int height = 1 + random.nextInt(40);
    return new Pixels(width, height, random.ints((long) width * height, 0, 0x1000000).toArray());
  }

  /** By its definition: each pixel is cut into pieces that are wholly under one of the small. */
  private static int mean(Pixels whole, Pixels small, int x, int y) {
    int color = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      long sum = 0;
      for (int down = y * whole.height(); down < (y + 1) * whole.height(); down++) {
        for (int right = x * whole.width(); right < (x + 1) * whole.width(); right++) {
          int from = down / small.height() * whole.width() + right / small.width();
          sum += whole.rgb()[from] >> shift & 0xff;
        }
      }
      long all = (long) whole.width() * whole.height();
      color |= (int) ((2 * sum + all) / (2 * all)) << shift;
    }
    return color;
  }
}
