package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.measure.Conformity;
import assize.measure.Figures;
import assize.measure.GlossBand;
import assize.measure.GlossRange;
import assize.measure.GlossReading;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.FlowYamlWriter;
import assize.yaml.Node;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Gloss at 60° (ISO 2813), in units or as a band. */
public final class Gloss extends Kind {
  @Override
  public ValueSchema right() {
    return ValueSchema.oneOrMore(
        ScalarFormat.text("semi-gloss", "30 to 50", "at most 35", "40 ± 5"));
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.text("41", "41 ± 3", "satin");
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    return reader.each(
        entry,
        it -> reader.values().parsed(it, DiagnosticCode.BAD_GLOSS, GlossRange::parse),
        Right::new);
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return reader
        .values()
        .parsed(Optional.of(entry), DiagnosticCode.BAD_GLOSS, "a gloss", GlossReading::parse)
        .map(Found::new);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.GLOSS;
  }

  @Override
  protected String hint(List<Expectation> right) {
    String bands =
        Arrays.stream(GlossBand.values()).map(GlossBand::spoken).collect(Collectors.joining(", "));
    return "gloss units at 60°, as in 41 ± 3, or a band by eye: " + bands;
  }

  @Override
  public String question(Aspect aspect) {
    return "how glossy should it be?";
  }

  @Override
  public Holds cell() {
    return Holds.NUMBER;
  }

  @Override
  public boolean staysPlain() {
    return true;
  }

  /** A range of gloss units. */
  public record Right(GlossRange range) implements Expectation {
    @Override
    public String key() {
      return range.text();
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found gloss)) {
        return Comparison.unlike();
      }
      double probability = range.judge(gloss.reading).probability();
      return Comparison.probably(probability, new Why(gloss.reading, range, probability));
    }

    @Override
    public String words(Place at) {
      String written = range.text();
      if (written.codePoints().anyMatch(Character::isDigit)) {
        return written + " gloss units";
      }
      String from = Figures.measure(range.from());
      OptionalDouble to = range.to();
      return written
          + (to.isPresent()
              ? " (" + from + " to " + Figures.measure(to.getAsDouble()) + " gloss units)"
              : " (" + from + " gloss units and above)");
    }

    @Override
    public Object told() {
      return List.of(range.from(), range.to());
    }
  }

  /** Gloss as found. */
  public record Found(GlossReading reading) implements Finding {
    @Override
    public String words(Place at) {
      return reading.spoken();
    }

    @Override
    public Written written() {
      return new Written(reading.text(), FlowYamlWriter.meant(reading.text(), false));
    }

    @Override
    public boolean sameAs(Finding other) {
      return other instanceof Found gloss
          && reading.units().equals(gloss.reading.units())
          && reading.band().equals(gloss.reading.band())
          && Sizes.near(reading.u(), gloss.reading.u());
    }
  }

  private record Why(GlossReading found, GlossRange range, double probability) implements Reason {
    @Override
    public String words(Place at) {
      return "found: " + found.spoken() + rest();
    }

    @Override
    public String besides(Place at) {
      return rest().replaceFirst("^, ", "");
    }

    private String rest() {
      return side()
          + (found.u() == 0 ? "" : ", standard uncertainty " + Figures.figure(found.u(), 3))
          + Figures.probability(probability, found.u());
    }

    private String side() {
      if (Conformity.meets(probability)) {
        return "";
      }
      boolean open = !Conformity.departs(probability);
      if (range.isTooGlossy(found)) {
        return open ? ", may be too glossy" : ", too glossy: over-restored";
      }
      return !range.isTooDull(found) ? "" : open ? ", may be too dull" : ", too dull";
    }
  }
}
