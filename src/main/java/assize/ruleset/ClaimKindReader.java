package assize.ruleset;

import assize.diagnostic.DiagnosticCode;
import assize.evidence.ClaimKind;
import assize.schema.MappingReader;
import assize.schema.ScalarReader;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads in which of the three ways a claim or a trace speaks. */
public final class ClaimKindReader {
  private static final List<ClaimKind> MANNERS = List.of(ClaimKind.values());

  private ClaimKindReader() {}

  /** Reads the one of {@code says}, {@code leaves_open} and {@code rules_out} that is there. */
  public static Optional<Said> read(MappingReader fields, ScalarReader values) {
    List<Said> said = new ArrayList<>();
    for (ClaimKind manner : MANNERS) {
      fields.get(manner.word()).ifPresent(it -> said.add(new Said(manner, it)));
    }
    if (said.isEmpty()) {
      values
          .problems()
          .add(
              DiagnosticCode.MISSING_KEY,
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
              DiagnosticCode.WRONG_STRUCTURE,
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
  public record Said(ClaimKind manner, Node.Entry entry) {}
}
