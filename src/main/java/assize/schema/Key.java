package assize.schema;

/**
 * One name of a group.
 *
 * @param isNeeded whether the group has to have it
 * @param value what is written under it
 * @param about what it is for, in a sentence
 */
public record Key(String name, boolean isNeeded, Value value, String about) {
  public static Key need(String name, Value value, String about) {
    return new Key(name, true, value, about);
  }

  public static Key may(String name, Value value, String about) {
    return new Key(name, false, value, about);
  }
}
