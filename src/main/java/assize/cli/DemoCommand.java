package assize.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Unpacks the demonstration and judges it. */
@Command(
    name = "demo",
    description = "Unpacks the demonstration and judges it; everything in it is invented.",
    mixinStandardHelpOptions = true)
final class DemoCommand implements Callable<Integer> {
  private static final String INSIDE = "/assize/demo";

  private final Terminal terminal;

  @Parameters(
      arity = "0..1",
      paramLabel = "DIR",
      description = "Where to unpack it; default: assize-demo.")
  private Path folder = Path.of("assize-demo");

  @Option(names = "--json", description = "Write the judgments as JSON to standard output.")
  private boolean json;

  DemoCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Map<Path, byte[]> files = files();
    List<Path> changed =
        files.entrySet().stream()
            .filter(file -> differs(file.getKey(), file.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    if (!changed.isEmpty()) {
      changed.forEach(path -> terminal.error("error: " + path + " is there already and differs"));
      terminal.error("Nothing was written; name a folder that does not exist yet.");
      return Exit.BAD_INPUT;
    }
    AtomicFileWriter.check(files.keySet());
    AtomicFileWriter.check(List.of(folder.resolve("reports").resolve("report.html")));
    try (OutputTransaction outputs = new OutputTransaction()) {
      files.forEach(outputs::stage);
      outputs.commit();
    }
    return judge(files.keySet().stream().filter(this::isRecord).sorted().toList());
  }

  private static boolean differs(Path path, byte[] ours) {
    try {
      return Files.exists(path)
          && !(Files.isRegularFile(path) && Arrays.equals(Files.readAllBytes(path), ours));
    } catch (IOException e) {
      return true;
    }
  }

  private boolean isRecord(Path path) {
    return folder.equals(path.getParent())
        && path.toString().endsWith(".yaml")
        && new InputLoader(terminal).isRecord(path);
  }

  private int judge(List<Path> records) {
    Optional<Map<Path, InputLoader.Judged>> judged =
        new InputLoader(terminal).judge(records, Optional.empty(), Optional.empty());
    if (judged.isEmpty()) {
      return Exit.BAD_INPUT;
    }
    Path reports = folder.resolve("reports");
    if (!json) {
      terminal.result("The demonstration is in " + folder + ". Open a report in a browser:");
    }
    boolean good =
        new ReportWriter(terminal)
            .write(
                judged.get(),
                new ReportWriter.ReportOptions(
                    reports, json ? Optional.of("-") : Optional.empty(), false, false, false));
    return good ? Exit.DONE : Exit.BAD_INPUT;
  }

  /** Returns the demonstration's files as the jar, or the folder of classes, holds them. */
  private Map<Path, byte[]> files() {
    try {
      java.net.URI at = DemoCommand.class.getResource("DemoCommand.class").toURI();
      if (at.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(at, Map.of())) {
          return files(jar.getPath(INSIDE));
        }
      }
      // Else a folder of classes, or Java's own image where Assize is part of it.
      return files(Path.of(at).resolve("../../demo").normalize());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private Map<Path, byte[]> files(Path root) throws IOException {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.filter(Files::isRegularFile).sorted().toList()) {
        String relative = root.relativize(path).toString();
        files.put(folder.resolve(relative), Files.readAllBytes(path));
      }
    }
    return files;
  }
}
