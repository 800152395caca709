package assize.cli;

import assize.judgment.Judgment;
import assize.judgment.ScoreRange;
import assize.photo.Photo;
import assize.record.Evidence;
import assize.report.html.HtmlReport;
import assize.report.html.Picture;
import assize.report.text.JudgmentJson;
import assize.report.text.Visible;
import assize.report.view.ReportViews;
import assize.ruleset.Award;
import assize.text.Parsed;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes the reports of judged vehicles, all of them before the first is written. */
final class Reports {
  private final Terminal terminal;

  Reports(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * Writes a report for each judgment.
   *
   * @param judged by the record's file
   * @param out the folder for the reports
   * @param json where the machine's form goes; with {@code -}, standard output and no report
   * @return whether nothing was wrong with the evidence
   */
  boolean write(Map<Path, Judgment> judged, Path out, Optional<String> json) {
    Map<Path, String> pages = new LinkedHashMap<>();
    List<String> problems = new ArrayList<>();
    boolean toOutput = json.equals(Optional.of("-"));
    judged.forEach(
        (record, judgment) -> {
          Path page = out.resolve(judgment.vehicle().id() + ".html");
          if (pages.containsKey(page)) {
            problems.add(record + ": another record is named " + judgment.vehicle().id() + " too");
          } else if (toOutput) {
            pages.put(page, "");
          } else {
            Map<String, Picture> pictures = pictures(record, judgment, problems);
            pages.put(page, HtmlReport.render(ReportViews.of(judgment), pictures));
          }
        });
    json.filter(file -> pages.containsKey(Path.of(file)))
        .ifPresent(file -> problems.add(file + ": the report goes there; name another for --json"));
    if (!problems.isEmpty()) {
      problems.forEach(problem -> terminal.error("error: " + problem));
      return false;
    }
    if (toOutput) {
      terminal.result(machine(judged.values()));
      return true;
    }
    Map<Path, String> outputs = new LinkedHashMap<>();
    json.ifPresent(file -> outputs.put(Path.of(file), machine(judged.values()) + "\n"));
    outputs.putAll(pages);
    OutputFile.check(outputs.keySet());
    outputs.forEach(OutputFile::write);
    List<Path> written = List.copyOf(pages.keySet());
    int i = 0;
    for (Judgment judgment : judged.values()) {
      terminal.result(summary(judgment, written.get(i++)));
    }
    return true;
  }

  /** Returns one judgment as an object of several lines, several as one object a line. */
  private static String machine(Collection<Judgment> judged) {
    return judged.size() == 1
        ? JudgmentJson.of(judged.iterator().next()).stripTrailing()
        : judged.stream()
            .map(one -> JudgmentJson.of(one).replaceAll("\n *", " ").strip())
            .collect(Collectors.joining("\n"));
  }

  private static Map<String, Picture> pictures(
      Path record, Judgment judgment, List<String> problems) {
    Path folder = OutputFile.folderOf(record);
    Map<String, Picture> pictures = new LinkedHashMap<>();
    for (Evidence evidence : judgment.vehicle().evidence().values()) {
      if (evidence.kind() != Evidence.Kind.PHOTO) {
        continue;
      }
      photo(folder.resolve(evidence.what()))
          .match(
              photo ->
                  pictures.put(
                      evidence.id(), new Picture(photo.dataUri(), photo.width(), photo.height())),
              bad -> {
                problems.add(
                    evidence.at() + ": evidence \"" + evidence.id() + "\": " + bad.reason());
                return null;
              });
    }
    return pictures;
  }

  private static Parsed<Photo> photo(Path file) {
    try {
      return Photo.of(Files.readAllBytes(file));
    } catch (IOException e) {
      return Parsed.bad("the file can't be read", 0, 0);
    }
  }

  private static String summary(Judgment judgment, Path page) {
    ScoreRange score = judgment.score();
    String range =
        score.isPoint()
            ? points(score.likely())
            : points(score.likely())
                + " ("
                + points(score.low())
                + " to "
                + points(score.high())
                + ")";
    return Visible.of(judgment.vehicle().name())
        + ": "
        + range
        + " of "
        + points(judgment.rules().scale().outOf())
        + judgment.award().reached().map(Award::name).map(name -> ", " + name).orElse("")
        + "\n  "
        + page;
  }

  /** Words thousandths of a point. */
  static String points(long thousandths) {
    BigDecimal exact = BigDecimal.valueOf(thousandths, 3);
    return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
  }
}
