package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.edit.EditResult;
import assize.edit.TextEdit;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.text.SourceFile;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** However a record is written, a change leaves every other letter, and says what was meant. */
class EditingPropertiesTest {
  private static final int RECORDS = 1500;

  static Stream<Long> blocks() {
    return LongStream.range(0, 5).boxed();
  }

  private static Stream<Long> seeds(long block) {
    return LongStream.range(block * RECORDS / 5, (block + 1) * RECORDS / 5).boxed();
  }

  private record Change(List<String> path, YamlValue value) {}

  private static VehicleRecord read(String text) {
    var read = RecordReader.parse(new SourceFile("record.yaml", text), Samples.RULES);
    return read.value().orElseThrow(() -> new AssertionError(read.diagnostics() + "\n" + text));
  }

  /** Makes up to three changes of a record that says {@code old}. */
  private static List<Change> changes(YamlValue.Group old, Random random) {
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i <= random.nextInt(3); i++) {
      List<String> items = List.copyOf(RandomRecords.ITEMS.keySet());
      String item = items.get(random.nextInt(items.size()));
      Map<String, List<String>> aspects = RandomRecords.ITEMS.getOrDefault(item, Map.of());
      List<String> keys = List.copyOf(new TreeSet<>(aspects.keySet()));
      String key = random.nextInt(3) == 0 ? "note" : keys.get(random.nextInt(keys.size()));
      List<String> values = aspects.getOrDefault(key, List.of("Seen: # it\nwas \ud83d\ude9a", "x"));
      String value = values.get(random.nextInt(values.size()));
      changes.add(new Change(List.of("observations", item, key), YamlValue.text(value)));
    }
    if (random.nextInt(3) == 0) {
      changes.add(
          new Change(List.of("evidence", "photo-1"), Samples.group("photo", "photos/a b.jpg")));
      boolean known = old.get("evidence").isPresent();
      YamlValue first = YamlValue.text(known ? "rule" : "photo-1");
      changes.add(
          new Change(
              List.of("observations", "bed", "evidence"), new YamlValue.Items(List.of(first))));
    }
    return changes;
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void everyOtherLetterStays(long block) {
    seeds(block).forEach(EditingPropertiesTest::check);
  }

  private static void check(long seed) {
    String before = new RandomRecords(seed).text();
    read(before);
    YamlValue.Group wanted = Samples.content(before);
    for (Change change : changes(wanted, new Random(seed))) {
      wanted = Samples.with(wanted, change.path(), change.value());
    }
    String as = "seed " + seed + "\n" + before;
    EditResult edited =
        RecordEditing.edit(new SourceFile("record.yaml", before), Samples.RULES, wanted)
            .orElseThrow(() -> new AssertionError(as));
    assertThat(edited.byHand()).as(as).isEmpty();
    assertThat(Samples.content(edited.text())).as(as).isEqualTo(wanted);
    assertThat(without(edited)).as(as).isEqualTo(before);
    assertThat(read(edited.text())).isNotNull();
    remarksStay(before, edited.text(), as);
  }

  /** Takes out what was put in, and puts back what was replaced, by the pieces alone. */
  private static String without(EditResult edited) {
    StringBuilder text = new StringBuilder(edited.text());
    int shift = 0;
    List<Integer> places = new ArrayList<>();
    for (TextEdit piece : edited.pieces()) {
      places.add(piece.at().start() + shift);
      shift += piece.text().length() - (piece.at().end() - piece.at().start());
    }
    for (int i = edited.pieces().size() - 1; i >= 0; i--) {
      TextEdit piece = edited.pieces().get(i);
      int start = places.get(i);
      assertThat(text.substring(start, start + piece.text().length())).isEqualTo(piece.text());
      text.replace(start, start + piece.text().length(), piece.at().text());
    }
    return text.toString();
  }

  private static void remarksStay(String before, String after, String as) {
    long remarks = before.chars().filter(c -> c == '\t').count();
    assertThat(after.chars().filter(c -> c == '\t').count()).as(as).isEqualTo(remarks);
  }

  @Test
  void noChangeIsNoChange() {
    IntStream.range(0, 200)
        .mapToObj(seed -> new RandomRecords(seed).text())
        .forEach(
            text ->
                assertThat(
                        RecordEditing.edit(
                                new SourceFile("r.yaml", text),
                                Samples.RULES,
                                Samples.content(text))
                            .orElseThrow()
                            .pieces())
                    .isEmpty());
  }

  @Test
  void theRecordsAreWrittenInManyWays() {
    List<String> all = IntStream.range(0, 900).mapToObj(i -> new RandomRecords(i).text()).toList();
    for (String way : List.of("\r\n", "{", "'", "\"", "#\t", "|", "\ud83d\ude9a", "\n\n", "---")) {
      assertThat(all.stream().filter(it -> it.contains(way)).count()).as(way).isGreaterThan(10);
    }
    assertThat(all.stream().filter(it -> !it.endsWith("\n")).count()).isGreaterThan(50);
    assertThat(
            all.stream()
                .filter(it -> it.contains("\r\n") && it.replace("\r\n", "").contains("\n"))
                .count())
        .isGreaterThan(20);
  }
}
