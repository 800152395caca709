package assize.aspect;

import assize.measure.CieLab;
import assize.schema.Facts;
import assize.schema.Field;
import assize.schema.Reading;
import assize.schema.ScalarFormat;
import assize.schema.Table;
import assize.schema.Type;
import java.util.List;
import java.util.Optional;

/** A color of the rule set. */
public final class ColorChip extends Facts {
  /** The tolerance of a color that says none. */
  public static final double USUAL_TOLERANCE = 3.0;

  public static final Field<Definition, String> ID = Field.given("id", "", Definition::id);
  public static final Field<Reading, String> NAME =
      Field.need("name", "", Type.visible(), "How reports say it.");
  public static final Field<Reading, Optional<CieLab>> LAB =
      Field.may(
          "lab",
          Type.of(Colors.LAB, (entry, in) -> entry.flatMap(it -> Colors.lab(it, in.values()))),
          "What an instrument reads on a good sample: L*, a*, b* (D65, 2°). Without it the"
              + " color can only be matched by eye.");
  public static final Field<Reading, Double> TOLERANCE =
      Field.orNone(
          "tolerance",
          USUAL_TOLERANCE,
          Type.of(
              ScalarFormat.decimal("0", "100"),
              (entry, in) -> in.values().decimal(entry, 0, 100, "a tolerance")),
          "The greatest color difference (CIEDE2000) that still passes; 3 if nothing is said.");

  public static final Table<Definition, ColorChip> TABLE =
      Table.of("a color", ColorChip::new, List.of(ID, NAME, LAB, TOLERANCE));

  private ColorChip(Drawn drawn) {
    super(drawn);
  }

  /** Returns a color that is matched by eye alone. */
  public static ColorChip of(String id, String name) {
    return TABLE.with(TABLE.with(TABLE.blank(), ID, id), NAME, name);
  }

  public String id() {
    return get(ID);
  }

  public String name() {
    return get(NAME);
  }

  /** Returns CIELAB (D65, 2°) of a good sample; without it the color is matched by eye alone. */
  public Optional<CieLab> lab() {
    return get(LAB);
  }

  /** Returns the greatest CIEDE2000 difference that still passes. */
  public double tolerance() {
    return get(TOLERANCE);
  }
}
