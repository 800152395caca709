package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.date.DaySpan;
import assize.diagnostic.Code;
import assize.schema.Fields;
import assize.schema.Numbers;
import assize.schema.Values;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads what chassis and engine numbers date to. */
final class NumberTableReader {
  private final Vocabulary names;
  private final Values values;
  private final Places places;

  NumberTableReader(Vocabulary names, Values values, Places places) {
    this.names = names;
    this.values = values;
    this.places = places;
  }

  Map<String, NumberTable> tables(List<Node.Entry> entries) {
    Map<String, NumberTable> tables = new LinkedHashMap<>();
    for (Node.Entry entry : entries) {
      values
          .fields(entry, RuleSetShapes.NUMBER_TABLE)
          .flatMap(it -> table(entry.name(), it))
          .ifPresent(it -> tables.put(it.id(), it));
    }
    return tables;
  }

  private Optional<NumberTable> table(String id, Fields fields) {
    Optional<String> name = values.name(fields.get("name"));
    List<NumberTable.Series> series = new ArrayList<>();
    int index = 0;
    for (Node.Entry one : values.list(fields.get("series"), "a list of series")) {
      Optional<Node.Mapping> mapping = values.mapping(one, "a series");
      String place = Integer.toString(index++);
      if (mapping.isPresent()) {
        places.put(mapping.get().at(), "numbers", id, place);
        Fields inner =
            values.fields(mapping.get(), RuleSetShapes.SERIES, mapping.get().at().part(0, 1));
        series.add(series(inner, id, place));
        inner.done();
      }
    }
    fields.done();
    return name.map(it -> new NumberTable(id, it, series));
  }

  private NumberTable.Series series(Fields fields, String id, String index) {
    String prefix = values.text(fields.get("prefix")).orElse("");
    String suffix = values.text(fields.get("suffix")).orElse("");
    Set<String> models = new LinkedHashSet<>();
    for (Node.Entry one : values.oneOrMore(fields.get("models"))) {
      names.models.find(one, values).ifPresent(models::add);
    }
    Optional<String> plant = fields.get("plant").flatMap(it -> names.plants.find(it, values));
    List<NumberTable.Entry> first = new ArrayList<>();
    for (Node.Entry one : values.entries(fields.get("from"), "first numbers with their dates,")) {
      Optional<Long> number = values.whole(one.key(), "a number of the series");
      Optional<DaySpan> built = built(Optional.of(one));
      if (number.isPresent() && built.isPresent()) {
        places.put(one.key().at(), "numbers", id, index, "from", number.get().toString());
        first.add(new NumberTable.Entry(number.get(), built.get()));
      }
    }
    Optional<NumberTable.Entry> last = fields.get("last").flatMap(it -> last(it, id, index));
    List<NumberTable.Reserved> reserved = new ArrayList<>();
    for (Node.Entry one : values.list(fields.get("reserved"), "a list of reserved numbers")) {
      reserved(one, id, index).ifPresent(reserved::add);
    }
    return new NumberTable.Series(prefix, suffix, models, plant, first, last, reserved);
  }

  private Optional<NumberTable.Entry> last(Node.Entry entry, String id, String index) {
    Optional<Fields> fields = values.fields(entry, RuleSetShapes.LAST_NUMBER);
    if (fields.isEmpty()) {
      return Optional.empty();
    }
    places.put(entry.key().at(), "numbers", id, index, "last");
    Optional<Long> number = values.whole(fields.get().get("number"), "a number of the series");
    Optional<DaySpan> built = built(fields.get().get("built"));
    fields.get().done();
    return number.flatMap(it -> built.map(days -> new NumberTable.Entry(it, days)));
  }

  private Optional<NumberTable.Reserved> reserved(Node.Entry entry, String id, String index) {
    Optional<Node.Mapping> mapping = values.mapping(entry, "reserved numbers");
    if (mapping.isEmpty()) {
      return Optional.empty();
    }
    Fields fields =
        values.fields(mapping.get(), RuleSetShapes.RESERVED, mapping.get().at().part(0, 1));
    Optional<Node.Scalar> numbers =
        fields.get("numbers").flatMap(it -> values.scalar(it, "two numbers, as 3000..3049,"));
    Optional<String> purpose = values.name(fields.get("for"));
    Optional<DaySpan> built = built(fields.get("built"));
    fields.done();
    Optional<List<Long>> range = numbers.flatMap(this::range);
    if (range.isEmpty() || purpose.isEmpty()) {
      return Optional.empty();
    }
    long from = range.get().get(0);
    places.put(numbers.orElseThrow().at(), "numbers", id, index, "reserved", Long.toString(from));
    return Optional.of(new NumberTable.Reserved(from, range.get().get(1), purpose.get(), built));
  }

  private Optional<List<Long>> range(Node.Scalar text) {
    List<Optional<Long>> ends = new ArrayList<>();
    for (String end : text.text().split("\\.\\.", -1)) {
      ends.add(Numbers.whole(end));
    }
    boolean readable = ends.size() <= 2 && ends.stream().allMatch(Optional::isPresent);
    if (!readable) {
      return values.refuse(
          Code.BAD_RANGE, text, "reserved numbers are the first and the last, as in 3000..3049");
    }
    long from = ends.get(0).orElseThrow();
    long to = ends.get(ends.size() - 1).orElseThrow();
    return to < from
        ? values.refuse(Code.BAD_RANGE, text, from + ".." + to + " goes backward")
        : Optional.of(List.of(from, to));
  }

  private Optional<DaySpan> built(Optional<Node.Entry> entry) {
    return values.parsed(entry, Code.BAD_DATE, "a date", Dates::sureSpan);
  }
}
