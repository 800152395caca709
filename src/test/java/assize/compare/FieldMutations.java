package assize.compare;

import assize.date.DateCodeTables;
import assize.date.DateRange;
import assize.date.DateRangeSet;
import assize.date.Edtf;
import assize.date.LeadTime;
import assize.pattern.DateCodePattern;
import assize.pattern.NumberPattern;
import assize.ruleset.DefinitionLocations;
import assize.ruleset.Item;
import assize.ruleset.RuleSet;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Table;
import assize.text.FileChecksum;
import assize.text.Span;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;

/** Every copy of a rule set in which one single field is another one. */
final class FieldMutations {
  private final List<String> refused = new ArrayList<>();

  /**
   * One field changed.
   *
   * @param path which field
   * @param item the item that it belongs to; empty for none
   */
  record Mutated<T>(String path, String item, T value) {}

  /** Returns them all. */
  List<Mutated<RuleSet>> of(RuleSet rules) {
    return inside(rules, RuleSet.class, "", "").stream()
        .map(one -> new Mutated<>(one.path(), one.item(), (RuleSet) one.value()))
        .toList();
  }

  /** Returns the fields whose other value a rule set can't have. */
  List<String> refused() {
    return refused;
  }

  private List<Mutated<Object>> inside(Object value, Type type, String path, String item) {
    if (value instanceof Span
        || value instanceof FileChecksum
        || value instanceof DefinitionLocations) {
      return List.of();
    }
    if (value instanceof Edtf) {
      return List.of(leaf(path, item, Edtf.parse("1901").toOptional().orElseThrow()));
    }
    if (value instanceof String text) {
      return List.of(leaf(path, item, text + "x"));
    }
    if (value instanceof Long number) {
      return List.of(leaf(path, item, number + 1000));
    }
    if (value instanceof Integer number) {
      return List.of(leaf(path, item, number > 1 ? number - 1 : number + 1));
    }
    if (value instanceof Double number) {
      return List.of(leaf(path, item, number + 0.5));
    }
    if (value instanceof Boolean flag) {
      return List.of(leaf(path, item, !flag));
    }
    if (value instanceof BigFraction share) {
      return List.of(leaf(path, item, share.add(BigFraction.of(1, 7))));
    }
    if (value instanceof LocalDate day) {
      return List.of(leaf(path, item, day.plusDays(day.equals(LocalDate.MAX) ? -9 : 1)));
    }
    if (value instanceof Enum<?> word) {
      Object[] all = word.getDeclaringClass().getEnumConstants();
      return List.of(leaf(path, item, all[(word.ordinal() + 1) % all.length]));
    }
    if (value instanceof NumberPattern number) {
      return List.of(leaf(path, item, NumberPattern.exactly(number.text() + "9")));
    }
    if (value instanceof DateCodePattern code) {
      return codes(code, path, item);
    }
    if (value instanceof DateRangeSet days) {
      DateRange first = days.spans().get(0);
      LocalDate last = first.last().equals(LocalDate.MAX) ? first.last() : first.last().plusDays(1);
      LocalDate begin =
          first.first().equals(LocalDate.MIN) ? first.first() : first.first().plusDays(1);
      return List.of(leaf(path, item, DateRangeSet.of(new DateRange(begin, last))));
    }
    if (value instanceof OptionalLong some) {
      return some.isPresent()
          ? List.of(
              leaf(path, item, OptionalLong.empty()),
              leaf(path, item, OptionalLong.of(some.getAsLong() + 500)))
          : List.of(leaf(path, item, OptionalLong.of(500)));
    }
    if (value instanceof OptionalDouble some) {
      return List.of(
          leaf(path, item, some.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(1.5)));
    }
    if (value instanceof Optional<?> some) {
      return optional(some, type, path, item);
    }
    if (value instanceof List<?> list) {
      return list(list, type, path, item);
    }
    if (value instanceof Set<?> set) {
      return set(set, type, path, item);
    }
    if (value instanceof Map<?, ?> map) {
      return map(map, type, path, item);
    }
    if (value instanceof Record one) {
      return record(one, path, item);
    }
    if (value instanceof Facts facts) {
      return facts(facts, path, item);
    }
    throw new IllegalStateException(path + " is a " + value.getClass());
  }

  private static Mutated<Object> leaf(String path, String item, Object value) {
    return new Mutated<>(path, item, value);
  }

  private static List<Mutated<Object>> codes(DateCodePattern code, String path, String item) {
    LeadTime other = LeadTime.parse("P7M..P1D").toOptional().orElseThrow();
    DateCodeTables tables = new DateCodeTables(Map.of("Z", 3), code.tables().months(), true);
    return List.of(
        leaf(
            path + ".made",
            item,
            DateCodePattern.compile(code.text(), code.tables(), other).toOptional().orElseThrow()),
        leaf(
            path + ".tables",
            item,
            DateCodePattern.compile(code.text(), tables, code.made()).toOptional().orElseThrow()),
        leaf(
            path + ".text",
            item,
            DateCodePattern.compile("X" + code.text(), code.tables(), code.made())
                .toOptional()
                .orElseThrow()));
  }

  private static Type argument(Type type, int index) {
    return type instanceof ParameterizedType of ? of.getActualTypeArguments()[index] : Object.class;
  }

  private List<Mutated<Object>> optional(Optional<?> some, Type type, String path, String item) {
    Type of = argument(type, 0);
    List<Mutated<Object>> all = new ArrayList<>();
    if (some.isPresent()) {
      all.add(leaf(path, item, Optional.empty()));
      inside(some.get(), of, path, item)
          .forEach(one -> all.add(leaf(one.path(), item, Optional.of(one.value()))));
    } else if (of == String.class) {
      all.add(leaf(path, item, Optional.of("drawing-7")));
    } else if (of == BigFraction.class) {
      all.add(leaf(path, item, Optional.of(BigFraction.of(1, 3))));
    } else if (of == Edtf.class) {
      all.add(leaf(path, item, Edtf.parse("1902").toOptional()));
    }
    return all;
  }

  private List<Mutated<Object>> list(List<?> list, Type type, String path, String item) {
    List<Mutated<Object>> all = new ArrayList<>();
    for (int i = 0; i < list.size(); i++) {
      int at = i;
      String where = path + "[" + i + "]";
      if (list.get(i) instanceof FileChecksum) {
        continue;
      }
      List<Object> without = new ArrayList<>(list);
      without.remove(at);
      all.add(leaf(where, item.isEmpty() ? name(list.get(i)) : item, without));
      for (Mutated<Object> one : inside(list.get(i), argument(type, 0), where, item)) {
        List<Object> with = new ArrayList<>(list);
        with.set(at, one.value());
        all.add(leaf(one.path(), one.item(), with));
      }
    }
    return all;
  }

  private static String name(Object thing) {
    return thing instanceof Item item ? item.id() : "";
  }

  private static List<Mutated<Object>> set(Set<?> set, Type type, String path, String item) {
    List<Mutated<Object>> all = new ArrayList<>();
    for (Object one : set) {
      Set<Object> without = new LinkedHashSet<>(set);
      without.remove(one);
      all.add(leaf(path + "-" + one, item, without));
    }
    if (argument(type, 0) == String.class) {
      Set<Object> with = new LinkedHashSet<>(set);
      with.add("another");
      all.add(leaf(path + "+", item, with));
    }
    return all;
  }

  private List<Mutated<Object>> map(Map<?, ?> map, Type type, String path, String item) {
    List<Mutated<Object>> all = new ArrayList<>();
    map.forEach(
        (key, value) -> {
          String where = path + "{" + key + "}";
          Map<Object, Object> without = new LinkedHashMap<>(map);
          without.remove(key);
          if (!path.endsWith(".worth")) { // what others leave of the points may be the same
            all.add(leaf(where, item, without));
          }
          for (Mutated<Object> one : inside(value, argument(type, 1), where, item)) {
            Map<Object, Object> with = new LinkedHashMap<>(map);
            with.put(key, one.value());
            all.add(leaf(one.path(), one.item(), with));
          }
        });
    return all;
  }

  private List<Mutated<Object>> record(Record one, String path, String item) {
    RecordComponent[] parts = one.getClass().getRecordComponents();
    Object[] values = Arrays.stream(parts).map(part -> value(part, one)).toArray();
    List<Mutated<Object>> all = new ArrayList<>();
    for (int i = 0; i < parts.length; i++) {
      if (path.endsWith("}") && parts[i].getName().equals("id")) {
        continue; // its name in the map, once more
      }
      String where = path + "." + parts[i].getName();
      for (Mutated<Object> other : inside(values[i], parts[i].getGenericType(), where, item)) {
        Object[] with = values.clone();
        with[i] = other.value();
        made(one.getClass(), parts, with)
            .ifPresentOrElse(
                made -> all.add(leaf(other.path(), other.item(), made)),
                () -> refused.add(other.path()));
      }
    }
    return all;
  }

  private <S extends Facts> List<Mutated<Object>> facts(S facts, String path, String above) {
    String item = facts instanceof Item one ? one.id() : above;
    List<Mutated<Object>> all = new ArrayList<>();
    Table<?, S> table = table(facts);
    for (java.lang.reflect.Field constant : facts.getClass().getFields()) {
      if (constant.getType() == Field.class) {
        Field<?, Object> field = value(constant);
        if (path.endsWith("}") && field.name().equals("id")) {
          continue; // its name in the map, once more
        }
        Type type = argument(constant.getGenericType(), 1);
        for (Mutated<Object> other :
            inside(facts.get(field), type, path + "." + field.name(), item)) {
          all.add(leaf(other.path(), other.item(), table.with(facts, field, other.value())));
        }
      }
    }
    return all;
  }

  @SuppressWarnings("unchecked")
  private static <S extends Facts> Table<?, S> table(S facts) {
    try {
      java.lang.reflect.Field table = facts.getClass().getDeclaredField("TABLE");
      return (Table<?, S>) value(table);
    } catch (NoSuchFieldException e) {
      throw new IllegalStateException(e);
    }
  }

  @SuppressWarnings("unchecked")
  private static <T> T value(java.lang.reflect.Field constant) {
    try {
      constant.setAccessible(true);
      return (T) constant.get(null);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object value(RecordComponent part, Record of) {
    try {
      part.getAccessor().setAccessible(true);
      return part.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Optional<Object> made(Class<?> type, RecordComponent[] parts, Object[] values) {
    try {
      Constructor<?> constructor =
          type.getDeclaredConstructor(
              Arrays.stream(parts).map(RecordComponent::getType).toArray(Class<?>[]::new));
      constructor.setAccessible(true);
      return Optional.of(constructor.newInstance(values));
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException) {
        return Optional.empty();
      }
      throw new IllegalStateException(e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
