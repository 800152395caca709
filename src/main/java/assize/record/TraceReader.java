package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.diagnostic.Code;
import assize.evidence.Grade;
import assize.ruleset.Item;
import assize.ruleset.Manners;
import assize.ruleset.ScaleReader;
import assize.ruleset.TangledClaimsCheck;
import assize.schema.Fields;
import assize.schema.Values;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what the vehicle itself shows of what is right. */
public final class TraceReader {
  private static final int MOST = 1000;

  private final RecordReading in;
  private final Values values;

  TraceReader(RecordReading in) {
    this.in = in;
    this.values = in.values();
  }

  public List<Trace> read(Optional<Node.Entry> section) {
    List<Trace> traces = new ArrayList<>();
    Map<String, Integer> onItems = new HashMap<>();
    for (Node.Entry entry : values.list(section, "a list of traces")) {
      if (traces.size() == MOST) {
        values
            .problems()
            .add(
                Code.TOO_MANY,
                entry.at(),
                "a record may have at most " + MOST + " traces; this is one more");
        return traces;
      }
      Optional<Trace> trace = values.mapping(entry, "a trace").flatMap(this::trace);
      trace.ifPresent(
          it -> {
            traces.add(it);
            tooMany(it, onItems.merge(it.item(), 1, Integer::sum));
          });
    }
    return traces;
  }

  private void tooMany(Trace last, int onItem) {
    boolean wide =
        last.values().values().stream().anyMatch(it -> it.size() > TangledClaimsCheck.MOST_TRACES);
    if (onItem > TangledClaimsCheck.MOST_TRACES || wide) {
      values
          .problems()
          .add(
              Code.TOO_TANGLED,
              last.at(),
              "at most "
                  + TangledClaimsCheck.MOST_TRACES
                  + " traces on one item, of as many values each, can be weighed",
              "join what shows the same");
    }
  }

  private Optional<Trace> trace(Node.Mapping mapping) {
    Fields fields = values.fields(mapping, RecordShapes.TRACE, mapping.at().part(0, 1));
    Optional<Node.Entry> itemEntry = fields.get("item");
    Optional<Item> item =
        itemEntry
            .flatMap(it -> in.names().items.find(it, values))
            .flatMap(it -> Optional.ofNullable(in.items().get(it)));
    Optional<Grade> grade = ScaleReader.GRADES.read(fields.get("grade"), values);
    Optional<Manners.Said> said = Manners.read(fields, values);
    Optional<String> where = values.text(fields.get("where"));
    List<String> cited = in.cited(fields.get("evidence"));
    fields.done();
    if (item.isEmpty() || said.isEmpty()) {
      return Optional.empty();
    }
    Map<Aspect, List<Expectation>> told = in.held(item.get(), said.get().entry());
    if (told.isEmpty() || grade.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Trace(
            item.get().id(),
            grade.get(),
            said.get().manner(),
            told,
            where,
            cited,
            itemEntry.orElseThrow().at()));
  }
}
