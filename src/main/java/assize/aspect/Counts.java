package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.measure.Figures;
import assize.schema.MappingReader;
import assize.schema.ObjectSchema;
import assize.schema.PropertySchema;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** A number of pieces. */
public final class Counts extends Kind {
  private static final Pattern PIECES = Pattern.compile("([0-9]{1,6})(?:\\s+to\\s+([0-9]{1,6}))?");
  private static final long MOST_PIECES = 1_000_000;

  /** How many pieces are expected, where more than the number is said. */
  private static final ObjectSchema COUNT =
      ObjectSchema.of(
          "a count",
          PropertySchema.need(
              "of",
              ValueSchema.oneOrMore(ScalarFormat.pieces()),
              "How many are right: 6, or 6 to 8."),
          PropertySchema.may(
              "loss_per_piece",
              ScalarFormat.credit(),
              "What each piece too few or too many costs, as a share of the aspect: 1/6."));

  @Override
  public ValueSchema right() {
    return ValueSchema.either(
        ScalarFormat.pieces(),
        ValueSchema.list(ScalarFormat.pieces()),
        new ValueSchema.Group(COUNT));
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.whole("0", "1000000");
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    if (!(entry.value() instanceof Node.Mapping mapping)) {
      return reader.each(entry, it -> pieces(it, Optional.empty(), reader), Function.identity());
    }
    MappingReader fields = reader.values().fields(mapping, COUNT, entry.key().at());
    Optional<Node.Entry> of = fields.get("of");
    Optional<BigFraction> eachOff = reader.values().credit(fields.get("loss_per_piece"));
    fields.done();
    return of.map(it -> reader.each(it, one -> pieces(one, eachOff, reader), Function.identity()))
        .orElse(List.of());
  }

  private static Optional<Expectation> pieces(
      Node.Scalar text, Optional<BigFraction> eachOff, Reader reader) {
    Matcher match = PIECES.matcher(text.text().strip());
    if (!match.matches()) {
      return reader
          .values()
          .refuse(
              DiagnosticCode.BAD_NUMBER,
              text,
              "a count is a whole number, or two as in 6 to 8, not "
                  + MessageParts.quoted(text.text()));
    }
    int least = Integer.parseInt(match.group(1));
    int most = Optional.ofNullable(match.group(2)).map(Integer::parseInt).orElse(least);
    if (most < least) {
      return reader
          .values()
          .refuse(DiagnosticCode.BAD_RANGE, text, least + " to " + most + " goes backward");
    }
    return Optional.of(new Right(least, most, eachOff));
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    Optional<Node.Scalar> text = reader.values().scalar(entry, "a number of pieces");
    Optional<Long> count = text.flatMap(it -> reader.values().whole(it, "a count"));
    if (count.isPresent() && count.get() > MOST_PIECES) {
      return reader
          .values()
          .refuse(DiagnosticCode.BAD_NUMBER, text.orElseThrow(), "this is more than a million");
    }
    return count.map(it -> new Found(it.intValue()));
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.PIECES;
  }

  @Override
  protected String hint(List<Expectation> right) {
    return "how many there are";
  }

  @Override
  public String question(Aspect aspect) {
    return "how many are right?";
  }

  @Override
  public Holds cell() {
    return Holds.NUMBER;
  }

  /**
   * A number of pieces.
   *
   * @param least the least number that is right
   * @param most the greatest
   * @param eachOff credit lost for each piece too few or too many; empty: all of it for any
   */
  public record Right(int least, int most, Optional<BigFraction> eachOff) implements Expectation {
    @Override
    public String key() {
      return least == most ? Integer.toString(least) : least + " to " + most;
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found pieces)) {
        return Comparison.unlike();
      }
      int off = Math.max(0, Math.max(least - pieces.count, pieces.count - most));
      BigFraction lost = off == 0 ? BigFraction.ZERO : lost(off);
      return Comparison.earns(BigFraction.ONE.subtract(lost), new Why(pieces.count, off));
    }

    private BigFraction lost(int off) {
      BigFraction lost = eachOff.map(each -> each.multiply(off)).orElse(BigFraction.ONE);
      return lost.compareTo(BigFraction.ONE) > 0 ? BigFraction.ONE : lost;
    }

    @Override
    public String words(Place at) {
      return key()
          + eachOff
              .map(off -> " (each piece off costs " + Figures.number(off) + " of the credit)")
              .orElse("");
    }
  }

  /** A number of pieces. */
  public record Found(int count) implements Finding {
    @Override
    public String words(Place at) {
      return Integer.toString(count);
    }

    @Override
    public Written written() {
      return Written.plain(Integer.toString(count));
    }
  }

  private record Why(int count, int off) implements Reason {
    @Override
    public String words(Place at) {
      return "counted " + count + (off == 0 ? "" : ", " + off + " off");
    }

    @Override
    public String besides(Place at) {
      return Said.unlessPlain(words(at));
    }
  }
}
