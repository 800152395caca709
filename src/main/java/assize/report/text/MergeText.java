package assize.report.text;

import assize.edit.ManualEdit;
import assize.merge.MergeReport;
import assize.merge.MergeResult;
import assize.merge.RecordEditing;
import assize.merge.RecordField;
import assize.merge.Side;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Says in a restorer's words what merging adds to a record, and what it leaves to its owner. */
public final class MergeText {
  private static final int WIDEST_VALUE = 60;
  private static final int NARROWEST_KEY = 11;

  private final MergeReport merged;
  private final Map<String, String> titles = new LinkedHashMap<>();
  private final StringBuilder out = new StringBuilder();

  private MergeText(MergeReport merged) {
    this.merged = merged;
    merged.rules().items().forEach(item -> titles.put(item.id(), item.title()));
  }

  /** Returns all of it, in lines. */
  public static String of(MergeReport merged) {
    MergeText text = new MergeText(merged);
    text.head();
    text.steps("Added", merged.applied().done(), false);
    text.steps("Changed, as you decided", merged.applied().done(), true);
    text.lines();
    text.conflicts();
    text.waiting();
    text.asides();
    text.byHand();
    text.end();
    return text.out.toString();
  }

  private void line(String text) {
    out.append(TerminalEscaper.of(text)).append('\n');
  }

  private void heading(String text) {
    out.append('\n');
    line(text);
  }

  private void head() {
    List<String> parts = new ArrayList<>();
    parts.add(merged.added() + " added");
    if (merged.changed() > 0) {
      parts.add(merged.changed() + " changed");
    }
    parts.add(merged.merge().conflicts().size() + " said differently");
    parts.add(merged.merge().same() + " the same");
    if (!merged.applied().undone().isEmpty()) {
      parts.add(merged.applied().undone().size() + " to be written by hand");
    }
    line(
        String.join(", ", merged.theirs())
            + " into "
            + merged.mine().name()
            + ": "
            + String.join(", ", parts));
  }

  private void steps(String title, List<MergeResult.Step> all, boolean changed) {
    List<MergeResult.Step> steps =
        all.stream().filter(it -> it.before().isPresent() == changed).toList();
    if (steps.isEmpty()) {
      return;
    }
    heading(title + ":");
    String last = "";
    for (MergeResult.Step step : steps) {
      String owner = owner(step.path());
      if (!owner.equals(last)) {
        line("  " + owner);
      }
      last = owner;
      String from =
          step.from().stream().map(it -> it.at().toString()).collect(Collectors.joining(", "));
      String key = key(step.path());
      row(step.path().size() > 1 ? key : "", written(key, step.shown()), places(step.from()));
      step.before().ifPresent(it -> row("", "not " + written(key, it.value()), it.at().toString()));
    }
  }

  private void row(String key, String value, String place) {
    line("    " + padded(key, NARROWEST_KEY) + "  " + padded(value, 32) + "  " + place);
  }

  private static String padded(String text, int width) {
    int columns = TerminalEscaper.columns(TerminalEscaper.of(text));
    return text + " ".repeat(Math.max(0, width - columns));
  }

  /** Returns what a thing belongs to: an item with its title, or the section of the record. */
  private String owner(List<String> path) {
    String first = path.get(0);
    return first.equals("observations") && path.size() > 1 ? item(path.get(1)) : first;
  }

  private String item(String id) {
    return id + "  (" + titles.getOrDefault(id, id) + ")";
  }

  private static String key(List<String> path) {
    return path.get(path.size() - 1);
  }

  /** Returns the name by which it is known how a value is meant: equipment is there or not. */
  static String meaning(List<String> path) {
    return path.get(0).equals("equipment") ? "present" : key(path);
  }

  private static String written(String key, YamlValue value) {
    String text = RecordEditing.written(key, value);
    int length = text.codePointCount(0, text.length());
    return length <= WIDEST_VALUE
        ? text
        : text.substring(0, text.offsetByCodePoints(0, WIDEST_VALUE - 3)) + "...";
  }

  private void lines() {
    List<ChangedLines> changed =
        ChangedLines.of(merged.mine().record().at().file(), merged.applied().edited().pieces());
    if (changed.isEmpty() || merged.isWritten()) {
      return;
    }
    heading(merged.mine().name() + " would read:");
    for (ChangedLines one : changed) {
      line((one.isNew() ? "  after line " : "  in line ") + one.line());
      one.lines().forEach(it -> line("    | " + it));
    }
  }

  private void conflicts() {
    if (merged.merge().conflicts().isEmpty()) {
      return;
    }
    heading("Said differently; nothing is changed unless you decide:");
    for (MergeResult.Conflict one : merged.merge().conflicts()) {
      RecordField part = one.part();
      line("  " + item(part.item()) + ": " + part.key());
      one.mine().ifPresent(it -> row("", written(part.key(), it.value()), it.at().toString()));
      Map<String, List<Side>> theirs =
          one.theirs().stream()
              .collect(
                  Collectors.groupingBy(
                      it -> written(part.key(), it.value()),
                      LinkedHashMap::new,
                      Collectors.toList()));
      theirs.forEach((value, sides) -> row("", value, places(sides)));
      boolean several = theirs.size() > 1;
      line(
          "    to take "
              + (several ? "one" : "it")
              + ": --take "
              + part
              + (several ? "=" + one.theirs().get(0).from() : ""));
    }
  }

  private static String places(List<Side> sides) {
    return sides.stream().map(it -> it.at().toString()).collect(Collectors.joining(", "));
  }

  private void waiting() {
    if (merged.merge().waiting().isEmpty()) {
      return;
    }
    heading("Not taken yet:");
    for (MergeResult.Waiting one : merged.merge().waiting()) {
      String key = key(one.path());
      line("  " + waitingOwner(one.path()) + ": " + one.why());
      row("", written(key, one.theirs().value()), one.theirs().at().toString());
      one.mine()
          .filter(it -> one.file().isEmpty() && one.path().get(0).equals("evidence"))
          .ifPresent(it -> row("", written(key, it.value()), it.at().toString()));
      one.file()
          .ifPresent(
              file ->
                  line("    put it at " + file + " in the folder of the record, and merge again"));
      if (one.file().isEmpty() && one.path().get(0).equals("evidence")) {
        line("    give one of them another name in its file, and merge again");
      }
    }
  }

  private static String waitingOwner(List<String> path) {
    return path.get(0).equals("traces")
        ? "trace"
        : path.get(0).equals("evidence") ? "evidence " + path.get(1) : path.get(1) + ", evidence";
  }

  private void asides() {
    if (merged.merge().asides().isEmpty()) {
      return;
    }
    heading("Said of the vehicle; write it yourself if it is right:");
    for (MergeResult.Aside one : merged.merge().asides()) {
      String key = meaning(one.path());
      line("  " + String.join(" ", one.path()));
      Optional<Side> mine = one.mine();
      mine.ifPresent(it -> row("", written(key, it.value()), it.at().toString()));
      row("", written(key, one.theirs().value()), one.theirs().at().toString());
    }
  }

  private void byHand() {
    List<ManualEdit> all = merged.applied().edited().byHand();
    if (all.isEmpty()) {
      return;
    }
    heading("To be written by hand:");
    for (ManualEdit one : all) {
      String place = one.path().isEmpty() ? "" : ", under " + key(one.path());
      line("  " + one.at() + place + ", since " + one.why() + ":");
      one.write().lines().forEach(it -> line("    | " + it));
    }
  }

  private void end() {
    boolean any = !merged.applied().done().isEmpty();
    String name = merged.mine().name();
    heading(
        !any
            ? "Nothing to write; " + name + " stays as it is."
            : merged.isWritten()
                ? String.format(Locale.ROOT, "%s is written.", name)
                : "Nothing is written yet; the same with --write writes " + name + ".");
  }
}
