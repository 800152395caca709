package assize.record;

import assize.diagnostic.Code;
import assize.ruleset.TangledClaimsCheck;
import assize.schema.Fields;
import assize.schema.Values;
import assize.text.Span;
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
              Code.TOO_MANY_CLAIMS,
              last.at(),
              "at most "
                  + TangledClaimsCheck.MOST_TRACES
                  + " traces on one item, of as many values each, can be weighed",
              "join what shows the same");
    }
  }

  private Optional<Trace> trace(Node.Mapping mapping) {
    Fields fields = values.fields(mapping, Trace.TABLE.block(), mapping.at().part(0, 1));
    Span at = fields.peek(Trace.ITEM.name()).map(Node.Entry::at).orElse(mapping.at());
    return Trace.TABLE.read(fields, in, at);
  }
}
