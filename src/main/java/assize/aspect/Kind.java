package assize.aspect;

import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One kind of thing that can be looked at: how it is written in rule sets and records, compared,
 * worded and asked for. What there is to know of it stands in its class and nowhere else.
 */
public abstract class Kind {

  /** What a cell of a table may hold. */
  public enum Holds {
    TEXT,
    /** A text that spreadsheets like to make a number or a day of. */
    EXACT,
    NUMBER,
    YES_NO
  }

  /** Returns what is written of what is right. */
  public abstract ValueSchema right();

  /** Returns what is written of what was found. */
  public abstract ValueSchema seen();

  /** Reads what is held to be right: one value, several, or several with credits. */
  public abstract List<Expectation> right(Node.Entry entry, Reader reader);

  /** Reads what was found. */
  public abstract Optional<Finding> seen(Node.Entry entry, Reader reader);

  /** Returns what kind of thing is written down where it is found. */
  public abstract Control.Kind control();

  /**
   * Returns the words or colors of which one may be chosen, in their order; none where it is typed.
   */
  protected List<Control.Choice> choices(Place at) {
    return List.of();
  }

  /** Says whether the words that may be found are those of one item, and not of the rule set. */
  public boolean hasWordsOfItem() {
    return false;
  }

  /** Returns what to type, by what may be right; empty where one is chosen. */
  protected String hint(List<Expectation> right) {
    return "";
  }

  /** Returns how what is found is written down, by what may be right. */
  public final Control control(Place at, List<Expectation> right) {
    return new Control(control(), choices(at), hasWordsOfItem(), hint(right));
  }

  /** Returns what is asked where sources differ. */
  public String question(Aspect aspect) {
    return "which " + aspect.spoken() + " is right?";
  }

  /** Returns the words that may be found, each with what it means, in their order. */
  public Map<String, String> meanings(Place at) {
    return Map.of();
  }

  public Holds cell() {
    return Holds.TEXT;
  }

  /** Says whether what looks like a number or a yes or no is meant as such, and needs no quotes. */
  public boolean staysPlain() {
    return false;
  }

  /** Says whether what was found may be a group of names in braces. */
  public boolean mayBeGroup() {
    return false;
  }

  /** Says whether what was found is worth what it is, without being right or wrong. */
  public boolean isGraded() {
    return false;
  }

  /** Says whether it depends on the build day what is right. */
  public boolean isDated() {
    return false;
  }
}
