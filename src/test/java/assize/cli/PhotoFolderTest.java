package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import assize.text.Sha256;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is taken away beside a page is what the program wrote there, and nothing else. */
class PhotoFolderTest {
  private static final byte[] WORDS = "somebody's own".getBytes(StandardCharsets.UTF_8);

  private CommandBench bench = new CommandBench(Path.of(""));
  private Path out = Path.of("");
  private Path folder = Path.of("");

  @BeforeEach
  void lay(@TempDir Path whole) throws IOException {
    bench = CommandBench.in(whole);
    out = bench.at("out");
    folder = out.resolve("shown-photos");
    Files.copy(Path.of("rules/photos/horn-button.png"), bench.at("front.png"));
    record("evidence: {front: {photo: front.png, caption: The front}}\n");
  }

  private void record(String evidence) throws IOException {
    Files.writeString(
        bench.at("shown.yaml"),
        "record: shown\nrules: rules.yaml\nvehicle: {name: The shown one, model: X1}\n" + evidence);
  }

  private CommandResult judge(String... more) {
    return CommandResult.of(
        Stream.concat(Stream.of("judge", bench.at("shown.yaml"), "--out", out), Stream.of(more))
            .toArray());
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(it -> it.getFileName().toString()).sorted().toList();
    }
  }

  private static String named(byte[] bytes) {
    return Sha256.of(bytes).substring(0, 16) + ".jpg";
  }

  /** Somebody's pictures: one named at random, one by what is in it. */
  private Path pictures() throws IOException {
    Path pictures = Files.createDirectory(bench.at("pictures"));
    Files.write(pictures.resolve("5f1c2b3a4d5e6f70.jpg"), WORDS);
    Files.write(pictures.resolve(named(WORDS)), WORDS);
    return pictures;
  }

  /** Makes a page as of an earlier run, which names these photos beside it. */
  private void pageNaming(List<String> names) throws IOException {
    judge();
    Path page = out.resolve("shown.html");
    StringBuilder shown = new StringBuilder();
    names.forEach(name -> shown.append("<img src=\"shown-photos/" + name + "\">\n"));
    Files.writeString(page, Files.readString(page).replace("</main>", shown + "</main>"));
  }

  @Test
  void nothingIsTakenAwayBehindALink() throws IOException {
    Path pictures = pictures();
    pageNaming(names(pictures));
    Files.createSymbolicLink(folder, pictures);
    Map<String, String> before = CommandBench.content(pictures);
    for (List<String> more : List.of(List.<String>of(), List.of("--redact"))) {
      assertThat(judge(more.toArray(String[]::new)).exit()).isZero();
      assertThat(CommandBench.content(pictures)).isEqualTo(before);
      assertThat(folder).isSymbolicLink();
    }
  }

  @Test
  void nothingIsWrittenThroughALink() throws IOException {
    Path pictures = pictures();
    pageNaming(List.of());
    Files.createSymbolicLink(folder, pictures);
    Map<String, String> before = bench.content();
    CommandResult ran = judge("--photos", "folder");
    assertThat(ran.exit()).isEqualTo(3);
    assertThat(ran.err())
        .isEqualTo(
            "can't write "
                + folder
                + ": it is a link to another place; delete the link, or name another place\n");
    assertThat(bench.content()).isEqualTo(before);
    Files.delete(folder);
    Files.createSymbolicLink(folder, bench.at("nowhere"));
    assertThat(judge("--photos", "folder").exit()).isEqualTo(3);
    assertThat(bench.at("nowhere")).doesNotExist();
  }

  @Test
  void resultsWriteAndTakeAwayNothingBehindALink() throws IOException {
    Path pictures = pictures();
    pageNaming(names(pictures));
    Path records = Files.createDirectory(bench.at("records"));
    for (String name : List.of("rules.yaml", "shown.yaml", "front.png")) {
      Files.copy(bench.at(name), records.resolve(name));
    }
    Files.createSymbolicLink(folder, pictures);
    Map<String, String> before = CommandBench.content(pictures);
    assertThat(CommandResult.of("results", records, "--out", out, "--photos", "folder").exit())
        .isEqualTo(3);
    assertThat(CommandResult.of("results", records, "--out", out).exit()).isZero();
    assertThat(CommandBench.content(pictures)).isEqualTo(before);
  }

  /** What the owner put there stays, however it is named; so does what no page ever named. */
  @Test
  void anOwnersPictureStays() throws IOException {
    byte[] other = "another".getBytes(StandardCharsets.UTF_8);
    byte[] ours = "once shown".getBytes(StandardCharsets.UTF_8);
    pageNaming(List.of("5f1c2b3a4d5e6f70.jpg", named(ours)));
    Files.createDirectory(folder);
    Files.write(folder.resolve("5f1c2b3a4d5e6f70.jpg"), WORDS);
    Files.write(folder.resolve(named(other)), other);
    Files.write(folder.resolve(named(ours)), ours);
    judge();
    assertThat(names(folder)).containsExactlyInAnyOrder("5f1c2b3a4d5e6f70.jpg", named(other));
  }

  @Test
  void aLinkAmongThePhotosStays() throws IOException {
    Path pictures = pictures();
    pageNaming(names(pictures));
    Files.createDirectory(folder);
    Files.createSymbolicLink(folder.resolve(named(WORDS)), pictures.resolve(named(WORDS)));
    judge();
    assertThat(folder.resolve(named(WORDS))).isSymbolicLink();
    assertThat(names(pictures)).contains(named(WORDS));
  }

  /** Who types a link as the place for pages means the folder that it leads to. */
  @Test
  void theOutputFolderMayBeALink() throws IOException {
    Files.createDirectory(bench.at("real"));
    Files.createSymbolicLink(out, bench.at("real"));
    assertThat(judge("--photos", "folder").exit()).isZero();
    assertThat(names(bench.at("real/shown-photos"))).hasSize(1);
    record("");
    assertThat(judge("--photos", "folder").exit()).isZero();
    assertThat(bench.at("real/shown.html")).exists();
    assertThat(bench.at("real/shown-photos")).doesNotExist();
  }

  /** The folder of a page is put in the place of another while a run is going on. */
  @Test
  void nothingIsTakenAwayWhereAFolderAboveWasSwapped() throws IOException {
    Path inner = out.resolve("inner");
    Path page = inner.resolve("shown.html");
    Path there = inner.resolve("shown-photos").resolve(named(WORDS));
    CommandResult.of("judge", bench.at("shown.yaml"), "--out", inner);
    Files.writeString(
        page, Files.readString(page) + "<img src=\"shown-photos/" + named(WORDS) + "\">");
    Files.createDirectory(there.getParent());
    Files.write(there, WORDS);
    Runnable clearing = PhotoFolder.of(page, List.of()).clearing();
    Files.move(out, bench.at("moved"));
    Files.createSymbolicLink(out, bench.at("moved"));
    clearing.run();
    assertThat(there).exists();
    Files.delete(out);
    Files.move(bench.at("moved"), out);
    Files.write(page, new byte[0]);
    clearing.run();
    assertThat(there).doesNotExist();
  }

  /** Nobody typed the usual folder: in a folder from somebody else, a link there is theirs. */
  @Tag("slow")
  @Test
  void theUsualFolderIsNoLink() throws Exception {
    Files.createDirectory(bench.at("elsewhere"));
    Files.createSymbolicLink(bench.at("reports"), bench.at("elsewhere"));
    assumeThat(bench.at("reports")).isSymbolicLink();
    for (String command :
        List.of(
            "judge shown.yaml",
            "dossier one.yaml",
            "results folder",
            "sheet one.yaml",
            "handbook rules.yaml")) {
      Process process = start(command);
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(process.waitFor()).as(command + "\n" + said).isEqualTo(3);
      assertThat(said)
          .isEqualTo(
              "can't write reports: it is a link to another place; delete the link, or name a"
                  + " folder with --out\n");
    }
    assertThat(names(bench.at("elsewhere"))).isEmpty();
    Process process = start("judge shown.yaml --out reports");
    process.getInputStream().readAllBytes();
    assertThat(process.waitFor()).isZero();
    assertThat(names(bench.at("elsewhere"))).containsExactly("shown.html");
  }

  private Process start(String command) throws IOException {
    List<String> line =
        Stream.concat(
                Stream.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-XX:TieredStopAtLevel=1",
                    "-cp",
                    absolute(System.getProperty("java.class.path", "")),
                    "assize.cli.Main"),
                Stream.of(command.split(" ")))
            .toList();
    ProcessBuilder builder = new ProcessBuilder(line).redirectErrorStream(true);
    builder.directory(bench.folder().toFile());
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder.start();
  }

  private static String absolute(String paths) {
    String between = System.getProperty("path.separator", ":");
    return Stream.of(paths.split(java.util.regex.Pattern.quote(between)))
        .map(path -> Path.of(path).toAbsolutePath().toString())
        .collect(java.util.stream.Collectors.joining(between));
  }
}
