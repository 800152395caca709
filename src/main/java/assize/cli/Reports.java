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
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Makes the reports of judged vehicles, all of them before the first is put into place. */
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
    List<String> problems = new ArrayList<>();
    Set<Path> pages = pages(judged, out, problems);
    json.filter(file -> pages.contains(Path.of(file)))
        .ifPresent(file -> problems.add(file + ": the report goes there; name another for --json"));
    boolean toOutput = json.equals(Optional.of("-"));
    try (Outputs outputs = new Outputs()) {
      if (!toOutput && problems.isEmpty()) {
        json.ifPresent(file -> OutputFile.check(List.of(Path.of(file))));
        OutputFile.check(pages);
        judged.forEach(
            (record, judgment) ->
                outputs.stage(place(out, judgment), page(record, judgment, problems)));
        json.ifPresent(file -> outputs.stage(Path.of(file), machine(judged.values()) + "\n"));
      }
      if (!problems.isEmpty()) {
        problems.forEach(problem -> terminal.error("error: " + problem));
        return false;
      }
      outputs.place();
    }
    if (toOutput) {
      terminal.result(machine(judged.values()));
    } else {
      judged.values().forEach(one -> terminal.result(summary(one, place(out, one))));
    }
    return true;
  }

  /** Returns where a vehicle's report goes. */
  static Path place(Path out, Judgment judgment) {
    return out.resolve(judgment.vehicle().id() + ".html");
  }

  private static Set<Path> pages(Map<Path, Judgment> judged, Path out, List<String> problems) {
    Set<Path> pages = new LinkedHashSet<>();
    judged.forEach(
        (record, judgment) -> {
          if (!pages.add(place(out, judgment))) {
            problems.add(record + ": another record is named " + judgment.vehicle().id() + " too");
          }
        });
    return pages;
  }

  /** Returns one report; what is wrong with its evidence is added to the problems. */
  static String page(Path record, Judgment judgment, List<String> problems) {
    Map<String, Picture> pictures = pictures(record, judgment, problems);
    return HtmlReport.render(ReportViews.of(judgment), pictures);
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
