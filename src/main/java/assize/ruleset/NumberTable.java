package assize.ruleset;

import assize.aspect.Definition;
import assize.date.DateRange;
import assize.diagnostic.DiagnosticCode;
import assize.pattern.NumberPattern;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.NumberReader;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.text.Span;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** What chassis or engine numbers date to. */
public final class NumberTable extends Facts {
  private static final String A_NUMBER = "a number of the series";

  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it: Chassis number.");
  public static final Field<Definition, List<Series>> SERIES =
      Field.need(
          "series",
          List.of(),
          Type.list(Series.TABLE, "a list of series", "a series"),
          "Runs of numbers that rise with time.");

  static final Table<Definition, NumberTable> TABLE =
      Table.of("a number table", NumberTable::new, List.of(ID, NAME, SERIES));

  private NumberTable(Drawn drawn) {
    super(drawn);
  }

  /** Returns a table without numbers. */
  public static NumberTable of(String id, String name) {
    return TABLE.with(TABLE.with(TABLE.blank(), ID, id), NAME, name);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns its series in the order written. */
  public List<Series> series() {
    return get(SERIES);
  }

  /** A number, and the days on which it may have been given out. */
  public static final class TableEntry extends Facts {
    private static final ValueSchema WHOLE = ScalarFormat.whole("0", "999999999999999");

    public static final Field<Reading, Long> NUMBER =
        Field.need(
            "number",
            0L,
            Type.of(WHOLE, (entry, in) -> in.values().whole(entry, A_NUMBER)),
            "The last number of the series.");
    public static final Field<Reading, DateRange> BUILT =
        Field.need("built", DateRange.ALL, TableEntry.days("1936-08-28"), "When it was built.");

    static final Table<Reading, TableEntry> TABLE =
        Table.of("a last number", TableEntry::new, List.of(NUMBER, BUILT));

    private TableEntry(Drawn drawn) {
      super(drawn);
    }

    /** Days of which the writer is sure. */
    private static Type<Reading, DateRange> days(String... examples) {
      return Type.parsed(
          ScalarFormat.date(examples), DiagnosticCode.BAD_DATE, "a date", DateReader::sureSpan);
    }

    private static TableEntry of(long number, DateRange built, Span at) {
      return TABLE.at(TABLE.with(TABLE.with(TABLE.blank(), NUMBER, number), BUILT, built), at);
    }

    public long number() {
      return get(NUMBER);
    }

    public DateRange built() {
      return get(BUILT);
    }
  }

  /** A block of numbers set aside; it stands where its numbers are written. */
  public static final class Reserved extends Facts {
    /** The first number and the last. */
    record Range(long from, long to) {}

    public static final Field<Reading, Range> NUMBERS =
        Field.<Reading, Range>need(
                "numbers",
                new Range(0, 0),
                Type.of(ScalarFormat.text("3000..3049"), Reserved::range),
                "The first and the last: 3000..3049.")
            .placing();
    public static final Field<Reading, String> PURPOSE =
        Field.need("purpose", "", Type.visible(), "What they were kept for: exhibition vehicles.");
    public static final Field<Reading, Optional<DateRange>> BUILT =
        Field.may("built", TableEntry.days("1933-10"), "When they were built, if they were.");

    static final Table<Reading, Reserved> TABLE =
        Table.of("a reserved block", Reserved::new, List.of(NUMBERS, PURPOSE, BUILT));

    private Reserved(Drawn drawn) {
      super(drawn);
    }

    private static Optional<Range> range(Optional<Node.Entry> entry, Reading in) {
      return entry
          .flatMap(it -> in.values().scalar(it, "two numbers, as 3000..3049,"))
          .flatMap(it -> range(it, in));
    }

    private static Optional<Range> range(Node.Scalar text, Reading in) {
      List<Optional<Long>> ends = new ArrayList<>();
      for (String end : text.text().split("\\.\\.", -1)) {
        ends.add(NumberReader.whole(end));
      }
      boolean readable = ends.size() <= 2 && ends.stream().allMatch(Optional::isPresent);
      if (!readable) {
        return in.values()
            .refuse(
                DiagnosticCode.BAD_RANGE,
                text,
                "reserved numbers are the first and the last, as in 3000..3049");
      }
      long from = ends.get(0).orElseThrow();
      long to = ends.get(ends.size() - 1).orElseThrow();
      return to < from
          ? in.values().refuse(DiagnosticCode.BAD_RANGE, text, from + ".." + to + " goes backward")
          : Optional.of(new Range(from, to));
    }

    /** Returns the first of its numbers. */
    public long from() {
      return get(NUMBERS).from();
    }

    /** Returns the last of its numbers. */
    public long to() {
      return get(NUMBERS).to();
    }

    /** Returns what the numbers were kept for. */
    public String purpose() {
      return get(PURPOSE);
    }

    /** Returns when they were used, where that is known. */
    public Optional<DateRange> built() {
      return get(BUILT);
    }
  }

  /** Numbers that were given out one after the other. */
  public static final class Series extends Facts {
    public static final Field<Reading, String> PREFIX =
        Field.orNone("prefix", "", Type.text("X-"), "What stands before the number.");
    public static final Field<Reading, String> SUFFIX =
        Field.orNone("suffix", "", Type.text(), "What stands behind the number.");
    public static final Field<Definition, Set<String>> MODELS =
        Field.orNone(
            "models",
            Set.of(),
            Type.oneOrMore(Definition.word(it -> it.models)).as(Set::copyOf),
            "The models that have these numbers.");
    public static final Field<Definition, Optional<String>> PLANT =
        Field.may("plant", Definition.word(it -> it.plants), "The plant that gave them.");
    public static final Field<Reading, List<TableEntry>> FIRST_NUMBERS =
        Field.need(
            "first_numbers",
            List.of(),
            Type.of(
                new ValueSchema.Named(TableEntry.WHOLE, ScalarFormat.date("1933-01")),
                Series::firstNumbers),
            "The first number of a day, month or year, and which: {1001: 1932-03-14}.");
    public static final Field<Reading, Optional<TableEntry>> LAST =
        Field.may("last", Type.group(TableEntry.TABLE), "The last number, and when it was built.");
    public static final Field<Reading, List<Reserved>> RESERVED =
        Field.orNone(
            "reserved",
            List.of(),
            Type.list(Reserved.TABLE, "a list of reserved numbers", "reserved numbers"),
            "Numbers within the series that were not given in their turn.");

    static final Table<Definition, Series> TABLE =
        Table.of(
            "a series",
            Series::new,
            List.of(PREFIX, SUFFIX, MODELS, PLANT, FIRST_NUMBERS, LAST, RESERVED));

    private Series(Drawn drawn) {
      super(drawn);
    }

    private static Optional<List<TableEntry>> firstNumbers(Optional<Node.Entry> entry, Reading in) {
      List<TableEntry> first = new ArrayList<>();
      for (Node.Entry one : in.values().entries(entry, "first numbers with their dates,")) {
        Optional<Long> number = in.values().whole(one.key(), A_NUMBER);
        Optional<DateRange> built = TableEntry.days().reader().apply(Optional.of(one), in);
        number.ifPresent(
            it -> built.ifPresent(days -> first.add(TableEntry.of(it, days, one.key().at()))));
      }
      return Optional.of(List.copyOf(first));
    }

    /** Returns the digits of a stamped number that has this prefix and suffix. */
    public OptionalLong numberOf(String stamped) {
      String folded = NumberPattern.fold(stamped);
      String before = NumberPattern.fold(prefix());
      String after = NumberPattern.fold(suffix());
      if (!folded.startsWith(before)
          || !folded.endsWith(after)
          || folded.length() <= before.length() + after.length()) {
        return OptionalLong.empty();
      }
      String digits = folded.substring(before.length(), folded.length() - after.length());
      boolean plain = digits.length() <= 18 && digits.chars().allMatch(c -> c >= '0' && c <= '9');
      return plain ? OptionalLong.of(Long.parseLong(digits)) : OptionalLong.empty();
    }

    /** Returns what stands before the digits, as written. */
    public String prefix() {
      return get(PREFIX);
    }

    /** Returns what stands after them. */
    public String suffix() {
      return get(SUFFIX);
    }

    /** Returns the models that bear them; empty: any. */
    public Set<String> models() {
      return get(MODELS);
    }

    /** Returns the works they were given out at. */
    public Optional<String> plant() {
      return get(PLANT);
    }

    /** Returns the first number of a day, month or year, rising. */
    public List<TableEntry> firstNumbers() {
      return get(FIRST_NUMBERS);
    }

    /** Returns the last number given out. */
    public Optional<TableEntry> last() {
      return get(LAST);
    }

    /** Returns the blocks that were set aside. */
    public List<Reserved> reserved() {
      return get(RESERVED);
    }
  }
}
