package assize.ruleset;

import assize.aspect.Aspect;
import assize.diagnostic.Diagnostic;
import assize.diagnostic.DiagnosticCode;
import assize.yaml.DiagnosticCollector;
import assize.yaml.Node;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds aspects that are both expected and claimed: what is expected would have no source. */
final class ExpectAndClaimsCheck {
  private final DiagnosticCollector problems;

  ExpectAndClaimsCheck(DiagnosticCollector problems) {
    this.problems = problems;
  }

  void check(List<ClaimReader.Told> expected, List<ClaimReader.Told> claimed) {
    if (expected.isEmpty() || claimed.isEmpty()) {
      return;
    }
    Map<Aspect, Node.Entry> places = new HashMap<>();
    expected.forEach(it -> places.put(it.aspect(), it.entry()));
    for (ClaimReader.Told one : claimed) {
      Node.Entry other = places.remove(one.aspect());
      if (other != null) {
        problems.add(
            Diagnostic.of(
                    DiagnosticCode.EXPECT_AND_CLAIMS,
                    one.entry().key().at(),
                    "`" + one.aspect().word() + "` is claimed here and expected above",
                    "write all of it as claims")
                .with(other.key().at(), "expected here"));
      }
    }
  }
}
