package assize.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Colors;
import assize.aspect.Counts;
import assize.aspect.Finding;
import assize.aspect.PartNumbers;
import assize.aspect.Worded;
import assize.aspect.YesNo;
import assize.measure.CieLab;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.report.sheet.InspectionView;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.spreadsheet.Tables.Vehicle;
import assize.text.Invisible;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What a record says comes back from a table as it was. */
class RoundTripTest {
  /** Pieces that spreadsheets, XML, CSV or YAML do something of their own with. */
  private static final List<String> PIECES =
      List.of(
          "=",
          "+",
          "-",
          "@",
          "'",
          "''",
          "\"",
          ",",
          ";",
          ":",
          "#",
          "{",
          "}",
          "[",
          "]",
          "<",
          "&",
          "]]>",
          "\\",
          " ",
          "  ",
          "\t",
          "\n",
          "\r",
          "\r\n",
          "_x0041_",
          "_x000D_",
          "é",
          "±",
          "5/64",
          "\uD83D\uDE9A",
          "\u00A0",
          "\u2028",
          "\uFF1D",
          "\uFF0B",
          "0123",
          "1E5",
          "1-2",
          "yes",
          "null",
          "~",
          "|",
          ">",
          "%",
          "!",
          "*",
          "&amp;",
          "A",
          "b",
          "?",
          "\u0085",
          "=cmd|' /C calc'!A0");

  @TempDir private Path folder = Path.of("");

  /** What the rows of a table can hold of an observation. */
  private record SheetContent(Map<Aspect, Finding> findings, List<String> evidence, String note) {}

  private static Map<String, SheetContent> said(VehicleRecord record, InspectionView view) {
    Set<String> shown =
        view.areas().stream()
            .flatMap(area -> area.items().stream())
            .map(InspectionView.InspectedItem::id)
            .collect(Collectors.toSet());
    Map<String, Observation> found = new HashMap<>(record.observations());
    found.keySet().retainAll(shown);
    return said(found);
  }

  private static Map<String, SheetContent> said(Map<String, Observation> observations) {
    Map<String, SheetContent> said = new TreeMap<>();
    observations.forEach(
        (item, seen) -> {
          String bare = Cell.bare(seen.note().orElse(""));
          String note = Invisible.isAllOf(bare) ? "" : bare;
          if (!seen.findings().isEmpty() || !seen.evidence().isEmpty() || !note.isEmpty()) {
            said.put(item, new SheetContent(seen.findings(), seen.evidence(), note));
          }
        });
    return said;
  }

  @ParameterizedTest
  @CsvSource({
    "l45-4388, .xlsx",
    "l45-4388, .csv",
    "l41-half-recorded, .xlsx",
    "l41-half-recorded, .csv",
    "q-1187, .xlsx",
    "q-1187, .csv"
  })
  void theDemonstrationComesBackWhole(String name, String ending) {
    Vehicle vehicle = Vehicle.demonstration(name);
    FilledSheet filled = Tables.good(vehicle.read(vehicle.write(folder, ending)));
    assertThat(said(vehicle.observations(filled)))
        .isEqualTo(said(vehicle.record(), vehicle.view()))
        .hasSizeGreaterThan(50);
    assertThat(filled.madeFor().orElseThrow().record()).contains(name);
  }

  static Stream<Integer> seeds() {
    return Stream.iterate(1, it -> it + 1).limit(12);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whateverIsFoundComesBackWhole(int seed) {
    Random random = new Random(seed);
    Vehicle plain = Vehicle.demonstration(seed % 2 == 0 ? "l45-4388" : "q-1187");
    Map<String, Observation> observations = new LinkedHashMap<>();
    plain
        .rules()
        .items()
        .filter(it -> random.nextInt(3) == 0)
        .forEach(it -> observations.put(it.id(), observation(it, plain, random)));
    Vehicle vehicle = plain.with(observations);
    for (String ending : List.of(".xlsx", ".csv")) {
      FilledSheet filled = Tables.good(vehicle.read(vehicle.write(folder, ending)));
      assertThat(said(vehicle.observations(filled)))
          .as(ending)
          .isEqualTo(said(vehicle.record(), vehicle.view()));
    }
  }

  private static Observation observation(Item item, Vehicle vehicle, Random random) {
    Observation seen = Observation.of(item.id());
    for (AspectRule rule : item.aspects()) {
      Optional<Finding> found = finding(rule.aspect(), item, vehicle, random);
      if (found.isPresent()) {
        seen = seen.found(rule.aspect(), found.get());
      }
    }
    List<String> shown = List.copyOf(vehicle.record().evidence().keySet());
    List<String> cited =
        random.nextBoolean() ? List.of() : shown.subList(0, random.nextInt(shown.size()));
    return seen.with(Observation.EVIDENCE, cited)
        .with(
            Observation.NOTE,
            Optional.of(text(random)).map(String::strip).filter(it -> !it.isEmpty()));
  }

  /** Finds something; sizes and gloss have their own way of writing and are the demonstration's. */
  private static Optional<Finding> finding(
      Aspect aspect, Item item, Vehicle vehicle, Random random) {
    return switch (aspect) {
      case FINISH -> word(vehicle.rules().finishes().keySet(), random);
      case MATERIAL -> word(vehicle.rules().materials().keySet(), random);
      case CHOICE -> word(item.choices().keySet(), random);
      case CONDITION -> word(vehicle.rules().conditions().keySet(), random);
      case PART_NUMBER, DATE_CODE -> Optional.of(new PartNumbers.Found(text(random)));
      case COUNT -> Optional.of(new Counts.Found(random.nextInt(1_000_000)));
      case PRESENT, WORKS -> Optional.of(new YesNo.Found(random.nextBoolean()));
      case COLOR -> Optional.of(color(vehicle, random));
      case GLOSS, SIZE, ORIGIN ->
          Optional.ofNullable(vehicle.record().observations().get(item.id()))
              .flatMap(it -> Optional.ofNullable(it.findings().get(aspect)));
    };
  }

  private static Optional<Finding> word(Set<String> words, Random random) {
    List<String> all = new ArrayList<>(words);
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(new Worded.Found(all.get(random.nextInt(all.size()))));
  }

  private static Finding color(Vehicle vehicle, Random random) {
    List<String> chips = List.copyOf(vehicle.rules().colors().keySet());
    Optional<String> chip = Optional.of(chips.get(random.nextInt(chips.size())));
    if (random.nextBoolean()) {
      return new Colors.Found(chip, Optional.empty(), 0, Optional.empty(), Optional.empty());
    }
    return new Colors.Found(
        chip,
        Optional.of(new CieLab(random.nextInt(100) / 2.0, -17.5, random.nextInt(50) / 4.0)),
        random.nextInt(8) / 8.0,
        Optional.of(text(random).strip()).filter(it -> !it.isEmpty()),
        Optional.of("the owner: \"" + text(random).strip() + "\""));
  }

  private static String text(Random random) {
    StringBuilder text = new StringBuilder();
    int pieces = 1 + random.nextInt(6);
    for (int i = 0; i < pieces; i++) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return text.toString();
  }
}
