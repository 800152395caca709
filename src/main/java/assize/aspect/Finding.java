package assize.aspect;

import assize.measure.GlossReading;
import assize.measure.Lab;
import assize.measure.Measured;
import assize.measure.Thread;
import java.util.Optional;

/** What was found of one aspect of one item. */
public sealed interface Finding {

  /** The word for a finish, material, color or choice that the rule set has no word for. */
  String OTHER = "other";

  /** Answers for each kind. */
  <R> R match(Cases<R> cases);

  /** A finish, material, choice, origin or condition: a word of the rule set, or {@link #OTHER}. */
  record Word(String id) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.word(this);
    }
  }

  /**
   * A color.
   *
   * @param chip the color of the rule set that it matches by eye
   * @param lab what an instrument reads: CIELAB, D65, 2°
   * @param uncertainty standard uncertainty of a color difference taken with the instrument
   * @param light the light it was matched in
   * @param by who matched it
   */
  record Color(
      Optional<String> chip,
      Optional<Lab> lab,
      double uncertainty,
      Optional<String> light,
      Optional<String> by)
      implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.color(this);
    }
  }

  /** Gloss at 60° (ISO 2813), in units or as a band. */
  record Gloss(GlossReading reading) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.gloss(this);
    }
  }

  /** A size as measured. */
  record Size(Measured measured) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.size(this);
    }
  }

  /** A screw thread as found. */
  record ScrewThread(Thread thread) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.screwThread(this);
    }
  }

  /**
   * A part number or date code, as stamped or cast.
   *
   * @param text in a copy for others, a masked number in it is marked by {@link #masking}
   */
  record Stamped(String text) implements Finding {
    // Dashes of vertical writing: no number has them, and what is compared is without dashes.
    private static final String FROM = "\uFE31";
    private static final String TO = "\uFE32";

    /** Marks a number that is compared but must not be shown. */
    public static String masking(String number) {
      return FROM + number + TO;
    }

    /** Says whether something in it must not be shown, nor how it differs from what is expected. */
    public boolean isMasked() {
      return text.contains(FROM);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.stamped(this);
    }
  }

  /** A number of pieces. */
  record Pieces(int count) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.pieces(this);
    }
  }

  /** Whether it is there, or works. */
  record YesNo(boolean yes) implements Finding {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.yesNo(this);
    }
  }

  /** One answer for each kind of finding. */
  interface Cases<R> {
    R word(Word found);

    R color(Color found);

    R gloss(Gloss found);

    R size(Size found);

    R screwThread(ScrewThread found);

    R stamped(Stamped found);

    R pieces(Pieces found);

    R yesNo(YesNo found);
  }
}
