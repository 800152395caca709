package assize.editions;

import assize.aspect.Aspect;
import assize.editions.Change.Kind;
import assize.evidence.Claim;
import assize.ruleset.Item;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;

/** What changed of what is said of one aspect: each claim beside the one that took its place. */
final class ClaimChanges {
  private static final Span NOWHERE = new SourceFile("", "").span(0, 0);

  /** The likeness of two claims that are taken for one that changed, the greatest first. */
  private static final List<BiPredicate<Claim, Claim>> LIKE =
      List.of(
          Claim::equals,
          (a, b) -> a.source().equals(b.source()) && says(a, b) && a.scope().equals(b.scope()),
          (a, b) -> a.source().equals(b.source()) && says(a, b),
          (a, b) -> a.source().equals(b.source()) && a.scope().equals(b.scope()),
          (a, b) -> a.source().equals(b.source()),
          (a, b) -> says(a, b) && a.scope().equals(b.scope()));

  private ClaimChanges() {}

  private static boolean says(Claim a, Claim b) {
    return a.manner() == b.manner() && a.values().equals(b.values());
  }

  static void into(
      Differences.Of of, Item old, Item now, Aspect aspect, List<Claim> before, List<Claim> after) {
    List<Claim> gone = placeless(before);
    List<Claim> come = placeless(after);
    String what = "what is said of the " + aspect.spoken();
    for (BiPredicate<Claim, Claim> like : LIKE) {
      Iterator<Claim> left = gone.iterator();
      while (left.hasNext()) {
        Claim one = left.next();
        Optional<Claim> other = come.stream().filter(it -> like.test(one, it)).findFirst();
        if (other.isPresent()) {
          left.remove();
          come.remove(other.get());
          if (one.equals(other.get())) {
            continue;
          }
          boolean alters =
              !one.source().equals(other.get().source())
                  || !says(one, other.get())
                  || !one.scope().equals(other.get().scope());
          of.check(
              alters ? what : wording(one, other.get()) + " on the " + aspect.spoken(),
              alters,
              Optional.of(new Value.Said(old, aspect, one)),
              Optional.of(new Value.Said(now, aspect, other.get())));
        }
      }
    }
    for (Claim claim : gone) {
      of.note(
          Kind.CHANGED,
          what,
          true,
          Optional.of(new Value.Said(old, aspect, claim)),
          Optional.empty());
    }
    for (Claim claim : come) {
      of.note(
          Kind.CHANGED,
          what,
          true,
          Optional.empty(),
          Optional.of(new Value.Said(now, aspect, claim)));
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
