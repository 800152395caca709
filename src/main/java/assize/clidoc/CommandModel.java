package assize.clidoc;

import java.util.List;

/**
 * One command of the command line.
 *
 * @param synopsis how it is written, without the program's name
 * @param about what it does, in a sentence
 * @param values what stands behind it, in order
 */
public record CommandModel(
    String name, String synopsis, String about, List<Switch> switches, List<Value> values) {
  public CommandModel {
    switches = List.copyOf(switches);
    values = List.copyOf(values);
  }

  /**
   * One option.
   *
   * @param names a short one perhaps, and a long one
   * @param value what is written behind it
   * @param isValueOptional whether the value may be left out; it then stands behind =
   */
  public record Switch(List<String> names, String about, Value value, boolean isValueOptional) {
    public Switch {
      names = List.copyOf(names);
    }

    /** Says whether the next word belongs to it. */
    boolean takesNext() {
      return value.kind() != Kind.NOTHING && !isValueOptional;
    }
  }

  /**
   * A value.
   *
   * @param label how the help calls it
   * @param words of {@link Kind#WORDS}: which there are
   */
  public record Value(String label, Kind kind, List<String> words, String about) {
    public Value {
      words = List.copyOf(words);
    }
  }

  /** What can be offered for a value. */
  public enum Kind {
    NOTHING,
    WORDS,
    YAML,
    FILE,
    FOLDER,
    TEXT
  }

  /** Returns what can be offered behind the command where no option stands. */
  Kind first() {
    return values.isEmpty() ? Kind.TEXT : values.get(0).kind();
  }

  List<String> words() {
    return values.isEmpty() ? List.of() : values.get(0).words();
  }
}
