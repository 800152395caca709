package assize.bench.judging;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Finding;
import assize.aspect.PartNumbers;
import assize.aspect.Sizes;
import assize.aspect.Worded;
import assize.bench.judging.Standard.Item;
import assize.date.Edtf;
import assize.measure.CieLab;
import assize.measure.MeasuredSize;
import assize.record.Built;
import assize.record.Named;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.text.Span;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Vehicles to judge, as records and as plain figures. Of twenty findings one is missing and three
 * are wrong; a quarter of the sizes have an uncertainty; half of the colors were matched by eye,
 * half were read by an instrument, and half of those with an uncertainty.
 */
final class Fleet {
  private static final Span NOWHERE = new SourceFile("", "").span(0, 0);

  /** Uncertainties that records state, as standard uncertainties: of millimeters, of ΔE00. */
  static final double OF_SIZE = 0.05;

  static final double OF_COLOR = 0.4;

  private final Standard standard;
  private final boolean years;
  private final Map<String, String> names = new HashMap<>();

  /** The model of each vehicle, and the year it was built in. */
  final int[] models;

  final int[] firstYear;

  /** What was found of each item of each vehicle: a finish or chip; -1 where it is not that. */
  final byte[] words;

  /**
   * Where the part number of each begins among {@link #characters}; it ends where the next does.
   */
  final int[] numbers;

  byte[] characters = new byte[1 << 20];

  /** Sizes in hundredths of a millimeter, or L*, a*, b*. */
  final double[] figures;

  /** Standard uncertainties, in the same units. */
  final double[] uncertain;

  /** Whether something was found. */
  final boolean[] shown;

  final List<VehicleRecord> records = new ArrayList<>();
  private int filled;

  /**
   * Makes vehicles.
   *
   * @param rules the standard as it was read, whose own texts stand in a record for its names
   * @param years whether only three years are known in which each was built
   */
  Fleet(Standard standard, RuleSet rules, int vehicles, boolean years) {
    this.standard = standard;
    rules.items().forEach(item -> names.put(item.id(), item.id()));
    rules.finishes().keySet().forEach(name -> names.put(name, name));
    rules.colors().keySet().forEach(name -> names.put(name, name));
    this.years = years;
    int all = vehicles * Standard.ITEMS;
    this.models = new int[vehicles];
    this.firstYear = new int[vehicles];
    this.words = new byte[all];
    this.numbers = new int[all + 1];
    this.figures = new double[3 * all];
    this.uncertain = new double[all];
    this.shown = new boolean[all];
    Random random = new Random(11);
    for (int v = 0; v < vehicles; v++) {
      vehicle(random, v);
    }
  }

  private void vehicle(Random random, int v) {
    models[v] = random.nextInt(Standard.MODELS);
    int span = years ? 3 : 1;
    firstYear[v] = Standard.FIRST_YEAR + random.nextInt(Standard.YEARS - span + 1);
    Map<String, Observation> observations = new LinkedHashMap<>();
    for (int i = 0; i < Standard.ITEMS; i++) {
      int at = v * Standard.ITEMS + i;
      words[at] = -1;
      numbers[at] = filled;
      shown[at] = random.nextInt(20) > 0;
      if (shown[at]) {
        Item item = standard.items().get(i);
        Finding finding = finding(random, item, at, random.nextInt(20) > 2);
        observations.put(own(Standard.id(i)), observation(i, item, finding));
      }
      numbers[at + 1] = filled;
    }
    String built =
        years ? firstYear[v] + "/" + (firstYear[v] + 2) : firstYear[v] + "-05-1" + v % 10;
    records.add(record(v, built, observations));
  }

  private Finding finding(Random random, Item item, int at, boolean right) {
    switch (item.kind()) {
      case FINISH -> {
        int word = right ? item.right() : random.nextInt(Standard.FINISHES.length);
        words[at] = (byte) word;
        return new Worded.Found(own(Standard.FINISHES[word]));
      }
      case PART_NUMBER -> {
        int number = (right ? item.series() : 100 + random.nextInt(900)) * 1000;
        String text = (random.nextBoolean() ? "A-" : "b ") + (number + random.nextInt(1000));
        add(text);
        return new PartNumbers.Found(text);
      }
      case SIZE -> {
        int off = right ? random.nextInt(31) - 15 : 20 + random.nextInt(40);
        double u = random.nextInt(4) == 0 ? OF_SIZE : 0;
        String text = (item.millimeters() + off) / 100.0 + " mm";
        figures[3 * at] = item.millimeters() + off;
        uncertain[at] = 100 * u;
        return new Sizes.Found(
            MeasuredSize.parse(u == 0 ? text : text + " ± 0.1 mm").toOptional().orElseThrow());
      }
      case COLOR -> {
        int chip = right ? item.right() : random.nextInt(Standard.COLORS.length);
        if (random.nextBoolean()) {
          words[at] = (byte) chip;
          return new Colors.Found(
              Optional.of(own(Standard.color(chip))),
              Optional.empty(),
              0,
              Optional.empty(),
              Optional.empty());
        }
        double u = random.nextBoolean() ? OF_COLOR : 0;
        uncertain[at] = u;
        double[] lab = new double[3];
        for (int i = 0; i < 3; i++) {
          lab[i] = Math.round(Standard.COLORS[chip][i] * 10 + random.nextInt(31) - 15) / 10.0;
          figures[3 * at + i] = lab[i];
        }
        return new Colors.Found(
            Optional.empty(),
            Optional.of(new CieLab(lab[0], lab[1], lab[2])),
            u,
            Optional.empty(),
            Optional.empty());
      }
    }
    throw new IllegalStateException();
  }

  /** Returns the standard's own text of a name, as a record has it that was read. */
  private String own(String name) {
    return names.getOrDefault(name, name);
  }

  private void add(String text) {
    if (filled + text.length() > characters.length) {
      characters = java.util.Arrays.copyOf(characters, 2 * characters.length);
    }
    for (int i = 0; i < text.length(); i++) {
      characters[filled++] = (byte) text.charAt(i);
    }
  }

  private Observation observation(int i, Item item, Finding finding) {
    Aspect aspect =
        switch (item.kind()) {
          case FINISH -> Aspect.FINISH;
          case PART_NUMBER -> Aspect.PART_NUMBER;
          case SIZE -> Aspect.SIZE;
          case COLOR -> Aspect.COLOR;
        };
    return Observation.of(own(Standard.id(i))).found(aspect, finding);
  }

  private VehicleRecord record(int v, String built, Map<String, Observation> observations) {
    return VehicleRecord.of("vehicle-" + v, "rules.yaml", "Vehicle")
        .with(Named.MODEL, Optional.of(Standard.model(models[v])))
        .with(
            VehicleRecord.BUILT,
            Optional.of(Built.on(Edtf.parse(built).toOptional().orElseThrow())))
        .with(VehicleRecord.OBSERVATIONS, observations);
  }
}
