package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import assize.image.BlackoutBox;
import assize.image.Photo;
import assize.report.html.PageImage;
import assize.text.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is the same picture is decoded once, however often and under whatever names. */
class ImageLoaderTest {
  private static final List<BlackoutBox> LEFT = List.of(new BlackoutBox(0, 0, 30, 100));

  private Path folder = Path.of("");

  @BeforeEach
  void lay(@TempDir Path whole) throws IOException {
    folder = whole;
    Path horn = Path.of("rules/photos/horn-button.png");
    for (String name : List.of("horn.png", "copy.png", "copy.jpg")) {
      Files.copy(horn, folder.resolve(name));
    }
    Files.writeString(folder.resolve("none.png"), "no picture");
  }

  private ImageLoader.ImageRequest wanted(String key, String file, List<BlackoutBox> covered) {
    return new ImageLoader.ImageRequest(
        key, folder.resolve(file), new SourceFile("one.yaml", "x").span(0, 1), key, covered);
  }

  /** Counts the pictures that were made, each with bytes of its own. */
  private static int made(ImageLoader.Read read) {
    return different(read.shown().values().stream().map(Photo::bytes));
  }

  private static int different(Stream<?> things) {
    Set<Object> all = Collections.newSetFromMap(new IdentityHashMap<>());
    things.forEach(all::add);
    return all.size();
  }

  @Test
  void whatIsNamedThirtyTimesIsDecodedOnce() {
    List<ImageLoader.ImageRequest> wanted = new ArrayList<>();
    IntStream.range(0, 30).forEach(i -> wanted.add(wanted("e" + i, "horn.png", List.of())));
    ImageLoader.Read read = ImageLoader.read(wanted);
    assertThat(read.shown()).hasSize(30);
    assertThat(made(read)).isEqualTo(1);
    assertThat(different(ReportWriter.asPictures(read).values().stream().map(PageImage::src)))
        .isEqualTo(1);
  }

  @Test
  void copiesOfOneFileAreDecodedOnceAndEachNameIsLookedAt() {
    ImageLoader.Read read =
        ImageLoader.read(
            List.of(
                wanted("horn", "horn.png", List.of()),
                wanted("other", "copy.png", List.of()),
                wanted("wrong", "copy.jpg", List.of())));
    assertThat(made(read)).isEqualTo(1);
    assertThat(read.found()).hasSize(1);
    assertThat(read.found().get(0).message()).startsWith("wrong: named as a JPEG");
  }

  @Test
  void whatIsCoveredOtherwiseIsAnotherPicture() {
    ImageLoader.Read read =
        ImageLoader.read(
            List.of(
                wanted("bare", "horn.png", List.of()),
                wanted("covered", "horn.png", LEFT),
                wanted("again", "copy.png", LEFT)));
    assertThat(made(read)).isEqualTo(2);
    List<byte[]> bytes = read.shown().values().stream().map(Photo::bytes).toList();
    assertThat(read.shown().keySet()).containsExactly("bare", "covered", "again");
    assertThat(bytes.get(2)).isSameAs(bytes.get(1)).isNotEqualTo(bytes.get(0));
  }

  @Test
  void whatCantBeShownIsSaidOfEach() {
    ImageLoader.Read read =
        ImageLoader.read(
            List.of(wanted("a", "none.png", List.of()), wanted("b", "none.png", List.of())));
    assertThat(read.loadErrors()).containsOnlyKeys("a", "b");
    assertThat(read.found()).hasSize(2);
  }
}
