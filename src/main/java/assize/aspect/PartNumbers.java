package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.pattern.NumberPattern;
import assize.schema.Rewording;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** A part number, or the pattern that part numbers fit. */
public final class PartNumbers extends Kind {
  @Override
  public ValueSchema right() {
    return Worded.withCredits(ScalarFormat.text());
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.text("A-41207");
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    if (entry.value() instanceof Node.Mapping mapping) {
      return reader.credits(
          mapping, key -> Optional.of(NumberPattern.exactly(key.text())), Right::new);
    }
    boolean list = entry.value() instanceof Node.Sequence;
    return reader.each(
        entry,
        it ->
            list
                ? Optional.of(NumberPattern.exactly(it.text()))
                : reader.values().parsed(it, DiagnosticCode.BAD_PATTERN, NumberPattern::compile),
        it -> new Right(it, BigFraction.ONE));
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return stamped(entry, reader);
  }

  static Optional<Finding> stamped(Node.Entry entry, Reader reader) {
    Optional<Node.Scalar> stamp = reader.values().scalar(entry, "one text, as stamped,");
    stamp.ifPresent(reader.values()::checkStamp);
    return stamp.map(it -> new Found(it.text()));
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.STAMPED;
  }

  @Override
  protected String hint(List<Expectation> right) {
    return "the number as stamped";
  }

  @Override
  public Holds cell() {
    return Holds.EXACT;
  }

  /**
   * A part number, or the pattern that part numbers fit.
   *
   * @param number the number or pattern
   * @param credit 0 to 1, less than 1 for a later or service number
   */
  public record Right(NumberPattern number, BigFraction credit) implements Expectation {
    @Override
    public String key() {
      return number.text();
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found stamped)) {
        return Comparison.unlike();
      }
      return number.fits(stamped.text)
          ? Comparison.earns(credit, new Why(stamped.text, Optional.empty()))
          : Comparison.incorrect(
              new Why(stamped.text, Optional.of(number).filter(it -> !stamped.isMasked())));
    }

    @Override
    public String words(Place at) {
      return number.isPlain() ? number.text() : "a number of the pattern " + number.text();
    }

    /** A number is changed as one that is stamped, a pattern as any text. */
    @Override
    public Expectation reworded(String aspect, Rewording rewording) {
      String written = number.text();
      String changed =
          Optional.of(written)
              .filter(it -> number.isLiteral())
              .flatMap(it -> rewording.stamped(aspect, it))
              .orElseGet(() -> rewording.text(written));
      return changed.equals(written) ? this : new Right(NumberPattern.exactly(changed), credit);
    }

    @Override
    public Object told() {
      return number.isPlain() ? NumberPattern.fold(number.text()) : number.text();
    }
  }

  /**
   * A part number or date code, as stamped or cast.
   *
   * @param text in a copy for others, a masked number in it is marked by {@link #masking}
   */
  public record Found(String text) implements Finding {
    // Dashes of vertical writing: no number has them, and what is compared is without dashes.
    private static final String FROM = "\uFE31";
    private static final String TO = "\uFE32";

    /** Marks a number that is compared but must not be shown. */
    public static String masking(String number) {
      return FROM + number + TO;
    }

    /** Says whether something in it must not be shown, nor how it differs from what is expected. */
    private boolean isMasked() {
      return text.contains(FROM);
    }

    @Override
    public Optional<Finding> reworded(String aspect, Rewording rewording) {
      return rewording.stamped(aspect, text).map(Found::new);
    }

    @Override
    public String words(Place at) {
      return "“" + text + "”";
    }

    @Override
    public Written written() {
      return Written.of(text);
    }

    @Override
    public boolean sameAs(Finding other) {
      return other instanceof Found stamped
          && NumberPattern.fold(text).equals(NumberPattern.fold(stamped.text));
    }
  }

  /**
   * A number held against another.
   *
   * @param missed what it does not fit, where it does not
   */
  private record Why(String stamped, Optional<NumberPattern> missed) implements Reason {
    @Override
    public String words(Place at) {
      return "stamped "
          + stamped
          + missed.flatMap(it -> it.nearMiss(stamped)).map(it -> "; " + it).orElse("");
    }

    @Override
    public String besides(Place at) {
      // What is stamped may have any sign in it.
      String words = words(at);
      return words.equals("stamped " + stamped) ? "" : Said.unlessPlain(words);
    }
  }
}
