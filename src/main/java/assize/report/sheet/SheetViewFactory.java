package assize.report.sheet;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import assize.date.Edtf;
import assize.judgment.Judgment;
import assize.measure.GlossBand;
import assize.measure.GlossReading;
import assize.record.Inspected;
import assize.record.Observation;
import assize.record.VehicleRecord;
import assize.report.sheet.SheetView.SheetField;
import assize.ruleset.AspectRule;
import assize.ruleset.Item;
import assize.text.FileChecksum;
import assize.text.Sha256;
import assize.yaml.Node;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Turns a judgment and the text of its record into an inspection sheet. */
public final class SheetViewFactory {
  private SheetViewFactory() {}

  /**
   * Makes a sheet.
   *
   * @param file how the record is called where it is saved
   * @param text the record's text, and {@code tree} where everything in it stands
   * @param marked whether a byte order mark stands before it
   */
  public static SheetView of(
      Judgment judgment, String file, String text, boolean marked, Node.Mapping tree) {
    VehicleRecord vehicle = judgment.vehicle();
    Map<String, Map<String, Set<String>>> named = new LinkedHashMap<>();
    judgment.rules().items().forEach(item -> named.put(item.id(), named(item)));
    return new SheetView(
        InspectionViewFactory.of(judgment),
        "assize-sheet:" + digest(judgment) + ":" + vehicle.id(),
        file,
        text,
        marked,
        tree,
        vehicle.inspected().flatMap(Inspected::by).orElse(""),
        vehicle.inspected().flatMap(Inspected::on).map(Edtf::text).orElse(""),
        judgment.rules().scale().allowances().keySet().stream().sorted().toList(),
        Arrays.stream(GlossBand.values()).map(GlossBand::spoken).toList(),
        GlossReading.MOST,
        fields(),
        RecordNames.of(VehicleRecord.TABLE.block()),
        judgment.rules().items().map(Item::id).toList(),
        named);
  }

  private static List<SheetField> fields() {
    return Stream.concat(
            Arrays.stream(Aspect.values())
                .map(it -> new SheetField(it.word(), Optional.of(it.kind().control()))),
            Observation.of("").texts().keySet().stream()
                .map(it -> new SheetField(it, Optional.empty())))
        .toList();
  }

  private static Map<String, Set<String>> named(Item item) {
    return item.aspects().stream()
        .collect(Collectors.toMap(rule -> rule.aspect().word(), SheetViewFactory::keys));
  }

  private static Set<String> keys(AspectRule rule) {
    return rule.claims().stream()
        .flatMap(claim -> claim.values().stream())
        .map(Expectation::key)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Tells one state of a rule set from another. */
  private static String digest(Judgment judgment) {
    String files =
        judgment.rules().files().stream().map(FileChecksum::sha256).collect(Collectors.joining());
    return Sha256.of(files.getBytes(StandardCharsets.UTF_8));
  }
}
