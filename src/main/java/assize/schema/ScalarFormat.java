package assize.schema;

import assize.text.Invisible;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a single text has to look like. The readers take every text as typed and look closer; here
 * is what can be said in a pattern without refusing what they accept. Patterns are in what Java and
 * ECMA-262 have in common.
 *
 * @param types what YAML may take the text for
 * @param pattern which texts can be right; a number or truth value is not held to it
 * @param bounds between which a number lies
 * @param examples texts that are right
 */
public record ScalarFormat(
    Set<Type> types, Optional<String> pattern, Optional<Bounds> bounds, List<String> examples) {
  private static final String DECIMAL = "[+-]?[0-9]{1,12}(?:\\.[0-9]{1,12})?";
  private static final String FRACTION = "[0-9]{1,9}\\s?/\\s?[0-9]{1,9}";
  private static final String NAME = "[A-Za-z0-9][A-Za-z0-9-]{0,63}";

  public ScalarFormat {
    types = Set.copyOf(types);
    examples = List.copyOf(examples);
  }

  /** What YAML takes a text for that is not in quotes. */
  public enum Type {
    TEXT,
    NUMBER,
    WHOLE_NUMBER,
    TRUTH
  }

  /** The least and the greatest number, both included, as decimals. */
  public record Bounds(String least, String most) {}

  private static ScalarFormat of(Set<Type> types, String pattern, String... examples) {
    return new ScalarFormat(types, Optional.of(pattern), Optional.empty(), List.of(examples));
  }

  private static ScalarFormat number(
      Type type, String pattern, String least, String most, String... examples) {
    return new ScalarFormat(
        EnumSet.of(Type.TEXT, type),
        Optional.of("^\\s*(?:" + pattern + ")\\s*$"),
        Optional.of(new Bounds(least, most)),
        List.of(examples));
  }

  private static Set<Type> any() {
    return EnumSet.of(Type.TEXT, Type.NUMBER, Type.TRUTH);
  }

  /** Any text. */
  public static ValueSchema text(String... examples) {
    return new ValueSchema.Scalar(
        new ScalarFormat(any(), Optional.empty(), Optional.empty(), List.of(examples)));
  }

  /** A text that shows something. */
  public static ValueSchema visible(String... examples) {
    return new ValueSchema.Scalar(of(any(), Invisible.visiblePattern(), examples));
  }

  /** A short name: letters, digits and dashes. */
  public static ValueSchema name() {
    return new ValueSchema.Scalar(of(any(), "^" + NAME + "$"));
  }

  /** A short name that a rule set may define. */
  public static ValueSchema ownName() {
    return new ValueSchema.Scalar(of(any(), "^(?!other$)" + NAME + "$"));
  }

  /** A word of the rule set's own, of any letters. */
  public static ValueSchema ownWord() {
    return new ValueSchema.Scalar(of(any(), "^(?!other$)[\\s\\S]*" + Invisible.visiblePattern()));
  }

  /** A date, a span or a set, as far as its letters tell. */
  public static ValueSchema date(String... examples) {
    return new ValueSchema.Scalar(
        of(EnumSet.of(Type.TEXT, Type.NUMBER), "^[-0-9XYSETZ:+/.,\\[\\]{}?~%\\s]+$", examples));
  }

  /** A share from 0 to 1. */
  public static ValueSchema credit() {
    return share("0", "1", "1/2", "0.5", "50 %");
  }

  /** A share between two bounds. */
  public static ValueSchema share(String least, String most, String... examples) {
    return new ValueSchema.Scalar(
        number(Type.NUMBER, FRACTION + "|" + DECIMAL + "\\s*%?", least, most, examples));
  }

  /** Points, exact to a thousandth. */
  public static ValueSchema points() {
    return new ValueSchema.Scalar(number(Type.NUMBER, FRACTION + "|" + DECIMAL, "0", "1000000"));
  }

  /** A decimal number. */
  public static ValueSchema decimal(String least, String most) {
    return new ValueSchema.Scalar(number(Type.NUMBER, DECIMAL, least, most));
  }

  /** A share of a photo, in percent. */
  public static ValueSchema percent() {
    return new ValueSchema.Scalar(
        number(Type.NUMBER, "[0-9]{1,3}(?:\\.[0-9]{1,2})?\\s*%?", "0", "100", "12 %"));
  }

  /** A whole number. */
  public static ValueSchema whole(String least, String most) {
    return new ValueSchema.Scalar(number(Type.WHOLE_NUMBER, "[0-9]{1,15}", least, most));
  }

  /** A number of pieces, or from how many to how many. */
  public static ValueSchema pieces() {
    return new ValueSchema.Scalar(
        number(Type.WHOLE_NUMBER, "[0-9]{1,6}(?:\\s+to\\s+[0-9]{1,6})?", "0", "999999", "6 to 8"));
  }

  /** Yes or no; YAML 1.1 takes both for truth values, YAML 1.2 for words. */
  public static ValueSchema yesNo() {
    return ValueSchema.either(
        ValueSchema.word(List.of("yes", "no")),
        new ValueSchema.Scalar(
            of(
                EnumSet.of(Type.TEXT, Type.TRUTH),
                "^\\s*(?:[Yy][Ee][Ss]|[Nn][Oo]|[Tt][Rr][Uu][Ee]|[Ff][Aa][Ll][Ss][Ee])\\s*$")));
  }
}
