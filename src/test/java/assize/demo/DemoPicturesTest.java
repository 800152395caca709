package assize.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each picture of the demonstration is the one that this project draws, to the pixel. */
class DemoPicturesTest {
  private static final Path RULES = Path.of("rules");

  static List<String> names() {
    return List.copyOf(DemoPictures.all().keySet());
  }

  @ParameterizedTest
  @MethodSource("names")
  void thePictureIsTheOneThatIsDrawnHere(String name) throws IOException {
    Path file = RULES.resolve(name);
    if (Boolean.getBoolean("redraw")) {
      Files.createDirectories(file.getParent());
      ImageIO.write(DemoPictures.all().get(name).get().picture(), "png", file.toFile());
      fail("drawn anew, look at it: " + file);
    }
    BufferedImage kept = ImageIO.read(file.toFile());
    BufferedImage drawn = DemoPictures.all().get(name).get().picture();
    assertThat(kept.getWidth()).isEqualTo(Canvas.WIDTH);
    assertThat(kept.getHeight()).isEqualTo(Canvas.HEIGHT);
    assertThat(Arrays.mismatch(pixels(drawn), pixels(kept)))
        .as("the first pixel that differs, counted by rows")
        .isEqualTo(-1);
  }

  @ParameterizedTest
  @MethodSource("names")
  void thePictureIsSmallEnoughToTravelInTheJar(String name) throws IOException {
    assertThat(Files.size(RULES.resolve(name))).isLessThan(60_000);
  }

  @Test
  void everyPictureOfTheDemonstrationIsDrawnHere() throws IOException {
    try (Stream<Path> files = Files.walk(RULES)) {
      assertThat(
              files
                  .filter(file -> file.toString().endsWith(".png"))
                  .map(file -> RULES.relativize(file).toString().replace('\\', '/')))
          .containsExactlyInAnyOrderElementsOf(names());
    }
  }

  @Test
  void lettersAndFiguresAreAllKnownToThePen() {
    String signs = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,-/'";
    for (String sign : signs.split("")) {
      assertThat(StrokeFont.of(sign, 0, 0, 6).runs()).as(sign).isNotEmpty();
    }
    assertThat(StrokeFont.of(" ", 0, 0, 6).runs()).isEmpty();
  }

  private static int[] pixels(BufferedImage image) {
    return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
  }
}
