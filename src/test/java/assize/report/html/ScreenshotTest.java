package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pictures of every kind of page for somebody to look at, at three widths and in two themes, in
 * {@code target/screenshots}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
@Tag("browser")
class ScreenshotTest {
  private static final Path PICTURES = Path.of("target", "screenshots");

  /** How much of a page is shown from its top, and from its list of items, in CSS pixels. */
  private static final int TOP = 3000;

  private static final int ITEMS = 1800;

  /** A page that did not come up has one color, lettering alone some dozens. */
  private static final int COLORS = 20;

  private Browser browser;
  private List<Path> pages = List.of();

  @BeforeAll
  void start(@TempDir Path folder, @TempDir Path profile) throws IOException {
    browser = Browser.start(profile);
    pages = Pages.in(folder.resolve("demo"));
    Files.createDirectories(PICTURES);
  }

  @AfterAll
  void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  List<Path> pages() {
    return pages;
  }

  @ParameterizedTest
  @MethodSource("pages")
  void thereIsAPictureOfEachPage(Path page) throws IOException {
    String name = page.getFileName().toString().replace(".html", "");
    for (int width : Browser.WIDTHS) {
      for (String theme : List.of("light", "dark")) {
        browser.open(page);
        browser.show(width, "screen", theme);
        String file = name + "-" + width + "-" + theme;
        keep(file, 0, width, TOP);
        if (browser.result("return document.getElementById('pick') === null;").equals(true)) {
          continue;
        }
        keep(file + "-items", top("items"), width, ITEMS);
        browser.texts(
            "document.querySelector('.fold').open = true;"
                + "document.getElementById('pick-v-incorrect').click();"
                + "document.getElementById('pick-v-undecided').click();"
                + "document.getElementById('items').scrollIntoView(); return [];");
        keep(file + "-narrowed", top("items"), width, Browser.HEIGHT);
      }
    }
  }

  private double top(String id) {
    Object top =
        browser.result(
            "return document.getElementById('"
                + id
                + "').getBoundingClientRect().top + document.documentElement.scrollTop;");
    return ((Number) top).doubleValue();
  }

  private void keep(String name, double top, int width, int height) throws IOException {
    byte[] picture = browser.picture(top, width, height);
    Files.write(PICTURES.resolve(name + ".png"), picture);
    BufferedImage read = ImageIO.read(new ByteArrayInputStream(picture));
    assertThat(read.getWidth()).isEqualTo(width);
    assertThat(read.getHeight()).isEqualTo(height);
    int[] dots = read.getRGB(0, 0, width, height, null, 0, width);
    assertThat(IntStream.of(dots).distinct().count()).as(name).isGreaterThan(COLORS);
  }
}
