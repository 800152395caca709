package assize.standing;

import assize.evidence.Scope;
import java.util.List;
import java.util.Set;

/** What a scope asks of a vehicle, other than when it was built. */
public final class Asking {
  private Asking() {}

  /** Returns its questions, each once. */
  public static Set<Question> by(Scope scope) {
    return Asked.by(List.of(scope)).questions();
  }
}
