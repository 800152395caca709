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
public record Shape(String title, String about, Block root, Map<String, Block> shared) {
  public Shape {
    shared = Map.copyOf(shared);
  }

  /** Returns the group that a value stands for. */
  public Block block(Value.Shared value) {
    return Optional.ofNullable(shared.get(value.name())).orElseThrow();
  }
}
