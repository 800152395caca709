package assize.docs;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A page of worked examples, cut where a comment names the kind of the example that follows.
 *
 * <p>Blocks marked {@code calc}, and code within a line that holds an equals sign, are sums to be
 * worked out. Blocks marked {@code report}, and tables below a comment {@code report: PREFIX}, say
 * what the program's judgment says.
 */
final class WorkedPage {
  private static final Pattern KIND = Pattern.compile("<!-- kind: (.+?) -->");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```(calc|report)\\n(.*?)^```\\n");
  private static final Pattern CODE = Pattern.compile("`([^`\\n]+ = [^`\\n]+)`");
  private static final Pattern TABLE =
      Pattern.compile("(?m)<!-- report: (.+?) -->\\n+((?:^\\|.*\\|\\n)+)");

  private WorkedPage() {}

  /** One example: its kinds, for most just one, and its text up to the next. */
  record Example(List<String> kinds, String text) {
    @Override
    public String toString() {
      return String.join(", ", kinds);
    }

    /** Returns the sums written out, each {@code what = result}. */
    List<String> sums() {
      return Stream.concat(
              blocks("calc").stream(),
              CODE.matcher(outsideBlocks()).results().map(it -> it.group(1)))
          .toList();
    }

    /** Returns what the program is said to report, each {@code RECORD SUBJECT: FIGURE VALUE}. */
    List<String> reported() {
      List<String> lines = new ArrayList<>();
      for (String line : blocks("report")) {
        String subject = line.substring(0, line.indexOf(": "));
        for (String figure : line.substring(subject.length() + 2).split(", ")) {
          lines.add(subject + ": " + figure);
        }
      }
      Matcher tables = TABLE.matcher(text);
      while (tables.find()) {
        lines.addAll(cells(tables.group(1), tables.group(2).lines().toList()));
      }
      return lines;
    }

    /** Returns the text that a reader reads, without what only repeats the report. */
    String prose() {
      return BLOCK.matcher(text).replaceAll(it -> it.group(1).equals("report") ? "" : "$2");
    }

    private String outsideBlocks() {
      return BLOCK.matcher(text).replaceAll("");
    }

    private List<String> blocks(String mark) {
      return BLOCK
          .matcher(text)
          .results()
          .filter(it -> it.group(1).equals(mark))
          .flatMap(it -> it.group(2).lines())
          .toList();
    }

    /** The first column names the subject, the head of each other column the figure. */
    private static List<String> cells(String prefix, List<String> rows) {
      List<String> cells = new ArrayList<>();
      List<String> head = row(rows.get(0));
      for (String line : rows.subList(2, rows.size())) {
        List<String> row = row(line);
        for (int i = 1; i < row.size(); i++) {
          if (!row.get(i).isEmpty()) {
            String subject = prefix.replace("*", row.get(0).replace("`", ""));
            cells.add(subject + ": " + head.get(i) + " " + row.get(i));
          }
        }
      }
      return cells;
    }

    private static List<String> row(String line) {
      String inner = line.strip();
      return Arrays.stream(inner.substring(1, inner.length() - 1).split("\\|", -1))
          .map(String::strip)
          .toList();
    }
  }

  static List<Example> read(Path page) throws IOException {
    String text = Files.readString(page);
    List<Example> examples = new ArrayList<>();
    Matcher kinds = KIND.matcher(text);
    int from = -1;
    List<String> names = List.of();
    while (kinds.find()) {
      if (from >= 0) {
        examples.add(new Example(names, text.substring(from, kinds.start())));
      }
      from = kinds.end();
      names = List.of(kinds.group(1).split(", "));
    }
    if (from >= 0) {
      examples.add(new Example(names, text.substring(from)));
    }
    return examples;
  }
}
