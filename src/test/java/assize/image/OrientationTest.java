package assize.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteOrder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A picture held in each of the eight ways comes out upright: what the 0th row and the 0th column
 * are of the scene is as CIPA DC-008-2019 (Exif 2.32), 4.6.5.1.4, tag 0x0112, has it.
 */
class OrientationTest {
  private static final int WIDTH = 60;
  private static final int HEIGHT = 40;

  private static Photo turned(byte[] file, BlackoutBox... covered) {
    return Photo.of(file, List.of(covered)).toOptional().orElseThrow();
  }

  private static byte[] jpeg(int orientation, ByteOrder order) {
    return Planted.jpegWithExif(
        Planted.exif(orientation, order), Corners.file("jpeg", WIDTH, HEIGHT));
  }

  /** As stored, the corners are red and green above, blue and white below. */
  @ParameterizedTest
  @CsvSource({
    "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"
  })
  void comesOutUpright(int orientation, String corners) {
    byte[] png = Corners.file("png", WIDTH, HEIGHT);
    for (ByteOrder order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
      byte[] exif = Planted.exif(orientation, order);
      byte[] webp = Planted.webpWith(exif, Corners.webp("lossless"));
      for (byte[] file :
          List.of(jpeg(orientation, order), Planted.pngWith("eXIf", exif, png), webp)) {
        Photo photo = turned(file);
        assertThat(Corners.of(photo)).isEqualTo(corners);
        assertThat(photo.width() > photo.height()).isEqualTo(orientation < 5);
      }
    }
  }

  @Test
  void aWebpOfTheFormatsOwnToolsComesOutUpright() {
    assertThat(Corners.of(turned(Corners.webp("turned")))).isEqualTo("BRWG");
  }

  /** The box is that of the upper right corner, seen upright. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aBoxIsPaintedWhereItIsSeenUpright(int orientation) {
    byte[] exif = Planted.exif(orientation, ByteOrder.BIG_ENDIAN);
    byte[] png = Planted.pngWith("eXIf", exif, Corners.file("png", WIDTH, HEIGHT));
    String before = Corners.of(turned(png));
    String after = Corners.of(turned(png, new BlackoutBox(5000, 0, 5000, 5000)));
    assertThat(after).isEqualTo(before.charAt(0) + "?" + before.substring(2));
    java.awt.image.BufferedImage seen =
        Corners.seen(turned(png, new BlackoutBox(5000, 0, 5000, 5000)));
    assertThat(seen.getRGB(seen.getWidth() - 1, 0)).isEqualTo(0xff000000 | PixelRectangle.GRAY);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 65_535})
  void aValueThatMeansNothingTurnsNothing(int orientation) {
    assertThat(Corners.of(turned(jpeg(orientation, ByteOrder.BIG_ENDIAN)))).isEqualTo("RGBW");
  }

  @Test
  void exifThatIsDamagedDoesNotHideThePicture() {
    byte[] exif = Planted.exif(6, ByteOrder.BIG_ENDIAN);
    byte[] picture = Corners.file("jpeg", WIDTH, HEIGHT);
    for (int length = 0; length < exif.length; length++) {
      byte[] cut = java.util.Arrays.copyOf(exif, length);
      assertThat(Corners.of(turned(Planted.jpegWithExif(cut, picture)))).isIn("RGBW", "BRWG");
    }
  }
}
