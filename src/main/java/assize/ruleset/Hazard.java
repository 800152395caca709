package assize.ruleset;

import java.util.Arrays;
import java.util.Optional;

/** What can hurt whoever looks, samples, sands or lifts: common practice, no source. */
public enum Hazard {
  LEAD_PAINT(
      "lead paint",
      "Old paint may hold lead. Do not dry-sand, scrape or heat it; dampen it, wear gloves and a"
          + " suitable mask, keep the dust off skin and food, and collect what comes off."),
  ASBESTOS(
      "asbestos",
      "Brake linings, clutch faces, gaskets and wrapped exhausts may hold asbestos. Do not blow,"
          + " brush, sand or drill them; keep them wet and leave cutting and removal to people"
          + " licensed for it."),
  MERCURY(
      "mercury",
      "Old gauges and switches may hold mercury. Do not open or shake them; if one breaks, air the"
          + " place, keep people out and do not use a vacuum cleaner."),
  RADIUM(
      "radium",
      "Luminous dials may hold radium, whether or not they still glow. Keep the glass closed, do"
          + " not touch or scrape the paint, and wash your hands."),
  FUEL(
      "fuel",
      "Fuel and its vapor burn and explode. No flame, spark or running engine nearby; open the"
          + " place to the air and keep an extinguisher within reach."),
  BATTERY(
      "battery",
      "Batteries give off explosive gas, hold acid and can weld a tool. Protect eyes and skin, take"
          + " off rings, and disconnect before you work near the terminals."),
  LIFTING(
      "lifting",
      "Never look, reach or lie under a load that rests on a jack alone. Use stands on firm ground,"
          + " chock the wheels, and lift heavy parts with help."),
  SPRINGS(
      "springs",
      "A compressed or wound spring can kill when it lets go. Do not take it down to look at it;"
          + " use the proper tool, or leave it to someone who has it."),
  SPLIT_RIMS(
      "split rims",
      "A rim of several pieces can fly apart under pressure. Never loosen or inflate one outside a"
          + " cage; let the air out first and leave the rest to a trained fitter."),
  PLATING_SALTS(
      "plating salts",
      "Plating baths and their residues may hold cyanide or chromates. Do not mix, heat or handle"
          + " them; leave plating to a licensed plater."),
  ISOCYANATE(
      "isocyanate",
      "Two-pack paints give off isocyanates when sprayed or sanded fresh. They need air-fed"
          + " breathing protection and a proper booth; an ordinary mask is not enough."),
  OLD_WIRING(
      "old wiring",
      "Crumbling insulation can short and burn. Disconnect the battery before you move old wiring,"
          + " and fit a fuse before you connect it again.");

  /** What stands after every hazard. */
  public static final String THEN =
      "Local codes and licensed practice come first. An authentic part is not thereby a safe one.";

  private final String word;
  private final String precaution;

  Hazard(String word, String precaution) {
    this.word = word;
    this.precaution = precaution;
  }

  /** Returns the name that rule sets use. */
  public String word() {
    return word;
  }

  /** Returns the usual precaution. */
  public String precaution() {
    return precaution;
  }

  /** Returns the hazard of that name. */
  public static Optional<Hazard> of(String word) {
    return Arrays.stream(values()).filter(hazard -> hazard.word.equals(word)).findFirst();
  }
}
