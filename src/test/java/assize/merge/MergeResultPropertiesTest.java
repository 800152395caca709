package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.aspect.Aspect;
import assize.aspect.Finding;
import assize.record.Observation;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.text.SourceFile;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** However two records are written and whatever they say, nothing of either is lost. */
class MergeResultPropertiesTest {
  private static final int PAIRS = 400;

  static Stream<Long> blocks() {
    return LongStream.range(0, 4).boxed();
  }

  private static LocatedRecord read(String name, String text) {
    SourceFile file = new SourceFile(name, text);
    var read = RecordReader.parse(file, Samples.RULES);
    VehicleRecord record =
        read.value().orElseThrow(() -> new AssertionError(read.diagnostics() + "\n" + text));
    return LocatedRecord.of(file, record).orElseThrow();
  }

  private static MergeResult merge(LocatedRecord mine, LocatedRecord... theirs) {
    return Merger.merge(
        Samples.RULES, mine, List.of(theirs), new TakeChoices(Map.of()), name -> true);
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void whatIsThereStaysAndWhatIsNewComes(long block) {
    LongStream.range(block * PAIRS / 4, (block + 1) * PAIRS / 4)
        .forEach(MergeResultPropertiesTest::check);
  }

  private static void check(long seed) {
    LocatedRecord mine = read("mine.yaml", new RandomRecords(seed).text());
    LocatedRecord anna = read("anna.yaml", new RandomRecords(seed + 10_000).text());
    LocatedRecord ben = read("ben.yaml", new RandomRecords(seed + 20_000).text());
    MergeResult merge = merge(mine, anna, ben);
    MergeApplier.Applied applied = MergeApplier.apply(mine, Samples.RULES, merge);
    String as = "seed " + seed + "\n" + applied.edited().text();
    assertThat(applied.undone()).as(as).isEmpty();
    LocatedRecord after = read("mine.yaml", applied.edited().text());
    holdsAll(mine, after, List.of(), as);
    holdsAll(anna, after, merge.conflicts(), as);
    holdsAll(ben, after, merge.conflicts(), as);
    MergeResult again = merge(after, anna, ben);
    assertThat(again.steps()).as(as).isEmpty();
    assertThat(again.conflicts()).as(as).hasSameSizeAs(merge.conflicts());
  }

  /** Says that everything found in one record is found in another, but for what is in conflict. */
  private static void holdsAll(
      LocatedRecord one, LocatedRecord after, List<MergeResult.Conflict> conflicts, String as) {
    for (Observation observation : one.record().observations().values()) {
      Optional<Observation> there =
          Optional.ofNullable(after.record().observations().get(observation.item()));
      Map<Aspect, Finding> found = there.map(Observation::findings).orElse(Map.of());
      observation
          .findings()
          .forEach(
              (aspect, finding) -> {
                RecordField part = new RecordField(observation.item(), aspect.word());
                boolean open = conflicts.stream().anyMatch(it -> it.part().equals(part));
                Optional<Finding> now = Optional.ofNullable(found.get(aspect));
                boolean same = now.filter(it -> it.sameAs(finding)).isPresent();
                assertThat(same || open).as(part + ", " + as).isTrue();
              });
      if (observation.note().isPresent()) {
        RecordField part = new RecordField(observation.item(), "note");
        boolean open = conflicts.stream().anyMatch(it -> it.part().equals(part));
        Optional<String> now = there.flatMap(Observation::note);
        assertThat(open || ValueEquality.ofTexts(now, observation.note())).as(part + as).isTrue();
      }
    }
    assertThat(after.record().evidence().keySet())
        .as(as)
        .containsAll(one.record().evidence().keySet());
  }
}
