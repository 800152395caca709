package assize.fuzz;

import com.code_intelligence.jazzer.Jazzer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Runs one target for so many seconds, from files of the tests to begin with; what reached
 * something new is kept in {@code target/fuzz} and gone on from next time.
 */
public final class Fuzz {
  private static final List<String> SHORT_TEXTS =
      List.of(
          "1934-05",
          "1934-05-31~",
          "../1936?",
          "[1934,1935..1936]",
          "193X",
          "-0431",
          "Y-17E7",
          "1934-22",
          "P6M..P0D",
          "3/32 in ± 1/64 in",
          "2.4 mm, to 0.1 mm",
          "M6x1",
          "1/4-20 UNC",
          "5 1/2\" to 6\"",
          "14 SWG",
          "semi-gloss",
          "30 to 50",
          "at most 35",
          "41 ± 3",
          "34,-18,9",
          "[AB]-412[0-9]{2}\nA-41207",
          "(?P<month>[A-M])(?P<year>[0-9])\nE4",
          "(?P<year>3[0-9])(?P<week>[0-9]{2})\n3421");

  private Fuzz() {}

  /**
   * Runs.
   *
   * @param words the name of a target in this package, without its ending, and how many seconds
   */
  public static void main(String[] words) throws IOException, InterruptedException {
    String target = words[0];
    Path home = Files.createDirectories(Path.of("target", "fuzz", target));
    Path kept = Files.createDirectories(home.resolve("kept"));
    Path seeds = Files.createDirectories(home.resolve("seeds"));
    int number = 0;
    for (byte[] seed : seeds(target)) {
      Files.write(seeds.resolve(String.format(Locale.ROOT, "%04d", number++)), seed);
    }
    Jazzer.main(
        new String[] {
          "--target_class=assize.fuzz." + target + "Target",
          "--instrumentation_includes=assize.**:org.snakeyaml.engine.**:tools.jackson.dataformat.**",
          "--custom_hook_includes=assize.**",
          "--reproducer_path=" + home,
          "-artifact_prefix=" + home + "/",
          "-max_total_time=" + words[1],
          "-timeout=60",
          "-rss_limit_mb=2048",
          "-max_len=" + (target.equals("Photo") ? 65_536 : 32_768),
          "-print_final_stats=1",
          kept.toString(),
          seeds.toString()
        });
  }

  private static List<byte[]> seeds(String target) throws IOException {
    return switch (target) {
      case "Date", "Measure", "Pattern" ->
          SHORT_TEXTS.stream().map(it -> it.getBytes(StandardCharsets.UTF_8)).toList();
      case "Photo" -> files(Path.of("src/test/resources/assize/image"), ".webp", ".png", ".jpg");
      case "Table" -> files(Path.of("src/test/tables"), ".csv", ".xlsx", ".tsv");
      case "Yaml" -> files(Path.of("src/test"), ".yaml");
      default -> files(Path.of("src/test"), named(target));
    };
  }

  private static String named(String target) {
    return target.equals("RuleSet") ? "rules.yaml" : "record.yaml";
  }

  private static List<byte[]> files(Path folder, String... endings) throws IOException {
    List<byte[]> all = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        if (Stream.of(endings).anyMatch(file.toString()::endsWith)) {
          all.add(Files.readAllBytes(file));
        }
      }
    }
    return all;
  }
}
