package assize.compare;

import assize.aspect.Aspect;
import assize.compare.Change.Kind;
import assize.evidence.Claim;
import assize.ruleset.Item;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What changed of what is said of one aspect: each claim beside the one that took its place. */
final class ClaimChanges {
  private static final Span NOWHERE = new SourceFile("", "").span(0, 0);

  /** What is equal for two claims that are taken for one that changed, the most alike first. */
  private static final List<Function<Claim, Object>> LIKE =
      List.of(
          claim -> claim,
          claim -> List.of(claim.source(), says(claim), claim.scope()),
          claim -> List.of(claim.source(), says(claim)),
          claim -> List.of(claim.source(), claim.scope()),
          claim -> claim.source(),
          claim -> List.of(says(claim), claim.scope()));

  private ClaimChanges() {}

  private static Object says(Claim claim) {
    return List.of(claim.manner(), claim.values());
  }

  static void into(
      ChangeCollector.Of of,
      Item old,
      Item now,
      Aspect aspect,
      List<Claim> before,
      List<Claim> after) {
    List<Claim> gone = placeless(before);
    Pairing<Claim> come = new Pairing<>(placeless(after));
    String what = "what is said of the " + aspect.spoken();
    for (Function<Claim, Object> like : LIKE) {
      gone =
          come.pair(
              gone,
              like,
              (one, other) -> {
                if (one.equals(other)) {
                  return;
                }
                boolean alters =
                    !one.source().equals(other.source())
                        || !says(one).equals(says(other))
                        || !one.scope().equals(other.scope());
                of.check(
                    alters ? what : wording(one, other) + " on the " + aspect.spoken(),
                    alters,
                    Optional.of(new ChangedValue.ClaimValue(old, aspect, one)),
                    Optional.of(new ChangedValue.ClaimValue(now, aspect, other)));
              });
    }
    for (Claim claim : gone) {
      of.note(
          Kind.CHANGED,
          what,
          true,
          Optional.of(new ChangedValue.ClaimValue(old, aspect, claim)),
          Optional.empty());
    }
    for (Claim claim : come.left()) {
      of.note(
          Kind.CHANGED,
          what,
          true,
          Optional.empty(),
          Optional.of(new ChangedValue.ClaimValue(now, aspect, claim)));
    }
  }

  private static String wording(Claim one, Claim other) {
    return one.citation().equals(other.citation()) ? "picture of a claim" : "citation";
  }

  /**
   * Returns claims as if they stood nowhere: where they are written is no part of what they say.
   */
  private static List<Claim> placeless(List<Claim> claims) {
    List<Claim> placeless = new ArrayList<>();
    for (Claim claim : claims) {
      placeless.add(
          new Claim(
              claim.source(),
              claim.citation(),
              claim.scope(),
              claim.manner(),
              claim.values(),
              claim.photo().map(photo -> new Claim.Photo(photo.file(), photo.caption(), NOWHERE)),
              NOWHERE));
    }
    return placeless;
  }
}
