package assize.ruleset;

import assize.diagnostic.Code;
import assize.evidence.Grade;
import assize.schema.Fields;
import assize.schema.FixedWords;
import assize.schema.Values;
import assize.yaml.Node;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads how points become a score, and the awards. */
public final class ScaleReader {
  public static final FixedWords<Grade> GRADES =
      FixedWords.of("a grade", Code.UNKNOWN_WORD, Grade.values(), Grade::name);
  private static final FixedWords<Scale.Method> METHODS =
      FixedWords.of("a method", Code.UNKNOWN_WORD, Scale.Method.values(), Scale.Method::word);

  private final Values values;

  public ScaleReader(Values values) {
    this.values = values;
  }

  public Scale scale(Optional<Node.Entry> section) {
    return section
        .flatMap(it -> values.fields(it, RuleSetShapes.SCALE))
        .map(this::scale)
        .orElseGet(Scale::usual);
  }

  private Scale scale(Fields fields) {
    Scale usual = Scale.usual();
    Map<Grade, Integer> grades = new EnumMap<>(usual.grades());
    for (Node.Entry one : values.entries(fields.get("grades"), "grades with their weights")) {
      Optional<Grade> grade = GRADES.find(one.key(), values.problems());
      Optional<Integer> weight =
          values.thousandths(Optional.of(one), 1, 990, "a weight from 0.001 to 0.99");
      if (grade.isPresent() && weight.isPresent()) {
        grades.put(grade.get(), weight.get());
      }
    }
    Map<String, BigFraction> allow = new LinkedHashMap<>();
    for (Node.Entry one : values.entries(fields.get("allow"), "reasons with their credits")) {
      values.checkWord(one.key());
      values.credit(Optional.of(one)).ifPresent(it -> allow.put(one.name(), it));
    }
    Scale scale =
        new Scale(
            METHODS.read(fields.get("method"), values).orElse(usual.method()),
            outOf(fields.get("out_of")).orElse(usual.outOf()),
            values.credit(fields.get("not_shown")).orElse(usual.notShown()),
            values
                .thousandths(fields.get("settled_at"), 501, 990, "a belief above 0.5, up to 0.99")
                .orElse(usual.settledAt()),
            grades,
            values.credit(fields.get("too_early")).orElse(usual.tooEarly()),
            allow);
    fields.done();
    return scale;
  }

  private Optional<Long> outOf(Optional<Node.Entry> entry) {
    Optional<Long> points = values.points(entry);
    if (points.isPresent() && points.get() == 0) {
      values
          .problems()
          .add(Code.BAD_POINTS, entry.orElseThrow().at(), "a score out of 0 points is no score");
    }
    return points;
  }

  public List<Award> awards(List<Node.Entry> entries, long outOf, Places places) {
    List<Award> awards = new ArrayList<>();
    for (Node.Entry entry : entries) {
      values.checkId(entry.key());
      values
          .fields(entry, RuleSetShapes.AWARD)
          .flatMap(it -> award(entry, it, outOf, places))
          .ifPresent(awards::add);
    }
    return awards;
  }

  private Optional<Award> award(Node.Entry entry, Fields fields, long outOf, Places places) {
    Optional<String> name = values.name(fields.get("name"));
    Optional<Node.Entry> atEntry = fields.get("at");
    Optional<Long> at = atEntry.flatMap(it -> at(it, outOf));
    atEntry.ifPresent(it -> places.put(it.at(), "awards", entry.name()));
    Optional<BigFraction> noAreaUnder = values.credit(fields.get("no_area_under"));
    Optional<Long> noItemOver = values.points(fields.get("no_item_over"));
    fields.done();
    if (name.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Award(
            entry.name(),
            name.get(),
            at.get(),
            noAreaUnder,
            noItemOver.map(OptionalLong::of).orElseGet(OptionalLong::empty)));
  }

  private Optional<Long> at(Node.Entry entry, long outOf) {
    boolean share = entry.value() instanceof Node.Scalar text && text.text().contains("%");
    return share
        ? values
            .credit(Optional.of(entry))
            .map(it -> it.multiply(BigInteger.valueOf(outOf)))
            .map(it -> it.bigDecimalValue(0, RoundingMode.HALF_EVEN).longValueExact())
        : values.points(Optional.of(entry));
  }
}
