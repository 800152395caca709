package assize.aspect;

import assize.date.DateCodeTables;
import assize.date.DateRange;
import assize.date.DateRangeFormatter;
import assize.date.DateRangeSet;
import assize.date.LeadTime;
import assize.diagnostic.DiagnosticCode;
import assize.pattern.DateCodePattern;
import assize.schema.FixedVocabulary;
import assize.schema.MappingReader;
import assize.schema.ObjectSchema;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.ValueSchema;
import assize.text.Parsed;
import assize.yaml.Node;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A code that tells when the part was made, and when it may have been. */
public final class DateCodes extends Kind {
  /** How weeks are counted in date codes. */
  private static final FixedVocabulary<String> WEEKS =
      FixedVocabulary.of(
          "a way of counting weeks",
          DiagnosticCode.UNKNOWN_WORD,
          new String[] {"from January 1", "ISO"},
          word -> word);

  /** How a date code is made up. */
  private static final ObjectSchema CODE =
      ObjectSchema.of(
          "a date code",
          PropertySchema.need(
              "pattern",
              ScalarFormat.text(),
              "The code (RE2), with named groups for year, month, week or day:"
                  + " (?P<month>[A-M])(?P<year>[0-9])."),
          PropertySchema.need(
              "lead_time",
              ScalarFormat.text("P6M..P0D"),
              "How long before the vehicle the part may have been made, the longest time first."),
          PropertySchema.may(
              "years",
              new ValueSchema.Named(ScalarFormat.text(), ScalarFormat.whole("0", "9999")),
              "Letters that stand for years: {A: 1932, B: 1933}."),
          PropertySchema.may(
              "months",
              new ValueSchema.Named(ScalarFormat.text(), ScalarFormat.whole("1", "12")),
              "Letters that stand for months: {A: 1, B: 2}."),
          PropertySchema.may(
              "weeks",
              ValueSchema.word(WEEKS.all()),
              "How weeks are counted; those of ISO 8601 if nothing is said."));

  @Override
  public ValueSchema right() {
    return new ValueSchema.Group(CODE);
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.text("E4");
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    ScalarReader values = reader.values();
    return values
        .mapping(entry, "a pattern and how long before the vehicle the part was made")
        .flatMap(it -> right(values.fields(it, CODE, entry.key().at()), values))
        .stream()
        .toList();
  }

  private static Optional<Expectation> right(MappingReader fields, ScalarReader values) {
    Optional<Node.Scalar> pattern =
        fields.get("pattern").flatMap(it -> values.scalar(it, "a pattern"));
    Optional<LeadTime> made =
        values.parsed(
            fields.get("lead_time"),
            DiagnosticCode.BAD_DURATION,
            "two durations, as in P6M..P0D,",
            LeadTime::parse);
    Map<String, Integer> years = table(fields.get("years"), "a year", 0, 9999, values);
    Map<String, Integer> months = table(fields.get("months"), "a month", 1, 12, values);
    boolean january =
        WEEKS.read(fields.get("weeks"), values).filter("from January 1"::equals).isPresent();
    fields.done();
    if (pattern.isEmpty() || made.isEmpty()) {
      return Optional.empty();
    }
    DateCodeTables tables = new DateCodeTables(years, months, january);
    return values
        .parsed(
            pattern.get(),
            DiagnosticCode.BAD_PATTERN,
            text -> DateCodePattern.compile(text, tables, made.get()))
        .map(Right::new);
  }

  private static Map<String, Integer> table(
      Optional<Node.Entry> entry, String what, int least, int most, ScalarReader values) {
    Map<String, Integer> table = new HashMap<>();
    for (Node.Entry one : values.entries(entry, "letters, each with " + what)) {
      Optional<Node.Scalar> text = values.scalar(one, what);
      Optional<Long> number = text.flatMap(it -> values.whole(it, what));
      if (text.isEmpty() || number.isEmpty()) {
        continue;
      }
      if (number.get() < least || number.get() > most) {
        values.refuse(
            DiagnosticCode.BAD_NUMBER, text.get(), what + " is from " + least + " to " + most);
      } else {
        table.put(one.name(), number.get().intValue());
      }
    }
    return table;
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return PartNumbers.stamped(entry, reader);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.STAMPED;
  }

  @Override
  protected String hint(List<Expectation> right) {
    return "the code as stamped or cast";
  }

  @Override
  public Holds cell() {
    return Holds.EXACT;
  }

  @Override
  public boolean isDated() {
    return true;
  }

  /** How a code is made up. */
  public record Right(DateCodePattern code) implements Expectation {
    @Override
    public String key() {
      return code.text();
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof PartNumbers.Found part)) {
        return Comparison.unlike();
      }
      String stamped = part.text();
      Optional<Parsed<DateRangeSet>> days = CodeMeanings.days(code, stamped, setting.build());
      if (days.isEmpty()) {
        return Comparison.incorrect(new Reason.Said(stamped + " is not a code of this form"));
      }
      return days.get()
          .match(
              set -> compare(stamped, set.spans(), setting),
              bad ->
                  Comparison.incorrect(
                      new Reason.Said(stamped + " means no day: " + bad.reason())));
    }

    private Comparison compare(String stamped, List<DateRange> meanings, Setting setting) {
      DateRange window = code.made().window(setting.builtOn());
      Optional<DateRange> fitting =
          meanings.stream().filter(made -> code.made().allows(made, setting.builtOn())).findFirst();
      Optional<DateRange> nearest = fitting.or(() -> CodeMeanings.nearest(meanings, window));
      if (nearest.isEmpty()) {
        return Comparison.incorrect(new Reason.Said(stamped + " means no day near the build day"));
      }
      DateRange made = nearest.get();
      boolean repeats = meanings.stream().anyMatch(other -> !other.equals(made));
      boolean late = made.first().isAfter(window.last());
      When when =
          fitting.isPresent()
              ? When.RIGHT
              : !late
                  ? When.EARLY
                  : made.first().isAfter(setting.builtOn()) ? When.AFTER : When.LATE;
      Why why = new Why(stamped, made, window, when, repeats);
      if (fitting.isPresent()) {
        return Comparison.correct(why);
      }
      if (late) {
        return Comparison.incorrect(why);
      }
      boolean nothing = setting.tooEarly().signum() == 0;
      return new Comparison(
          nothing ? Verdict.INCORRECT : Verdict.PARTLY_CORRECT, setting.tooEarly(), why);
    }

    @Override
    public String words(Place at) {
      return DateCodeFormatter.of(code);
    }
  }

  /** When a part was made, held against when it may have been. */
  private enum When {
    RIGHT,
    EARLY,
    LATE,
    AFTER
  }

  private record Why(String stamped, DateRange made, DateRange window, When when, boolean repeats)
      implements Reason {
    @Override
    public String words(Place at) {
      return stamped
          + " is "
          + DateRangeFormatter.of(made)
          + held()
          + (repeats ? "; the code repeats, it could be another decade's" : "");
    }

    private String held() {
      return switch (when) {
        case RIGHT -> "";
        case EARLY ->
            ", earlier than the window from "
                + DateRangeFormatter.of(window.first())
                + " to "
                + DateRangeFormatter.of(window.last())
                + ": a doubt";
        case LATE -> ", too late to have been fitted";
        case AFTER -> ", after the vehicle was built: an anachronism";
      };
    }
  }
}
