package assize.record;

import assize.diagnostic.DiagnosticCode;
import assize.ruleset.ClaimComplexityCheck;
import assize.schema.MappingReader;
import assize.schema.ScalarReader;
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
  private final ScalarReader values;

  TraceReader(RecordReading in) {
    this.in = in;
    this.values = in.values();
  }

  public List<PhysicalTrace> read(Optional<Node.Entry> section) {
    List<PhysicalTrace> traces = new ArrayList<>();
    Map<String, Integer> onItems = new HashMap<>();
    for (Node.Entry entry : values.list(section, "a list of traces")) {
      if (traces.size() == MOST) {
        values
            .problems()
            .add(
                DiagnosticCode.TOO_MANY,
                entry.at(),
                "a record may have at most " + MOST + " traces; this is one more");
        return traces;
      }
      Optional<PhysicalTrace> trace = values.mapping(entry, "a trace").flatMap(this::trace);
      trace.ifPresent(
          it -> {
            traces.add(it);
            tooMany(it, onItems.merge(it.item(), 1, Integer::sum));
          });
    }
    return traces;
  }

  private void tooMany(PhysicalTrace last, int onItem) {
    boolean wide =
        last.values().values().stream()
            .anyMatch(it -> it.size() > ClaimComplexityCheck.MOST_TRACES);
    if (onItem > ClaimComplexityCheck.MOST_TRACES || wide) {
      values
          .problems()
          .add(
              DiagnosticCode.TOO_MANY_CLAIMS,
              last.at(),
              "at most "
                  + ClaimComplexityCheck.MOST_TRACES
                  + " traces on one item, of as many values each, can be weighed",
              "join what shows the same");
    }
  }

  private Optional<PhysicalTrace> trace(Node.Mapping mapping) {
    MappingReader fields =
        values.fields(mapping, PhysicalTrace.TABLE.block(), mapping.at().part(0, 1));
    Span at = fields.peek(PhysicalTrace.ITEM.name()).map(Node.Entry::at).orElse(mapping.at());
    return PhysicalTrace.TABLE.read(fields, in, at);
  }
}
