package assize.report.view;

import java.util.List;

/**
 * How belief, plausibility and conflict come about, so that both sides can check it by hand.
 *
 * @param names what each number stands for
 * @param witnesses what each witness gives
 * @param pooled witnesses that leave the same standing, taken together
 * @param steps one for each further group; none where there are too many to print
 * @param tooLong says so where there are too many; else empty
 * @param conflict the conflict, and what is left
 * @param masses what each set of positions has in the end
 * @param positions belief and plausibility of each position
 */
public record CombinationStepsView(
    List<Named> names,
    List<Witness> witnesses,
    List<CombinationRow> pooled,
    List<Step> steps,
    String tooLong,
    String conflict,
    List<CombinationRow> masses,
    List<Figures> positions) {
  public CombinationStepsView {
    names = List.copyOf(names);
    witnesses = List.copyOf(witnesses);
    pooled = List.copyOf(pooled);
    steps = List.copyOf(steps);
    masses = List.copyOf(masses);
    positions = List.copyOf(positions);
  }

  /** A short name and what it stands for. */
  public record Named(String name, String words) {}

  /**
   * One witness.
   *
   * @param set what it leaves standing
   * @param rest what it leaves to all positions
   */
  public record Witness(String who, String grade, String set, String weight, String rest) {}

  /** A set of positions, a sum or a product, and its value. */
  public record CombinationRow(String set, String sum, String value) {}

  /** Taking in one more group. */
  public record Step(String title, List<CombinationRow> rows) {
    public Step {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A position's figures.
   *
   * @param share its part of the likely credit; empty where it is not judged by
   */
  public record Figures(String position, String belief, String plausibility, String share) {}
}
