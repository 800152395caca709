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
    return PlantedMetadata.jpegWithExif(
        PlantedMetadata.exif(orientation, order), CornerColors.file("jpeg", WIDTH, HEIGHT));
  }

  /** As stored, the corners are red and green above, blue and white below. */
  @ParameterizedTest
  @CsvSource({
    "1, RGBW", "2, GRWB", "3, WBGR", "4, BWRG", "5, RBGW", "6, BRWG", "7, WGBR", "8, GWRB"
  })
  void comesOutUpright(int orientation, String corners) {
    byte[] png = CornerColors.file("png", WIDTH, HEIGHT);
    for (ByteOrder order : List.of(ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN)) {
      byte[] exif = PlantedMetadata.exif(orientation, order);
      byte[] webp = PlantedMetadata.webpWith(exif, CornerColors.webp("lossless"));
      for (byte[] file :
          List.of(jpeg(orientation, order), PlantedMetadata.pngWith("eXIf", exif, png), webp)) {
        Photo photo = turned(file);
        assertThat(CornerColors.of(photo)).isEqualTo(corners);
        assertThat(photo.width() > photo.height()).isEqualTo(orientation < 5);
      }
    }
  }

  @Test
  void aWebpOfTheFormatsOwnToolsComesOutUpright() {
    assertThat(CornerColors.of(turned(CornerColors.webp("turned")))).isEqualTo("BRWG");
  }

  /** The box is that of the upper right corner, seen upright. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aBoxIsPaintedWhereItIsSeenUpright(int orientation) {
    byte[] exif = PlantedMetadata.exif(orientation, ByteOrder.BIG_ENDIAN);
    byte[] png = PlantedMetadata.pngWith("eXIf", exif, CornerColors.file("png", WIDTH, HEIGHT));
    String before = CornerColors.of(turned(png));
    String after = CornerColors.of(turned(png, new BlackoutBox(5000, 0, 5000, 5000)));
    assertThat(after).isEqualTo(before.charAt(0) + "?" + before.substring(2));
    java.awt.image.BufferedImage seen =
        CornerColors.seen(turned(png, new BlackoutBox(5000, 0, 5000, 5000)));
    assertThat(seen.getRGB(seen.getWidth() - 1, 0)).isEqualTo(0xff000000 | PixelRectangle.GRAY);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 9, 65_535})
  void aValueThatMeansNothingTurnsNothing(int orientation) {
    assertThat(CornerColors.of(turned(jpeg(orientation, ByteOrder.BIG_ENDIAN)))).isEqualTo("RGBW");
  }

  @Test
  void exifThatIsDamagedDoesNotHideThePicture() {
    byte[] exif = PlantedMetadata.exif(6, ByteOrder.BIG_ENDIAN);
    byte[] picture = CornerColors.file("jpeg", WIDTH, HEIGHT);
    for (int length = 0; length < exif.length; length++) {
      byte[] cut = java.util.Arrays.copyOf(exif, length);
      assertThat(CornerColors.of(turned(PlantedMetadata.jpegWithExif(cut, picture))))
          .isIn("RGBW", "BRWG");
    }
  }
}
