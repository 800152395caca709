package assize.aspect;

import assize.diagnostic.DiagnosticCode;
import assize.measure.Figures;
import assize.schema.FixedVocabulary;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.MessageParts;
import assize.yaml.Node;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

/** An origin or a condition, worth what the rule set or the item says. */
public final class Graded extends Kind {
  public static final FixedVocabulary<Origin> ORIGINS =
      FixedVocabulary.of("an origin", DiagnosticCode.UNKNOWN_ORIGIN, Origin.values(), Origin::word);

  public static final ValueSchema ORIGIN_WORDS =
      ValueSchema.word(Arrays.stream(Origin.values()).map(Origin::word).toList());

  /** What stands for the credits of the rule set. */
  private static final String GRADED = "graded";

  private final String what;
  private final ValueSchema form;
  private final Function<Lexicon, Map<String, BigFraction>> ladder;
  private final Seen seen;
  private final boolean fixed;

  /** Reads a word, where it is the only thing written and where it stands before its credit. */
  private interface Seen {
    Optional<String> entry(Node.Entry entry, Reader reader);

    Optional<String> key(Node.Scalar text, Reader reader);
  }

  private Graded(
      String what,
      ValueSchema form,
      Function<Lexicon, Map<String, BigFraction>> ladder,
      Seen seen,
      boolean fixed) {
    this.what = what;
    this.form = form;
    this.ladder = ladder;
    this.seen = seen;
    this.fixed = fixed;
  }

  static Kind origin() {
    return new Graded(
        "an origin",
        ORIGIN_WORDS,
        words -> {
          Map<String, BigFraction> credits = new LinkedHashMap<>();
          words.origins().forEach((origin, credit) -> credits.put(origin.word(), credit));
          return credits;
        },
        new Seen() {
          @Override
          public Optional<String> entry(Node.Entry entry, Reader reader) {
            return ORIGINS.read(Optional.of(entry), reader.values()).map(Origin::word);
          }

          @Override
          public Optional<String> key(Node.Scalar text, Reader reader) {
            return ORIGINS.find(text, reader.values().problems()).map(Origin::word);
          }
        },
        true);
  }

  static Kind condition() {
    return new Graded(
        "a condition",
        ScalarFormat.text(),
        Lexicon::conditions,
        new Seen() {
          @Override
          public Optional<String> entry(Node.Entry entry, Reader reader) {
            return reader.names().conditions.find(entry, reader.values());
          }

          @Override
          public Optional<String> key(Node.Scalar text, Reader reader) {
            return reader.names().conditions.find(text, reader.values().problems());
          }
        },
        false);
  }

  @Override
  public ValueSchema right() {
    return ValueSchema.either(
        ValueSchema.word(List.of(GRADED)), new ValueSchema.Named(form, ScalarFormat.credit()));
  }

  @Override
  public ValueSchema seen() {
    return form;
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    if (entry.value() instanceof Node.Mapping mapping) {
      Map<String, BigFraction> credits = new LinkedHashMap<>();
      for (Node.Entry one : mapping.entries()) {
        Optional<String> known = seen.key(one.key(), reader);
        Optional<BigFraction> credit = reader.values().credit(Optional.of(one));
        if (known.isPresent() && credit.isPresent()) {
          credits.put(known.get(), credit.get());
        }
      }
      return credits.isEmpty() ? List.of() : List.of(new Right(credits));
    }
    Optional<Node.Scalar> text =
        reader.values().scalar(entry, "`graded`, or credits for each word,");
    if (text.isPresent() && !text.get().text().equals(GRADED)) {
      reader
          .values()
          .problems()
          .add(
              DiagnosticCode.UNKNOWN_WORD,
              text.get().at(),
              what + " is expected as `graded`, not as " + MessageParts.quoted(text.get().text()),
              "write graded, or credits: {" + MessageParts.brief(text.get().text()) + ": 1}");
      return List.of();
    }
    return text.isPresent() ? List.of(new Right(Map.of())) : List.of();
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return seen.entry(entry, reader).map(Worded.Found::new);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.WORDS;
  }

  @Override
  protected List<Control.Choice> choices(Place at) {
    return Worded.choices(meanings(at));
  }

  @Override
  public Map<String, String> meanings(Place at) {
    Map<String, String> words = new LinkedHashMap<>();
    if (fixed) {
      ORIGINS.all().forEach(it -> words.put(it.word(), it.word()));
    } else {
      ladder.apply(at.words()).keySet().forEach(it -> words.put(it, it));
    }
    return words;
  }

  @Override
  public boolean isGraded() {
    return true;
  }

  private static Map<String, BigFraction> ladder(Place at) {
    return ((Graded) at.aspect().kind()).ladder.apply(at.words());
  }

  /**
   * What each word is worth.
   *
   * @param credits the item's own credit for each word; empty: those of the rule set
   */
  public record Right(Map<String, BigFraction> credits) implements Expectation {
    public Right {
      credits = Map.copyOf(credits);
    }

    @Override
    public String key() {
      return GRADED;
    }

    /** A word that is not listed earns nothing. */
    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Worded.Found word)) {
        return Comparison.unlike();
      }
      Map<String, BigFraction> all = credits.isEmpty() ? ladder(setting.at()) : credits;
      return Comparison.earns(all.getOrDefault(word.id(), BigFraction.ZERO), new Why(word.id()));
    }

    @Override
    public String words(Place at) {
      Map<String, BigFraction> all = new LinkedHashMap<>(ladder(at));
      if (!credits.isEmpty()) {
        // the item's own credits, in the order of the rule set's ladder
        all.keySet().retainAll(credits.keySet());
        all.replaceAll((word, credit) -> credits.getOrDefault(word, credit));
        credits.entrySet().stream()
            .sorted(Map.Entry.comparingByKey())
            .forEach(entry -> all.putIfAbsent(entry.getKey(), entry.getValue()));
      }
      return all.entrySet().stream()
          .map(entry -> entry.getKey() + " " + Figures.number(entry.getValue()))
          .collect(Collectors.joining("; ", "graded: ", ""));
    }
  }

  private record Why(String found) implements Reason {
    @Override
    public String words(Place at) {
      return "found: " + found;
    }

    @Override
    public String besides(Place at) {
      return "";
    }
  }
}
