package assize.aspect;

import assize.schema.DefinedNames;
import assize.schema.ScalarFormat;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/** A word of the rule set: a finish, a material or a choice. */
public final class Worded extends Kind {
  private final ValueSchema form;
  private final String question;
  private final Function<Reader, DefinedNames> known;
  private final Function<Place, Map<String, String>> meanings;
  private final Words words;

  /** Whose words they are. */
  private enum Words {
    OF_RULE_SET,
    /** Of which one may stand in the place of another. */
    WITH_KINDS,
    OF_ITEM
  }

  private Worded(
      ValueSchema form,
      String question,
      Function<Reader, DefinedNames> known,
      Function<Place, Map<String, String>> meanings,
      Words words) {
    this.form = form;
    this.question = question;
    this.known = known;
    this.meanings = meanings;
    this.words = words;
  }

  static Kind finish() {
    return new Worded(
        ScalarFormat.name(),
        "which finish is right?",
        it -> it.names().finishes,
        at -> {
          Map<String, String> names = new LinkedHashMap<>();
          at.words().finishes().values().forEach(it -> names.put(it.id(), it.name()));
          return names;
        },
        Words.WITH_KINDS);
  }

  static Kind material() {
    return new Worded(
        ScalarFormat.name(),
        "which material is right?",
        it -> it.names().materials,
        at -> at.words().materials(),
        Words.OF_RULE_SET);
  }

  static Kind choice() {
    return new Worded(
        ScalarFormat.text(),
        "which is right?",
        Reader::choices,
        at -> at.words().choices(at.item()),
        Words.OF_ITEM);
  }

  static ValueSchema withCredits(ValueSchema each) {
    return ValueSchema.either(
        each, ValueSchema.list(each), new ValueSchema.Named(each, ScalarFormat.credit()));
  }

  @Override
  public ValueSchema right() {
    return withCredits(form);
  }

  @Override
  public ValueSchema seen() {
    return form;
  }

  @Override
  public List<Expectation> right(Node.Entry entry, Reader reader) {
    DefinedNames names = known.apply(reader);
    if (entry.value() instanceof Node.Mapping mapping) {
      return reader.credits(
          mapping, key -> names.find(key, reader.values().problems()), Right::new);
    }
    List<Expectation> found = new ArrayList<>();
    for (Node.Entry one : reader.values().oneOrMore(Optional.of(entry))) {
      names.find(one, reader.values()).ifPresent(it -> found.add(new Right(it, BigFraction.ONE)));
    }
    return found;
  }

  @Override
  public Optional<Finding> seen(Node.Entry entry, Reader reader) {
    return reader
        .values()
        .scalar(entry, "one word")
        .flatMap(it -> reader.orOther(it, known.apply(reader)))
        .map(Found::new);
  }

  @Override
  public Control.Kind control() {
    return Control.Kind.WORDS;
  }

  @Override
  protected List<Control.Choice> choices(Place at) {
    List<Control.Choice> choices = choices(meanings(at));
    choices.add(Control.Choice.NONE);
    return choices;
  }

  @Override
  public boolean hasWordsOfItem() {
    return words == Words.OF_ITEM;
  }

  static List<Control.Choice> choices(Map<String, String> meanings) {
    List<Control.Choice> choices = new ArrayList<>();
    meanings.forEach((id, name) -> choices.add(new Control.Choice(id, name, "")));
    return choices;
  }

  @Override
  public String question(Aspect aspect) {
    return question;
  }

  @Override
  public Map<String, String> meanings(Place at) {
    return meanings.apply(at);
  }

  private static boolean fits(String found, String right, Place at) {
    return ((Worded) at.aspect().kind()).words == Words.WITH_KINDS
        ? at.words().isKindOf(found, right)
        : found.equals(right);
  }

  /**
   * A word of the rule set.
   *
   * @param credit 0 to 1
   */
  public record Right(String id, BigFraction credit) implements Expectation {
    @Override
    public String key() {
      return id;
    }

    @Override
    public Comparison against(Finding found, Setting setting) {
      if (!(found instanceof Found word)) {
        return Comparison.unlike();
      }
      return fits(word.id, id, setting.at())
          ? Comparison.earns(credit, new Why(word.id, Optional.of(id).filter(it -> !names(word))))
          : Comparison.incorrect(new Why(word.id, Optional.empty()));
    }

    @Override
    public boolean names(Finding found) {
      return found instanceof Found word && word.id.equals(id);
    }

    @Override
    public String words(Place at) {
      return at.meaning(id);
    }

    @Override
    public boolean isKnown(Place at) {
      return at.aspect().kind().meanings(at).containsKey(id);
    }
  }

  /** A finish, material, choice, origin or condition: a word of the rule set, or {@code other}. */
  public record Found(String id) implements Finding {
    @Override
    public String words(Place at) {
      return id.equals(OTHER) ? "other: none that the rule set names" : at.meaning(id);
    }

    @Override
    public Written written() {
      return Written.of(id);
    }

    @Override
    public boolean isKnown(Place at) {
      return id.equals(OTHER) || at.aspect().kind().meanings(at).containsKey(id);
    }
  }

  /**
   * A word held against another.
   *
   * @param kindOf in whose place it may stand, where it is not expected itself
   */
  private record Why(String found, Optional<String> kindOf) implements Reason {
    @Override
    public String words(Place at) {
      String name = found.equals(Finding.OTHER) ? "something else" : at.meaning(found);
      return "found: " + name + kindOf.map(it -> ", a kind of " + at.meaning(it)).orElse("");
    }

    @Override
    public String besides(Place at) {
      return kindOf.map(it -> "a kind of " + at.meaning(it)).orElse("");
    }
  }
}
