package assize.record;

import assize.diagnostic.DiagnosticCode;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.FixedVocabulary;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.ScalarReader;
import assize.schema.Type;
import assize.schema.ValueSchema;
import assize.yaml.Node;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Something that a record can keep out of the copy for others.
 *
 * @param word what {@code private} calls it
 * @param of the name that it is written under, or below
 * @param spoken as running text has it
 * @param says whether there is something to keep
 * @param without leaves it out
 */
public record Secret<S extends Facts>(
    String word, String of, String spoken, Predicate<S> says, UnaryOperator<S> without) {
  private static final Set<String> YES_OR_NO = Set.of("yes", "no", "true", "false");

  /** A fact as a whole. */
  static <S extends Facts> Secret<S> of(
      String spoken, Field<?, ?> field, UnaryOperator<S> without) {
    return new Secret<>(field.name(), field.name(), spoken, field::isSaid, without);
  }

  /** Some of these words, or yes for all of them. */
  static <C extends Reading> Type<C, Set<String>> some(List<? extends Secret<?>> all) {
    List<String> words = all.stream().<String>map(Secret::word).toList();
    ValueSchema word = ValueSchema.word(words);
    return Type.of(
        ValueSchema.either(
            ScalarFormat.yesNo(),
            word,
            ValueSchema.list(word),
            new ValueSchema.Many(ScalarFormat.yesNo(), OptionalInt.of(1))),
        (entry, in) -> Optional.of(read(entry, words, in.values())));
  }

  private static Set<String> read(
      Optional<Node.Entry> entry, List<String> words, ScalarReader values) {
    List<Node.Entry> each = values.oneOrMore(entry);
    if (each.size() == 1 && isYesOrNo(each.get(0))) {
      boolean yes = values.yesNo(Optional.of(each.get(0))).orElse(false);
      return yes ? Set.copyOf(words) : Set.of();
    }
    FixedVocabulary<String> known =
        new FixedVocabulary<>(
            "what can be private here", DiagnosticCode.UNKNOWN_WORD, words, word -> word);
    Set<String> found = new LinkedHashSet<>();
    each.forEach(one -> known.read(Optional.of(one), values).ifPresent(found::add));
    return Set.copyOf(found);
  }

  private static boolean isYesOrNo(Node.Entry entry) {
    return entry.value() instanceof Node.Scalar scalar
        && YES_OR_NO.contains(scalar.text().strip().toLowerCase(Locale.ROOT));
  }
}
