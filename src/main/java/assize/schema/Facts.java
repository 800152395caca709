package assize.schema;

import assize.text.SourceFile;
import assize.text.Span;
import java.util.Arrays;
import java.util.List;

/** What a person's file says under a group of names, as values; they never change. */
public abstract class Facts {
  private static final Span NOWHERE = new SourceFile("", "").span(0, 0);

  private final Drawn drawn;

  protected Facts(Drawn drawn) {
    this.drawn = drawn;
  }

  /** What facts are made of; only a {@link Table} draws them up. */
  public static final class Drawn {
    private final List<? extends Field<?, ?>> fields;
    private final Object[] values;
    private final Span at;

    Drawn(List<? extends Field<?, ?>> fields, Object[] values, Span at) {
      this.fields = fields;
      this.values = values;
      this.at = at;
    }

    static Drawn blank(List<? extends Field<?, ?>> fields) {
      return new Drawn(fields, fields.stream().map(Field::none).toArray(), NOWHERE);
    }

    /** Returns the value of one of the fields. */
    @SuppressWarnings("unchecked")
    public <T> T get(Field<?, T> field) {
      return (T) values[place(field)];
    }

    Drawn with(Field<?, ?> field, Object value) {
      Object[] changed = values.clone();
      changed[place(field)] = value;
      return new Drawn(fields, changed, at);
    }

    private int place(Field<?, ?> field) {
      int place = field.place();
      if (place < 0 || place >= values.length || fields.get(place) != field) {
        throw new IllegalArgumentException("a field of another table");
      }
      return place;
    }

    Drawn at(Span place) {
      return new Drawn(fields, values, place);
    }

    private List<Object> counting() {
      return fields.stream().filter(Field::counts).<Object>map(this::get).toList();
    }
  }

  Drawn drawn() {
    return drawn;
  }

  /** Returns one of the facts. */
  public final <T> T get(Field<?, T> field) {
    return drawn.get(field);
  }

  /** Returns where they are written. */
  public final Span at() {
    return drawn.at;
  }

  /** Where they are written makes no difference. */
  @Override
  public final boolean equals(Object other) {
    return other instanceof Facts that
        && getClass() == that.getClass()
        && drawn.counting().equals(that.drawn.counting());
  }

  @Override
  public final int hashCode() {
    return drawn.counting().hashCode();
  }

  @Override
  public String toString() {
    return getClass().getSimpleName() + Arrays.toString(drawn.values);
  }
}
