package assize.yaml;

import assize.aspect.DateCodePattern;
import assize.aspect.Expectation;
import assize.date.CodeTables;
import assize.date.LeadTime;
import assize.diagnostic.Code;
import assize.shape.AspectShapes;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads how a date code is made up, and how long before the vehicle the part may have been made.
 */
final class DateCodeReader {
  private static final FixedWords<String> WEEKS =
      FixedWords.of(
          "a way of counting weeks",
          Code.UNKNOWN_WORD,
          AspectShapes.WEEKS.toArray(String[]::new),
          word -> word);

  private final Values values;

  DateCodeReader(Values values) {
    this.values = values;
  }

  Optional<Expectation> read(Node.Entry entry) {
    return values
        .mapping(entry, "a pattern and how long before the vehicle the part was made")
        .flatMap(it -> read(values.fields(it, AspectShapes.DATE_CODE, entry.key().at())));
  }

  private Optional<Expectation> read(Fields fields) {
    Optional<Node.Scalar> pattern =
        fields.get("pattern").flatMap(it -> values.scalar(it, "a pattern"));
    Optional<LeadTime> made =
        values.parsed(
            fields.get("made"),
            Code.BAD_DURATION,
            "two durations, as in P6M..P0D,",
            LeadTime::parse);
    Map<String, Integer> years = table(fields.get("years"), "a year", 0, 9999);
    Map<String, Integer> months = table(fields.get("months"), "a month", 1, 12);
    boolean january =
        WEEKS.read(fields.get("weeks"), values).filter("from January 1"::equals).isPresent();
    fields.done();
    if (pattern.isEmpty() || made.isEmpty()) {
      return Optional.empty();
    }
    CodeTables tables = new CodeTables(years, months, january);
    return values
        .parsed(
            pattern.get(),
            Code.BAD_PATTERN,
            text -> DateCodePattern.compile(text, tables, made.get()))
        .map(Expectation.MadeCode::new);
  }

  private Map<String, Integer> table(Optional<Node.Entry> entry, String what, int least, int most) {
    Map<String, Integer> table = new HashMap<>();
    for (Node.Entry one : values.entries(entry, "letters, each with " + what)) {
      Optional<Node.Scalar> text = values.scalar(one, what);
      Optional<Long> number = text.flatMap(it -> values.whole(it, what));
      if (text.isEmpty() || number.isEmpty()) {
        continue;
      }
      if (number.get() < least || number.get() > most) {
        values.refuse(Code.BAD_NUMBER, text.get(), what + " is from " + least + " to " + most);
      } else {
        table.put(one.name(), number.get().intValue());
      }
    }
    return table;
  }
}
