package assize.schema;

import java.util.List;

/**
 * What the names of a group have to do with each other; the readers word it in their own way.
 *
 * @param names two or more; of {@link Kind#FIRST_NEEDS_SECOND} two
 */
public record PropertyConstraint(Kind kind, List<String> names) {
  public PropertyConstraint {
    names = List.copyOf(names);
  }

  /** In which way names belong together. */
  public enum Kind {
    /** One of them stands there, and one only. */
    ONE_OF,
    /** At least one of them stands there. */
    ANY_OF,
    /** The first has a meaning only beside the second. */
    FIRST_NEEDS_SECOND
  }

  public static PropertyConstraint oneOf(List<String> names) {
    return new PropertyConstraint(Kind.ONE_OF, names);
  }

  public static PropertyConstraint anyOf(String... names) {
    return new PropertyConstraint(Kind.ANY_OF, List.of(names));
  }

  public static PropertyConstraint needs(String name, String other) {
    return new PropertyConstraint(Kind.FIRST_NEEDS_SECOND, List.of(name, other));
  }
}
