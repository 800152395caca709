package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.measure.Conformity;
import assize.measure.Dimension;
import assize.measure.Figures;
import assize.measure.MeasuredSize;
import assize.measure.ThreadDesignation;
import assize.measure.ToleranceLimits;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.FlowYamlWriter;
import assize.yaml.Node;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A size between limits (JCGM 106:2012), or a screw thread. */
public final class Sizes extends Kind {
  /** What is left of rounding where two ways of writing an uncertainty are turned into one unit. */
  private static final double ROUNDING = 1e-9;

  @Override
  public ValueSchema right() {
    return ValueSchema.oneOrMore(
        ScalarFormat.text("3/32 in ± 1/64 in", "2 mm to 3 mm", "1/4-20 UNC"));
  }

  @Override
  public ValueSchema seen() {
    return ScalarFormat.text("5/64 in", "2.38 mm ± 0.02 mm", "2.4 mm, to 0.1 mm");
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    return reader.each(entry, it -> right(it, reader), Function.identity());
  }

  private static Optional<Expectation> right(Node.Scalar text, Reader reader) {
    Optional<ThreadDesignation> thread = ThreadDesignation.parse(text.text()).toOptional();
    return thread.isPresent()
        ? thread.map(ThreadRight::new)
        : reader
            .values()
            .parsed(text, DiagnosticCode.BAD_SIZE, ToleranceLimits::parse)
            .map(Right::new);
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return reader.values().scalar(entry, "one size").flatMap(it -> seen(it, reader));
  }

  private static Optional<Finding> seen(Node.Scalar text, Reader reader) {
    Optional<ThreadDesignation> thread = ThreadDesignation.parse(text.text()).toOptional();
    return thread.isPresent()
        ? thread.map(ThreadFound::new)
        : reader
            .values()
            .parsed(text, DiagnosticCode.BAD_SIZE, MeasuredSize::parse)
            .map(Found::new);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.SIZE;
  }

  /** Says what is measured by what the sources expect, without giving away what that is. */
  @Override
  protected String hint(List<Expectation> right) {
    return right.stream()
        .map(
            it ->
                it instanceof Right size
                    ? example(size.limits.dimension())
                    : "a thread, as in 1/4-20 UNC, 1/4 BSF, 2 BA or M6")
        .distinct()
        .collect(Collectors.joining("; or "));
  }

  private static String example(Dimension dimension) {
    return dimension.spoken()
        + ", as in "
        + switch (dimension) {
          case LENGTH -> "5/64 in, 2.38 mm ± 0.02 mm or 2.4 mm, to 0.1 mm";
          case MASS -> "12 oz, 5 lb or 340 g ± 5 g";
          case ANGLE -> "27° or 27° ± 1°";
          case VOLUME -> "1 imp pt, 12 US gal or 4.5 L";
          case PRESSURE -> "42 psi or 2.9 bar";
          case TORQUE -> "30 lbf ft or 40 N m";
          case POWER -> "6 W or 20 hp";
          case VOLTAGE -> "6.1 V";
          case CURRENT -> "8 A";
          case CHARGE -> "60 Ah";
          case SPEED -> "40 mph or 65 km/h";
        };
  }

  @Override
  public Holds cell() {
    return Holds.EXACT;
  }

  @Override
  public boolean staysPlain() {
    return true;
  }

  static boolean near(double one, double other) {
    return Math.abs(one - other) <= ROUNDING * Math.max(Math.abs(one), Math.abs(other));
  }

  /** A size between limits. */
  public record Right(ToleranceLimits limits) implements Expectation {
    @Override
    public String key() {
      return limits.text();
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found size)) {
        return Comparison.unlike();
      }
      MeasuredSize measured = size.measured;
      if (measured.dimension() != limits.dimension()) {
        return Comparison.notAssessed(
            new Reason.Said(measured.text() + " is not a size of this kind"));
      }
      double probability = Conformity.judge(measured, limits).probability();
      return Comparison.probably(probability, new Why(measured, limits, probability));
    }

    @Override
    public String words(Place at) {
      return limits.text();
    }

    @Override
    public Object told() {
      return List.of(limits.dimension(), limits.lower(), limits.upper());
    }
  }

  /** A screw thread. */
  public record ThreadRight(ThreadDesignation thread) implements Expectation {
    @Override
    public String key() {
      return thread.text();
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof ThreadFound other)) {
        return Comparison.unlike();
      }
      boolean same = thread.sameAs(other.thread);
      ThreadWhy why = new ThreadWhy(other.thread, same ? Optional.empty() : Optional.of(thread));
      return same ? Comparison.correct(why) : Comparison.incorrect(why);
    }

    @Override
    public String words(Place at) {
      return thread.text();
    }

    @Override
    public Object told() {
      return List.of(thread.series(), thread.majorMm(), thread.pitchMm());
    }
  }

  /** A size as measured. */
  public record Found(MeasuredSize measured) implements Finding {
    @Override
    public String words(Place at) {
      return measured.text();
    }

    @Override
    public Written written() {
      return new Written(measured.text(), FlowYamlWriter.meant(measured.text(), false));
    }

    @Override
    public boolean sameAs(Finding other) {
      return other instanceof Found size
          && measured.dimension() == size.measured.dimension()
          && measured.value().equals(size.measured.value())
          && near(measured.u(), size.measured.u());
    }
  }

  /** A screw thread as found. */
  public record ThreadFound(ThreadDesignation thread) implements Finding {
    @Override
    public String words(Place at) {
      return thread.text();
    }

    @Override
    public Written written() {
      return new Written(thread.text(), FlowYamlWriter.meant(thread.text(), false));
    }

    @Override
    public boolean sameAs(Finding other) {
      return other instanceof ThreadFound found && thread.sameAs(found.thread);
    }
  }

  private record Why(MeasuredSize found, ToleranceLimits limits, double probability)
      implements Reason {
    @Override
    public String words(Place at) {
      return "measured " + found.text() + expected() + uncertainty();
    }

    @Override
    public String besides(Place at) {
      return Said.unlessPlain(words(at));
    }

    /** Words the limits in the unit of the finding, where that is another. */
    private String expected() {
      return found.unit() == limits.unit() ? "" : ", expected " + limits.textIn(found.unit());
    }

    private String uncertainty() {
      return found.u() == 0
          ? ""
          : ", standard uncertainty "
              + Figures.figure(found.u() / found.unit().factor().doubleValue(), 5)
              + " "
              + found.unit().symbol()
              + Figures.probability(probability, found.u());
    }
  }

  /**
   * A thread held against another.
   *
   * @param right what it should be, where it is not the same
   */
  private record ThreadWhy(ThreadDesignation found, Optional<ThreadDesignation> right)
      implements Reason {
    @Override
    public String words(Place at) {
      return "found: " + found.text() + right.map(it -> "; " + found.difference(it)).orElse("");
    }

    @Override
    public String besides(Place at) {
      return right.map(found::difference).orElse("");
    }
  }
}
