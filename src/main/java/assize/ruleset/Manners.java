package assize.ruleset;

import assize.diagnostic.Code;
import assize.evidence.Manner;
import assize.schema.Fields;
import assize.schema.Values;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads in which of the three ways a claim or a trace speaks. */
public final class Manners {
  private static final List<Manner> MANNERS = List.of(Manner.values());

  private Manners() {}

  /** Reads the one of {@code says}, {@code leaves_open} and {@code rules_out} that is there. */
  public static Optional<Said> read(Fields fields, Values values) {
    List<Said> said = new ArrayList<>();
    for (Manner manner : MANNERS) {
      fields.get(manner.word()).ifPresent(it -> said.add(new Said(manner, it)));
    }
    if (said.isEmpty()) {
      values
          .problems()
          .add(
              Code.MISSING_KEY,
              fields.at(),
              "this says nothing",
              "add `says:`, `leaves_open:` or `rules_out:`");
      return Optional.empty();
    }
    if (said.size() > 1) {
      Said second = said.get(1);
      values
          .problems()
          .add(
              Code.WRONG_STRUCTURE,
              second.entry().key().at(),
              "`"
                  + said.get(0).entry().name()
                  + "` and `"
                  + second.entry().name()
                  + "` stand in one claim; a claim speaks in one way",
              "write two claims of the same source");
    }
    return Optional.of(said.get(0));
  }

  /** How it speaks, and what it says. */
  public record Said(Manner manner, Node.Entry entry) {}
}
