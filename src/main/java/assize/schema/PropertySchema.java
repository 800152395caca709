package assize.schema;

/**
 * One name of a group.
 *
 * @param isNeeded whether the group has to have it
 * @param value what is written under it
 * @param about what it is for, in a sentence
 */
public record PropertySchema(String name, boolean isNeeded, ValueSchema value, String about) {
  public static PropertySchema need(String name, ValueSchema value, String about) {
    return new PropertySchema(name, true, value, about);
  }

  public static PropertySchema may(String name, ValueSchema value, String about) {
    return new PropertySchema(name, false, value, about);
  }
}
