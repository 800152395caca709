package assize.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Each pixel of the smaller picture is the mean of what lies under it, to the nearest number. */
class ShrinkingTest {
  private final Random random = new Random(5);

  @Test
  void eachPixelIsTheMeanOfItsArea() {
    for (int round = 0; round < 300; round++) {
      int width = 1 + random.nextInt(40);
      int height = 1 + random.nextInt(40);
      int[] rgb = random.ints((long) width * height, 0, 0x1000000).toArray();
      int most = 1 + random.nextInt(45);
      Pixels small = Shrinking.of(new Rows(bytes(width, height, rgb), List.of()), most);
      int longest = Math.max(width, height);
      assertThat(Math.max(small.width(), small.height())).isEqualTo(Math.min(most, longest));
      for (int i = 0; i < small.rgb().length; i++) {
        assertThat(small.rgb()[i])
            .as("%s by %s to %s, pixel %s", width, height, most, i)
            .isEqualTo(mean(width, height, rgb, small, i % small.width(), i / small.width()));
      }
    }
  }

  @Test
  void howAPictureIsKeptChangesNothing() {
    for (int round = 0; round < 100; round++) {
      int width = 1 + random.nextInt(40);
      int height = 1 + random.nextInt(40);
      int[] rgb = random.ints((long) width * height, 0, 0x1000000).toArray();
      BufferedImage whole = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
      whole.setRGB(0, 0, width, height, rgb, 0, width);
      int most = 1 + random.nextInt(45);
      List<Box> covered = round % 2 == 0 ? List.of() : List.of(new Box(1000, 2000, 3000, 500));
      Pixels one = Shrinking.of(new Rows(whole, covered), most);
      Pixels other = Shrinking.of(new Rows(bytes(width, height, rgb), covered), most);
      assertThat(other.rgb()).as("%s by %s to %s", width, height, most).isEqualTo(one.rgb());
    }
  }

  /** The longest picture there may be, all white: no sum may run over. */
  @Test
  void theLongestWhiteStaysWhite() {
    int[] rgb = new int[Photo.LONGEST];
    java.util.Arrays.fill(rgb, 0xffffff);
    for (int width : List.of(1, Photo.LONGEST)) {
      int height = Photo.LONGEST / width;
      Pixels small = Shrinking.of(new Rows(bytes(width, height, rgb), List.of()), 1);
      assertThat(small.rgb()).containsExactly(0xffffff);
    }
  }

  private static BufferedImage bytes(int width, int height, int[] rgb) {
    return new Pixels(width, height, rgb).image(ColorSpace.getInstance(ColorSpace.CS_sRGB));
  }

  /** By its definition: each pixel is cut into pieces that are wholly under one of the small. */
  private static int mean(int width, int height, int[] rgb, Pixels small, int x, int y) {
    int color = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      long sum = 0;
      for (int down = y * height; down < (y + 1) * height; down++) {
        for (int right = x * width; right < (x + 1) * width; right++) {
          int from = down / small.height() * width + right / small.width();
          sum += rgb[from] >> shift & 0xff;
        }
      }
      long all = (long) width * height;
      color |= (int) ((2 * sum + all) / (2 * all)) << shift;
    }
    return color;
  }
}
