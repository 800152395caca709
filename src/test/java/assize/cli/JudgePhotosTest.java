package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos of records, from the file to the page. */
class JudgePhotosTest {
  private CommandBench bench = new CommandBench(Path.of(""));
  private Path out = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) throws IOException {
    bench = CommandBench.in(folder);
    out = bench.at("out");
    Files.createDirectories(bench.at("photos"));
  }

  /** A small JPEG that no other seed gives. */
  private static byte[] jpeg(int seed) {
    BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(new Color(new Random(seed).nextInt(0x1000000)));
    graphics.fillRect(0, 0, 40, 15 + seed % 15);
    graphics.dispose();
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(image, "jpeg", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes a record whose button cites the photos, and the photos. */
  private Path record(Map<String, byte[]> photos) throws IOException {
    StringBuilder text = new StringBuilder("record: shown\nrules: rules.yaml\n");
    text.append("vehicle: {name: The shown one, model: X1}\nnumbers: {chassis: X1-150}\n");
    text.append("evidence:\n");
    List<String> ids = new ArrayList<>();
    for (Map.Entry<String, byte[]> one : photos.entrySet()) {
      String id = one.getKey().substring(0, one.getKey().indexOf('.'));
      ids.add(id);
      text.append("  ").append(id).append(": {photo: photos/").append(one.getKey());
      text.append(", caption: What ").append(id).append(" shows}\n");
      Files.write(bench.at("photos/" + one.getKey()), one.getValue());
    }
    text.append("observations:\n  horn-button: {finish: nickel, evidence: ").append(ids);
    text.append("}\n  door-key: {finish: chrome, evidence: ").append(ids).append("}\n");
    return Files.writeString(bench.at("shown.yaml"), text.toString());
  }

  private static Map<String, byte[]> some(int count) {
    Map<String, byte[]> photos = new java.util.TreeMap<>();
    IntStream.range(0, count).forEach(i -> photos.put("p" + (1000 + i) + ".jpg", jpeg(i)));
    return photos;
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  @Test
  void hundredsOfPhotosComeInTheOrderOfTheRecordAndEachOnce() throws IOException {
    Path record = record(some(300));
    CommandResult ran = CommandResult.of("judge", record, "--out", out);
    assertThat(ran.exit()).as(ran.err()).isZero();
    String page = Files.readString(out.resolve("shown.html"));
    assertThat(count(page, "<img ")).isEqualTo(300);
    assertThat(count(page, "src=\"data:image/jpeg;base64,/9j/")).isEqualTo(300);
    List<String> captions =
        page.lines()
            .filter(line -> line.contains("<img "))
            .map(line -> line.replaceFirst(".* alt=\"([^\"]*)\".*", "$1"))
            .toList();
    assertThat(captions)
        .isEqualTo(
            IntStream.range(0, 300).mapToObj(i -> "What p" + (1000 + i) + " shows").toList());
    String again = Files.readString(out.resolve("shown.html"));
    CommandResult.of("judge", record, "--out", out);
    assertThat(Files.readString(out.resolve("shown.html"))).isEqualTo(again);
  }

  @Test
  void saysHowLongThePageIs() throws IOException {
    CommandResult ran = CommandResult.of("judge", record(some(2)), "--out", out);
    long length = Files.size(out.resolve("shown.html"));
    assertThat(ran.out())
        .contains(out.resolve("shown.html") + " (" + (length + 999) / 1000 + " KB)\n");
    assertThat(ran.err()).isEmpty();
  }

  @Test
  void everyPhotoThatCantBeShownIsNamedAtOnceAndNothingIsWritten() throws IOException {
    Map<String, byte[]> photos = some(2);
    photos.put("cut.jpg", Arrays.copyOf(jpeg(5), 300));
    photos.put("empty.jpg", new byte[0]);
    photos.put("text.jpg", "not a picture".getBytes(StandardCharsets.UTF_8));
    photos.put("phone.jpg", "\0\0\0\u0018ftypheic\0\0".getBytes(StandardCharsets.ISO_8859_1));
    Path record = record(photos);
    Map<String, String> before = bench.content();
    CommandResult ran = CommandResult.of("judge", record, "--out", out);
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEmpty();
    assertThat(bench.content()).isEqualTo(before);
    assertThat(count(ran.err(), "error[photo-cannot-be-shown]")).isEqualTo(4);
    assertThat(ran.err())
        .contains("evidence \"cut\" (cited by \"horn-button\", \"door-key\"): this is a JPEG, but")
        .contains("shown.yaml:6:3")
        .contains("evidence \"empty\"", "the file is empty; copy it again")
        .contains("evidence \"text\"", "this file holds no picture")
        .contains("evidence \"phone\"", "save it as JPEG in the phone")
        .contains("or add --skip-bad-photos, and it is left out")
        .endsWith("4 errors in 1 file\n");
  }

  @Test
  void aReportWithoutBadPhotosSaysSoInTheirPlace() throws IOException {
    Map<String, byte[]> photos = some(1);
    photos.put("cut.jpg", Arrays.copyOf(jpeg(5), 300));
    CommandResult ran =
        CommandResult.of("judge", record(photos), "--out", out, "--skip-bad-photos");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.err()).contains("warning[photo-left-out]", "evidence \"cut\"");
    String page = Files.readString(out.resolve("shown.html"));
    assertThat(count(page, "<img ")).isEqualTo(1);
    assertThat(page).contains("It can’t be shown: this is a JPEG, but it is damaged");
  }

  @Test
  void aPhotoUnderAWrongNameIsShownAndDoubted() throws IOException {
    CommandResult ran =
        CommandResult.of("judge", record(Map.of("lamp.png", jpeg(1))), "--out", out);
    assertThat(ran.exit()).isZero();
    assertThat(ran.err())
        .contains("warning[photo-misnamed]")
        .contains("named as a PNG, this file holds a JPEG");
    assertThat(Files.readString(out.resolve("shown.html"))).contains("src=\"data:image/jpeg;");
  }

  @Test
  void photosBesideLieInAFolderAndCarryNoNames() throws IOException {
    CommandResult ran =
        CommandResult.of("judge", record(some(3)), "--out", out, "--photos", "folder");
    assertThat(ran.exit()).as(ran.err()).isZero();
    Path folder = out.resolve("shown-photos");
    assertThat(ran.out()).contains(folder.toString());
    List<String> names = names(folder);
    assertThat(names).hasSize(3).allMatch(name -> name.matches("[0-9a-f]{16}\\.jpg"));
    String page = Files.readString(out.resolve("shown.html"));
    names.forEach(name -> assertThat(page).contains("src=\"shown-photos/" + name + "\""));
    assertThat(page).contains("img-src data: 'self'").doesNotContain("src=\"data:");
    assertThat(count(page, "loading=\"lazy\"")).isEqualTo(3);
  }

  @Test
  void photosThatThePageNoLongerShowsAreTakenAwayAndOtherFilesStay() throws IOException {
    Path folder = out.resolve("shown-photos");
    CommandResult.of("judge", record(some(3)), "--out", out, "--photos=folder");
    List<String> three = names(folder);
    Files.writeString(folder.resolve("mine.jpg"), "mine");
    Files.createDirectory(folder.resolve("0123456789abcdef.png"));
    CommandResult.of("judge", record(some(1)), "--out", out, "--photos=folder");
    assertThat(names(folder)).hasSize(3).contains("mine.jpg", "0123456789abcdef.png");
    assertThat(three).containsAnyElementsOf(names(folder));
    CommandResult.of("judge", record(some(1)), "--out", out);
    assertThat(names(folder)).containsExactly("0123456789abcdef.png", "mine.jpg");
    Files.delete(folder.resolve("mine.jpg"));
    Files.delete(folder.resolve("0123456789abcdef.png"));
    CommandResult.of("judge", record(some(1)), "--out", out, "--photos=folder");
    CommandResult.of("judge", record(some(1)), "--out", out);
    assertThat(folder).doesNotExist();
  }

  @Test
  void aRunThatFailsLeavesOldPhotosAlone() throws IOException {
    CommandResult.of("judge", record(some(3)), "--out", out, "--photos=folder");
    Map<String, String> before = CommandBench.content(out);
    Map<String, byte[]> photos = some(2);
    photos.put("empty.jpg", new byte[0]);
    assertThat(CommandResult.of("judge", record(photos), "--out", out, "--photos=folder").exit())
        .isEqualTo(1);
    assertThat(CommandBench.content(out)).isEqualTo(before);
  }

  @Test
  void aWrongPlaceForPhotosIsNamed() throws IOException {
    CommandResult ran = CommandResult.of("judge", record(some(1)), "--photos", "elsewhere");
    assertThat(ran.exit()).isEqualTo(2);
    assertThat(ran.err()).contains("embed", "folder");
  }

  @Test
  void aLongPageIsSaidToBeAndWhatToDo() throws IOException {
    Random random = new Random(3);
    Map<String, byte[]> photos = new java.util.TreeMap<>();
    for (int i = 0; i < 6; i++) {
      BufferedImage noise = new BufferedImage(1200, 1200, BufferedImage.TYPE_INT_RGB);
      int[] pixels = random.ints(1200 * 1200, 0, 0x1000000).toArray();
      noise.setRGB(0, 0, 1200, 1200, pixels, 0, 1200);
      ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
      ImageIO.write(noise, "jpeg", jpeg);
      photos.put("p" + i + ".jpg", jpeg.toByteArray());
    }
    CommandResult ran = CommandResult.of("judge", record(photos), "--out", out);
    assertThat(ran.exit()).isZero();
    assertThat(ran.out()).containsPattern("shown\\.html \\([0-9]+\\.[0-9] MB\\)");
    assertThat(ran.err()).contains("shown.html is long").contains("--photos folder");
  }

  private static List<String> names(Path folder) throws IOException {
    try (java.util.stream.Stream<Path> all = Files.list(folder)) {
      return all.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }
}
