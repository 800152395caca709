package assize.schema;

import java.util.Map;
import java.util.Optional;

/**
 * What one kind of file holds.
 *
 * @param title what it is called
 * @param about what it is for, in a sentence
 * @param root the names at its top
 * @param shared what stands in many places of it, by name
 */
public record FileSchema(
    String title, String about, ObjectSchema root, Map<String, ObjectSchema> shared) {
  public FileSchema {
    shared = Map.copyOf(shared);
  }

  /** Returns the group that a value stands for. */
  public ObjectSchema block(ValueSchema.Shared value) {
    return Optional.ofNullable(shared.get(value.name())).orElseThrow();
  }
}
