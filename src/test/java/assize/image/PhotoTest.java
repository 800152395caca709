package assize.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures made here, and what becomes of them. */
class PhotoTest {
  private static Photo good(byte[] file, BlackoutBox... covered) {
    return Photo.of(file, List.of(covered)).toOptional().orElseThrow();
  }

  @Test
  void aSmallPngKeepsItsBytes() throws IOException {
    byte[] png = CornerColors.file("png", 60, 40);
    Photo photo = good(PlantedMetadata.pngWith("tEXt", PlantedMetadata.text("Comment"), png));
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(CornerColors.seen(photo).getRGB(0, 0, 60, 40, null, 0, 60))
        .isEqualTo(before.getRGB(0, 0, 60, 40, null, 0, 60));
    assertThat(photo.mediaType()).isEqualTo("image/png");
    assertThat(photo.bytes()).isEqualTo(new PngChunksOf(png).bare());
  }

  /** A PNG as it is without further chunks. */
  private record PngChunksOf(byte[] png) {
    byte[] bare() {
      return PngChunks.of(png).toOptional().orElseThrow().bare();
    }
  }

  @ParameterizedTest
  @CsvSource({"png, 3000, 1500", "jpeg, 3000, 1500", "png, 1201, 600", "jpeg, 1200, 600"})
  void aLargePictureIsMadeSmaller(String format, int width, int height) {
    Photo photo = good(CornerColors.file(format, width, height));
    assertThat(photo.width()).isEqualTo(Photo.WIDEST);
    assertThat(photo.height()).isBetween(599, 600);
    assertThat(photo.dataUri()).startsWith("data:image/jpeg;base64,");
    assertThat(CornerColors.of(photo)).isEqualTo("RGBW");
    assertThat(CornerColors.seen(photo).getWidth()).isEqualTo(photo.width());
  }

  /** Lines one pixel wide become gray and not some of the lines. */
  @Test
  void makingSmallerTakesTheMeanOfWhatIsThere() {
    BufferedImage lines = new BufferedImage(3600, 40, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 3600; x += 3) {
      for (int y = 0; y < 40; y++) {
        lines.setRGB(x, y, 0xffffff);
      }
    }
    BufferedImage seen = CornerColors.seen(good(CornerColors.file("png", lines)));
    for (int x = 0; x < 1200; x++) {
      assertThat(CornerColors.near(seen.getRGB(x, 6), 0x555555, 6)).as("column %s", x).isTrue();
    }
  }

  @Test
  void whatSkipsRowsAndColumnsIsStillTheWholePicture() {
    assertThat(Decoder.step(16_000_000)).isEqualTo(1);
    assertThat(Decoder.step(16_000_001)).isEqualTo(2);
    assertThat(Decoder.step(Photo.MOST_PIXELS)).isEqualTo(3);
    Photo photo = good(CornerColors.file("jpeg", 5001, 3501), new BlackoutBox(0, 0, 5000, 5000));
    assertThat(photo.width()).isEqualTo(1200);
    assertThat(photo.height()).isEqualTo(840);
    assertThat(CornerColors.of(photo)).isEqualTo("?GBW");
  }

  @Test
  void aBoxCoversEachPixelThatItTouches() {
    BufferedImage seen =
        CornerColors.seen(good(CornerColors.file("png", 60, 40), new BlackoutBox(1, 9_999, 1, 1)));
    assertThat(seen.getRGB(0, 39)).isEqualTo(0xff000000 | PixelRectangle.GRAY);
    assertThat(seen.getRGB(1, 39)).isEqualTo(0xff0000ff);
    assertThat(seen.getRGB(0, 38)).isEqualTo(0xff0000ff);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void nothingIsLeftWhereAllIsCovered(String format) {
    Photo photo =
        good(
            CornerColors.file(format, 60, 40),
            new BlackoutBox(0, 0, BlackoutBox.WHOLE, BlackoutBox.WHOLE));
    assertThat(photo.mediaType()).isEqualTo("image/" + format);
    BufferedImage seen = CornerColors.seen(photo);
    for (int i = 0; i < 60 * 40; i++) {
      assertThat(CornerColors.near(seen.getRGB(i % 60, i / 60), PixelRectangle.GRAY, 2)).isTrue();
    }
  }

  @Test
  void aBoxIsPartOfAPicture() {
    assertThatThrownBy(() -> new BlackoutBox(0, 0, 0, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BlackoutBox(1, 0, BlackoutBox.WHOLE, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new BlackoutBox(0, -1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @CsvSource({"lossy, RGBW", "lossless, RGBW", "clear, WGBW", "clear-lossless, WGBW"})
  void aWebpIsShown(String name, String corners) {
    Photo photo = good(CornerColors.webp(name));
    assertThat(CornerColors.of(photo)).isEqualTo(corners);
    assertThat(photo.mediaType()).isEqualTo("image/jpeg");
  }

  @ParameterizedTest
  @CsvSource({
    "jpeg, lamp.png, 'named as a PNG, this file holds a JPEG'",
    "png, photos/Lamp.JPG, 'named as a JPEG, this file holds a PNG'",
    "jpeg, lamp.heic, 'named as a HEIC photo, this file holds a JPEG'",
    "jpeg, lamp.jpg,",
    "jpeg, lamp.JPEG,",
    "png, lamp,",
    "png, lamp.photo,"
  })
  void aPictureNamedAsAnotherIsShownAndSaidToBe(String format, String name, String words) {
    Photo photo = Photo.of(CornerColors.file(format, 60, 40), List.of()).toOptional().orElseThrow();
    assertThat(photo.misnamed(name).orElse(null)).isEqualTo(words);
  }

  /** A gray of 128 stays one: Java's own conversion of such a PNG would give 188. */
  @Test
  void grayStaysAsLightAsItIs() {
    for (int type : List.of(BufferedImage.TYPE_BYTE_GRAY, BufferedImage.TYPE_USHORT_GRAY)) {
      BufferedImage gray = new BufferedImage(40, 30, type);
      int middle = type == BufferedImage.TYPE_BYTE_GRAY ? 128 : 128 * 257;
      for (int i = 0; i < 1200; i++) {
        gray.getRaster().setSample(i % 40, i / 40, 0, middle);
      }
      Photo photo = good(CornerColors.file("png", gray), new BlackoutBox(0, 0, 1, 1));
      assertThat(CornerColors.seen(photo).getRGB(20, 20)).isEqualTo(0xff808080);
    }
  }

  /**
   * What comes out is what is meant, and not its numbers: in a profile of linear light (gamma 1)
   * 128 of 255 of the light is 188 in sRGB (IEC 61966-2-1: 1.055 · 0.502^(1/2.4) − 0.055 = 0.737).
   */
  @Test
  void colorsAreBroughtToWhatThePageMeans() {
    byte[] linear = ICC_Profile.getInstance(ColorSpace.CS_LINEAR_RGB).getData();
    BufferedImage gray = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 1200; i++) {
      gray.setRGB(i % 40, i / 40, 0x808080);
    }
    byte[] jpeg =
        PlantedMetadata.jpegWith(
            0xe2,
            PlantedMetadata.join(PlantedMetadata.text("ICC_PROFILE"), new byte[] {1, 1}, linear),
            CornerColors.file("jpeg", gray));
    byte[] png =
        PlantedMetadata.pngWith(
            "iCCP",
            PlantedMetadata.join(
                PlantedMetadata.text("x"), new byte[1], PlantedMetadata.packed(linear)),
            CornerColors.file("png", gray));
    for (byte[] file : List.of(jpeg, png)) {
      assertThat(CornerColors.near(CornerColors.seen(good(file)).getRGB(20, 15), 0xbcbcbc, 2))
          .isTrue();
    }
  }

  @Test
  void aProfileThatIsNoneChangesNothing() {
    byte[] file =
        PlantedMetadata.jpegWith(
            0xe2,
            PlantedMetadata.join(
                PlantedMetadata.text("ICC_PROFILE"), new byte[] {1, 1}, new byte[400]),
            CornerColors.file("jpeg", 60, 40));
    assertThat(CornerColors.of(good(file))).isEqualTo("RGBW");
  }
}
