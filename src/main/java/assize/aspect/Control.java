package assize.aspect;

import java.util.List;

/**
 * How what is found is written down.
 *
 * @param choices of words and colors, those of the rule set in its order; else none
 * @param ofItem whether the choices are those of one item, and may be others at another
 * @param hint what to type, as in "a length, as in 5/64 in or 2.4 mm, to 0.1 mm"; empty for choices
 */
public record Control(Kind kind, List<Choice> choices, boolean ofItem, String hint) {
  public Control {
    choices = List.copyOf(choices);
  }

  /** What kind of thing is written. */
  public enum Kind {
    WORDS(15),
    COLOR(30),
    GLOSS(30),
    SIZE(60),
    STAMPED(30),
    PIECES(15),
    YES_NO(15);

    private final int seconds;

    Kind(int seconds) {
      this.seconds = seconds;
    }

    /** Returns roughly how long looking takes. */
    public int seconds() {
      return seconds;
    }
  }

  /**
   * One word that may be chosen.
   *
   * @param id as a record has it
   * @param name what it means
   * @param swatch of a color, as a screen can show it; empty of anything else
   */
  public record Choice(String id, String name, String swatch) {
    static final Choice NONE = new Choice(Finding.OTHER, "none that the rule set names", "");
  }
}
