package assize.measure;

import assize.text.Parsed;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads the name of a screw thread and finds it in the tables. */
final class ThreadDesignationReader {
  private record ThreadRow(
      String series, String size, BigFraction majorMm, BigFraction pitchMm, String turns) {
    static ThreadRow of(List<String> cells) {
      BigFraction major = Cursor.decimal(cells.get(3));
      BigFraction last = Cursor.decimal(cells.get(4));
      boolean inch = cells.get(2).equals("in");
      return new ThreadRow(
          cells.get(0),
          cells.get(1),
          inch ? major.multiply(INCH) : major,
          inch ? INCH.divide(last) : last,
          cells.get(4));
    }

    boolean has(BigFraction turns) {
      return INCH.divide(turns).equals(pitchMm);
    }

    ThreadDesignation thread() {
      String text =
          switch (series) {
            case "BA" -> size + " BA";
            case "M" -> "M" + size;
            default -> size + "-" + turns + " " + series;
          };
      return new ThreadDesignation(series, size, majorMm, pitchMm, text);
    }
  }

  private static final BigFraction INCH = Unit.IN.factor();
  private static final List<ThreadRow> ROWS =
      ResourceTable.rows("threads.csv").stream().map(ThreadRow::of).toList();
  private static final Map<String, String> SERIES =
      Map.of(
          "UNC",
          "UNC",
          "UNF",
          "UNF",
          "UNEF",
          "UNEF",
          "BSW",
          "BSW",
          "WHIT",
          "BSW",
          "WHITWORTH",
          "BSW",
          "BSF",
          "BSF",
          "BA",
          "BA");
  private static final String EXAMPLES = "write one such as 1/4-20 UNC, 1/4 BSF, 2 BA or M6";

  private static final String DECIMAL = "[0-9]{1,4}(?:\\.[0-9]{1,6})?";
  private static final Pattern METRIC =
      Pattern.compile(
          "M\\s?(" + DECIMAL + ")(?:\\s?[x×]\\s?(" + DECIMAL + ")(?:\\s?mm)?)?\\s*",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern BY_INCH =
      Pattern.compile(
          "(?<size>(?:#|no\\.?\\s?)[0-9]{1,2}|[0-9]{1,2}[ -][0-9]{1,3}/[0-9]{1,3}|[0-9]{1,3}/[0-9]{1,3}"
              + "|[0-9]{0,2}\\s?[½¼¾⅛⅜⅝⅞]|[0-9]{1,2}(?:\\.[0-9]{1,6})?|\\.[0-9]{1,6})"
              + "\\s?(?<unit>inches|inch|in\\.?|\"|″)?\\s?"
              + "(?:(?:[-–x×]\\s?)(?<turns>[0-9]{1,3}(?:\\.[0-9]{1,3}|\\s?[½]|\\s1/2)?)\\s?(?:tpi)?)?"
              + "\\s?(?<series>[A-Za-z]{0,12})\\.?\\s*",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NUMBERED =
      Pattern.compile("(?:#|no\\.?\\s?)([0-9]{1,2})", Pattern.CASE_INSENSITIVE);

  private ThreadDesignationReader() {}

  static Parsed<ThreadDesignation> read(String text) {
    String name = text.strip();
    int start = text.indexOf(name);
    Matcher metric = METRIC.matcher(name);
    if (metric.matches()) {
      return metric(metric).match(Parsed::ok, bad -> bad.within(start));
    }
    Matcher byInch = BY_INCH.matcher(name);
    if (byInch.matches()) {
      return byInch(byInch).match(Parsed::ok, bad -> bad.within(start));
    }
    return Parsed.bad(
        "\"" + Cursor.shown(name) + "\" names no thread: " + EXAMPLES, start, name.length());
  }

  private static Parsed<ThreadDesignation> metric(Matcher match) {
    String size = Quantity.number(Cursor.decimal(match.group(1)), false);
    Optional<ThreadRow> coarse = find("M", size);
    if (match.group(2) == null) {
      return coarse
          .map(row -> Parsed.ok(row.thread()))
          .orElseGet(
              () ->
                  Parsed.bad(
                      "M" + size + " has no usual pitch: write it too, such as M" + size + "x1",
                      0,
                      match.group().length()));
    }
    BigFraction major = Cursor.decimal(match.group(1));
    BigFraction pitch = Cursor.decimal(match.group(2));
    if (pitch.signum() == 0 || pitch.compareTo(major) >= 0) {
      return Parsed.bad(
          "the pitch is above zero and below the diameter",
          match.start(2),
          match.group(2).length());
    }
    boolean usual = coarse.isPresent() && coarse.get().pitchMm().equals(pitch);
    String text = "M" + size + (usual ? "" : "x" + Quantity.number(pitch, false));
    return Parsed.ok(new ThreadDesignation("M", size, major, pitch, text));
  }

  private static Parsed<ThreadDesignation> byInch(Matcher match) {
    String written = match.group("series").toUpperCase(Locale.ROOT);
    Optional<BigFraction> turns =
        Optional.ofNullable(match.group("turns")).flatMap(t -> number(t).toOptional());
    if (turns.isPresent() && turns.get().signum() == 0) {
      String reason = "a thread has at least one turn to the inch";
      return Parsed.bad(reason, match.start("turns"), match.group("turns").length());
    }
    if (written.isEmpty()) {
      return unnamed(match, turns);
    }
    String series = SERIES.get(written);
    if (series == null) {
      String known = "UNC, UNF, UNEF, BSW, BSF, BA or M";
      return Parsed.bad(
          "no thread series is called \"" + match.group("series") + "\": write " + known,
          match.start("series"),
          written.length());
    }
    return size(match).then(size -> named(match, series, size, turns));
  }

  private static Parsed<ThreadDesignation> named(
      Matcher match, String series, String size, Optional<BigFraction> turns) {
    Optional<ThreadRow> found = find(series, size);
    if (found.filter(row -> turns.map(row::has).orElse(true)).isEmpty()) {
      found =
          bare(match, size)
              .flatMap(number -> find(series, number))
              .filter(row -> turns.map(row::has).orElse(true))
              .or(() -> find(series, size));
    }
    if (found.isEmpty()) {
      return Parsed.bad(
          series + " has no size " + size + ": it has " + sizes(series),
          match.start("size"),
          match.group("size").length());
    }
    ThreadRow row = found.get();
    if (turns.isPresent() && !row.has(turns.get())) {
      String reason =
          series.equals("BA")
              ? "a BA thread goes by its number alone: " + size + " BA"
              : size + " " + series + " has " + row.turns() + " threads to the inch";
      return Parsed.bad(reason, match.start("turns"), match.group("turns").length());
    }
    return Parsed.ok(row.thread());
  }

  private static Parsed<ThreadDesignation> unnamed(Matcher match, Optional<BigFraction> turns) {
    if (turns.isEmpty()) {
      return Parsed.bad(
          "say the series or the threads to the inch: " + EXAMPLES, match.group().length(), 0);
    }
    return size(match)
        .map(size -> bare(match, size).filter(it -> isCut(it, turns.get())).orElse(size))
        .then(
            size -> {
              BigFraction major =
                  size.startsWith("#") ? numbered(size) : number(size).toOptional().orElseThrow();
              if (major.signum() == 0) {
                return Parsed.bad(
                    "a thread has a diameter", match.start("size"), match.group("size").length());
              }
              String text =
                  size
                      + (size.startsWith("#") ? "" : " in")
                      + " x "
                      + Quantity.number(turns.get(), true)
                      + " tpi";
              return Parsed.ok(
                  new ThreadDesignation(
                      "", size, major.multiply(INCH), INCH.divide(turns.get()), text));
            });
  }

  /** Returns the numbered size that {@code 10-32} may mean, as {@code #10-32} does. */
  private static Optional<String> bare(Matcher match, String size) {
    boolean whole = match.group("unit") == null && size.matches("[0-9]{1,2}");
    return whole ? Optional.of("#" + size) : Optional.empty();
  }

  private static boolean isCut(String size, BigFraction turns) {
    return ROWS.stream().anyMatch(row -> row.size().equals(size) && row.has(turns));
  }

  /** A numbered size is 0.060 in and 0.013 in more for each number (ASME B1.1, from memory). */
  private static BigFraction numbered(String size) {
    return BigFraction.of(60 + 13 * Integer.parseInt(size.substring(1)), 1000);
  }

  /** Returns the size as the tables write it: {@code 1 1/8}, {@code 1/4}, {@code #10}. */
  private static Parsed<String> size(Matcher match) {
    String written = match.group("size");
    Matcher numbered = NUMBERED.matcher(written);
    if (numbered.matches()) {
      return Parsed.ok("#" + Integer.parseInt(numbered.group(1)));
    }
    return number(written)
        .match(
            value -> Parsed.ok(Quantity.number(value, true)),
            bad -> bad.within(match.start("size")));
  }

  private static Parsed<BigFraction> number(String text) {
    Cursor cursor = new Cursor(text);
    return cursor.number().then(cursor::finish);
  }

  private static Optional<ThreadRow> find(String series, String size) {
    return ROWS.stream()
        .filter(row -> row.series().equals(series) && row.size().equals(size))
        .findFirst();
  }

  private static String sizes(String series) {
    return ROWS.stream()
        .filter(row -> row.series().equals(series))
        .map(ThreadRow::size)
        .collect(Collectors.joining(", "));
  }
}
