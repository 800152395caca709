package assize.compare;

import assize.schema.Facts;
import assize.schema.Field;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * One property by which two editions of something are compared.
 *
 * @param what how reports name it
 * @param alters whether another value can alter a verdict, points or an award
 * @param value empty where nothing is said
 */
record Property<S>(
    String what, boolean alters, Function<S, Optional<? extends ChangedValue>> value) {
  /** Returns a field that is compared as a text; nothing but the wording changes with it. */
  static <S extends Facts> Property<S> wording(Field<?, String> field, String what) {
    return wording(field, what, words());
  }

  /** Returns a field that is compared as a text, or as none. */
  static <S extends Facts> Property<S> note(Field<?, Optional<String>> field, String what) {
    return wording(field, what, it -> it.map(ChangedValue.Words::new));
  }

  static <S extends Facts, T> Property<S> wording(
      Field<?, T> field, String what, Function<T, Optional<? extends ChangedValue>> told) {
    return of(field, what, false, told);
  }

  static <S extends Facts, T> Property<S> altering(
      Field<?, T> field, String what, Function<T, Optional<? extends ChangedValue>> told) {
    return of(field, what, true, told);
  }

  static <S extends Facts, T> Property<S> of(
      Field<?, T> field,
      String what,
      boolean alters,
      Function<T, Optional<? extends ChangedValue>> told) {
    return new Property<>(what, alters, it -> told.apply(it.get(field)));
  }

  static Function<String, Optional<? extends ChangedValue>> words() {
    return it -> Optional.of(new ChangedValue.Words(it));
  }

  static Optional<ChangedValue> points(long thousandths) {
    return Optional.of(new ChangedValue.Points(thousandths));
  }

  static Optional<ChangedValue> points(OptionalLong thousandths) {
    return thousandths.isPresent() ? points(thousandths.getAsLong()) : Optional.empty();
  }

  static Optional<ChangedValue> share(BigFraction share) {
    return Optional.of(new ChangedValue.Share(share));
  }

  /** Notes the property if it differs. */
  void compare(ChangeCollector.Of of, S before, S after) {
    of.check(what, alters, value.apply(before), value.apply(after));
  }

  /** Notes each of some properties that differs. */
  static <S> void compare(List<Property<S>> all, ChangeCollector.Of of, S before, S after) {
    all.forEach(it -> it.compare(of, before, after));
  }
}
