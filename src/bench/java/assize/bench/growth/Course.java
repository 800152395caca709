package assize.bench.growth;

import assize.bench.Generated;
import assize.cli.Main;
import assize.cli.Terminal;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * A command that is given more and more of something, twice as much each time.
 *
 * @param name by which it can be asked for
 * @param says what grows
 * @param from the least that it is given
 */
record Course(String name, String says, int from, int times, Preparing preparing) {
  private static final int ITEMS = 100;
  private static final int SOURCES = 40;

  static final List<Course> ALL = Stream.concat(plain(), Crowd.courses()).toList();

  private static Stream<Course> plain() {
    return Stream.of(
        new Course("items", "items, `judge`", 250, 5, Course::items),
        new Course("records", "records of 100 items, `judge`", 4, 6, Course::records),
        new Course("sources", "sources on each of 100 items, `judge`", 4, 4, Course::sources),
        new Course("photos", "photos, `judge`", 1, 6, Course::photos),
        new Course("merge", "items of which half are new, `merge`", 250, 5, Course::merge),
        new Course("check", "items, `check` of a rule set", 250, 5, Course::check),
        new Course("check-record", "items, `check` of a record", 250, 5, Course::checkRecord),
        new Course("results", "records of 100 items, `results`", 8, 6, Course::results),
        new Course("handbook", "items, `handbook`", 250, 5, Course::handbook),
        new Course("sheet", "items, `sheet`", 250, 5, Course::sheet));
  }

  /** A command that is ready to be run again and again. */
  interface Run {
    void once();
  }

  /** Writes what a command is given, and returns its words. */
  interface Preparing {
    List<String> in(Path folder, int size) throws IOException;
  }

  List<Integer> sizes() {
    return Stream.iterate(from, it -> it * 2).limit(times).toList();
  }

  Run prepare(Path folder, int size) throws IOException {
    List<String> words = preparing.in(folder, size);
    return () -> run(words);
  }

  private static void run(List<String> words) {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(said, false, StandardCharsets.UTF_8);
    int exit = Main.run(new Terminal(out, out, false), words.toArray(String[]::new));
    if (exit != 0) {
      throw new IllegalStateException(words + ": " + said.toString(StandardCharsets.UTF_8));
    }
  }

  private static Path write(Path folder, String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private static List<String> words(Path folder, String command, Object... more) {
    List<String> words = new ArrayList<>(List.of(command));
    Arrays.stream(more).map(String::valueOf).forEach(words::add);
    words.addAll(List.of("--out", folder.resolve("out").toString()));
    return words;
  }

  private static List<String> items(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.rules(size, SOURCES));
    Path record = write(folder, "record.yaml", Generated.record(size, "rules.yaml", 1));
    return words(folder, "judge", record);
  }

  private static List<String> records(Path folder, int size) throws IOException {
    return words(folder, "judge", many(folder, size).toArray());
  }

  private static List<Path> many(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.rules(ITEMS, SOURCES));
    List<Path> records = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      String text = Generated.record(ITEMS, "rules.yaml", i);
      records.add(write(folder, "record-" + i + ".yaml", text));
    }
    return records;
  }

  private static List<String> sources(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.disputed(ITEMS, size));
    Path record = write(folder, "record.yaml", Generated.record(ITEMS, "rules.yaml", 1));
    return words(folder, "judge", record);
  }

  private static List<String> photos(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.rules(ITEMS, SOURCES));
    for (int i = 0; i < size; i++) {
      ImageIO.write(picture(i), "png", folder.resolve("photo-" + i + ".png").toFile());
    }
    String text = Generated.recordWithPhotos(ITEMS, "rules.yaml", size);
    return words(folder, "judge", write(folder, "record.yaml", text));
  }

  private static BufferedImage picture(int which) {
    BufferedImage picture = new BufferedImage(2000, 1500, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = picture.createGraphics();
    pen.setPaint(new GradientPaint(0, which, Color.DARK_GRAY, 2000, 1500, Color.ORANGE));
    pen.fillRect(0, 0, 2000, 1500);
    pen.dispose();
    return picture;
  }

  private static List<String> merge(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.rules(size, SOURCES));
    Path mine = write(folder, "mine.yaml", Generated.record(size / 2, "rules.yaml", 1));
    String theirs = Generated.recordFrom(size / 2, size, "rules.yaml", 1);
    return List.of("merge", mine.toString(), write(folder, "theirs.yaml", theirs).toString());
  }

  private static List<String> check(Path folder, int size) throws IOException {
    Path rules = write(folder, "rules.yaml", Generated.rules(size, SOURCES));
    return List.of("check", rules.toString());
  }

  private static List<String> checkRecord(Path folder, int size) throws IOException {
    write(folder, "rules.yaml", Generated.rules(size, SOURCES));
    Path record = write(folder, "record.yaml", Generated.record(size, "rules.yaml", 1));
    return List.of("check", record.toString());
  }

  private static List<String> results(Path folder, int size) throws IOException {
    many(folder, size);
    return words(folder, "results", folder, "--no-reports");
  }

  private static List<String> handbook(Path folder, int size) throws IOException {
    Path rules = write(folder, "rules.yaml", Generated.rules(size, SOURCES));
    return List.of(
        "handbook", rules.toString(), "--out", folder.resolve("handbook.html").toString());
  }

  private static List<String> sheet(Path folder, int size) throws IOException {
    items(folder, size);
    return List.of(
        "sheet",
        folder.resolve("record.yaml").toString(),
        "--out",
        folder.resolve("sheet.html").toString());
  }
}
