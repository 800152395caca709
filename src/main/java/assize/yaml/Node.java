package assize.yaml;

import assize.text.Span;
import java.util.List;
import java.util.function.Function;

/** What a person wrote, as a tree: names with what belongs to them, lists, and texts as typed. */
public sealed interface Node {
  Span at();

  /** Says whether it is a group or a list in brackets, and not in lines. */
  default boolean isInBrackets() {
    Span at = at();
    return !(this instanceof Scalar)
        && at.start() < at.end()
        && "{[".indexOf(at.file().text().charAt(at.start())) >= 0;
  }

  /** Returns what it is, in words, for "a list is written where one word is wanted". */
  String kind();

  <R> R match(
      Function<? super Mapping, ? extends R> mapping,
      Function<? super Sequence, ? extends R> sequence,
      Function<? super Scalar, ? extends R> scalar);

  /** Names, each with what belongs to it, in the order written; no name twice. */
  record Mapping(List<Entry> entries, Span at) implements Node {
    public Mapping {
      entries = List.copyOf(entries);
    }

    @Override
    public String kind() {
      return "a group of names";
    }

    @Override
    public <R> R match(
        Function<? super Mapping, ? extends R> mapping,
        Function<? super Sequence, ? extends R> sequence,
        Function<? super Scalar, ? extends R> scalar) {
      return mapping.apply(this);
    }
  }

  /** A list. */
  record Sequence(List<Node> nodes, Span at) implements Node {
    public Sequence {
      nodes = List.copyOf(nodes);
    }

    @Override
    public String kind() {
      return "a list";
    }

    @Override
    public <R> R match(
        Function<? super Mapping, ? extends R> mapping,
        Function<? super Sequence, ? extends R> sequence,
        Function<? super Scalar, ? extends R> scalar) {
      return sequence.apply(this);
    }
  }

  /**
   * A text.
   *
   * @param text as typed, or as its quotes and folds mean it; never a number or a truth value
   */
  record Scalar(String text, Style style, Span at) implements Node {
    /** How it was written. */
    public enum Style {
      PLAIN,
      QUOTED,
      BLOCK
    }

    /** Says whether nothing is written: a name, a colon, and the end of the line. */
    public boolean isNothing() {
      return style == Style.PLAIN && (text.isEmpty() || text.equals("~"));
    }

    /** Says whether nothing is written, not even a tilde. */
    public boolean isEmptyPlace() {
      return isNothing() && at.start() == at.end();
    }

    /** Returns where a part of the text stands: exactly where that can be told, else the whole. */
    public Span part(int offset, int length) {
      String written = at.text();
      if (written.equals(text)) {
        return at.part(offset, length);
      }
      boolean unchanged =
          style == Style.QUOTED
              && written.length() == text.length() + 2
              && written.startsWith(text, 1);
      return unchanged && offset <= text.length() ? at.part(offset + 1, length) : at;
    }

    @Override
    public String kind() {
      return "a single text";
    }

    @Override
    public <R> R match(
        Function<? super Mapping, ? extends R> mapping,
        Function<? super Sequence, ? extends R> sequence,
        Function<? super Scalar, ? extends R> scalar) {
      return scalar.apply(this);
    }
  }

  /** A name and what belongs to it. */
  record Entry(Scalar key, Node value) {
    public String name() {
      return key.text();
    }

    /** Returns the same name with one part of what belongs to it. */
    public Entry with(Node part) {
      return new Entry(key, part);
    }

    /** Says whether it is a name without even a colon, as the second in {@code {a: b, c}}. */
    public boolean isBare() {
      String text = key.at().file().text();
      int next = key.at().end();
      return value instanceof Scalar scalar
          && scalar.isNothing()
          && (next >= text.length() || text.charAt(next) != ':');
    }

    /** Returns where the colon behind the name stands; -1 where it has none. */
    public int colon() {
      return isBare() ? -1 : key.at().file().text().indexOf(':', key.at().end());
    }

    /** Returns where a value stands, or would stand: behind the colon, or behind a bare name. */
    public int behind() {
      int colon = colon();
      return colon < 0 ? key.at().end() : colon + 1;
    }

    /** Returns where to point: at the value, or at the name if nothing is written. */
    public Span at() {
      return value instanceof Scalar scalar && scalar.isNothing() ? key.at() : value.at();
    }
  }
}
