package assize.fault;

import assize.redaction.OwnerSecret;
import assize.text.Sha256;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * A command, and what stands in its folder before: what it reads, and old files where it writes.
 *
 * @param words the command line; {@code @} stands for the folder
 * @param old the files that it replaces, by name, with what is in them
 * @param changes files of a person's own that it may replace, all at once
 */
record WriteScenario(
    String name, List<String> words, Map<String, String> old, List<String> changes) {
  private static final Path SMALL = Path.of("src/test/resources/assize/cli/small");
  private static final String PAGE = page("");
  private static final String OLD_PHOTO = "old photo";
  private static final String OLD_PHOTO_NAME =
      Sha256.of(OLD_PHOTO.getBytes(StandardCharsets.UTF_8)).substring(0, 16) + ".png";
  private static final String PHOTOS =
      "evidence: {front: {photo: front.png, caption: The front}}\n";

  /** All commands that write, each in the forms that write differently. */
  static final List<WriteScenario> ALL =
      List.of(
          new WriteScenario(
              "reports with photos in a folder and JSON",
              List.of("judge @/one.yaml @/two.yaml --out @/out --json @/all.json --photos folder"),
              Map.of(
                  "out/one.html",
                  page("<img src=\"one-photos/" + OLD_PHOTO_NAME + "\">"),
                  "out/one-photos/" + OLD_PHOTO_NAME,
                  OLD_PHOTO,
                  "all.json",
                  "{\"old\": 1}"),
              List.of()),
          new WriteScenario(
              "a copy for others",
              List.of("judge --redact @/one.yaml --out @/out"),
              Map.of("out/one-redacted.html", PAGE),
              List.of()),
          new WriteScenario(
              "a new secret",
              List.of("prove --new-secret @/one.yaml"),
              Map.of(
                  "one.secret",
                  OwnerSecret.random("one", LocalDate.of(2026, 7, 14)).file("one.yaml")),
              List.of()),
          new WriteScenario(
              "a results page",
              List.of("results @ --out @/out --skip-invalid --json @/all.json"),
              Map.of(
                  "out/results.html", PAGE,
                  "out/one.html", PAGE,
                  "out/two.html", PAGE,
                  "all.json", "{\"old\": 1}"),
              List.of()),
          new WriteScenario(
              "a merge",
              List.of("merge --write @/one.yaml @/friend.yaml"),
              Map.of(),
              List.of("one.yaml")),
          new WriteScenario(
              "a record to fill in",
              List.of("new @/rules.yaml @/new.yaml --model X1"),
              Map.of(),
              List.of()),
          new WriteScenario("schemas", List.of("schema @/schemas"), Map.of(), List.of()),
          new WriteScenario(
              "a sheet",
              List.of("sheet @/one.yaml --out @/out/sheet.html"),
              Map.of("out/sheet.html", PAGE),
              List.of()),
          new WriteScenario(
              "a table", List.of("sheet @/one.yaml --out @/out/sheet.xlsx"), Map.of(), List.of()),
          new WriteScenario(
              "a handbook",
              List.of("handbook @/rules.yaml --out @/out/handbook.html"),
              Map.of("out/handbook.html", PAGE),
              List.of()),
          new WriteScenario(
              "a dossier",
              List.of("dossier @/one.yaml --out @/out"),
              Map.of("out/one-door-key.html", PAGE),
              List.of()));

  /** Returns what begins as a page of the program does. */
  private static String page(String body) {
    return "<!DOCTYPE html>\n<html lang=\"en\" data-vehicle=\"old\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
        + " 'sha256-x'\">\n<body>"
        + body;
  }

  /**
   * Says whether a file is a photo that nobody knows any more: a run was killed when it had put the
   * new page into place and had not yet taken away what only the old one named.
   */
  boolean isForgotten(String name, Map<String, String> left, Map<String, String> after) {
    String page = name.replaceFirst("-photos/.*", ".html");
    return old.containsKey(name)
        && name.contains("-photos/")
        && left.get(page).equals(after.get(page));
  }

  String[] words(Path folder) {
    return words.get(0).replace("@", folder.toString()).split(" ");
  }

  /** Lays everything out in an empty folder. */
  void lay(Path folder) throws IOException {
    for (String name : List.of("rules.yaml", "one.yaml", "two.yaml")) {
      String text = Files.readString(SMALL.resolve(name));
      write(folder, name, name.equals("one.yaml") ? text + PHOTOS : text);
    }
    if (!changes.isEmpty()) {
      String head = Files.readString(SMALL.resolve("one.yaml")).split("observations:")[0];
      write(folder, "friend.yaml", head + "observations: {horn-button: {note: \"Seen.\"}}\n");
    }
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", png);
    Files.write(folder.resolve("front.png"), png.toByteArray());
    for (Map.Entry<String, String> one : old.entrySet()) {
      write(folder, one.getKey(), one.getValue());
    }
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** Returns every file below, each with its bytes as letters. */
  static Map<String, String> files(Path folder) {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path one : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(one).toString(), Files.readString(one, StandardCharsets.ISO_8859_1));
      }
      return files;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
