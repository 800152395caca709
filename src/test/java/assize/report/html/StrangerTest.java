package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * What a stranger writes into any field does nothing on any kind of page, and can be read there:
 * held against the same pages with a harmless text in each field.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StrangerTest {
  /** Shown as it stands, but in notes, where it is emphasis. */
  private static final String QUIET = "*Quiet*";

  private static final String QUIET_NOTE = "Quiet";

  private Stranger quiet = new Stranger(Path.of(""), Map.of(), Set.of(), Set.of());
  private Map<String, Shown> baseline = Map.of();

  @BeforeAll
  void writeQuietPages(@TempDir Path folder) throws IOException {
    quiet = Stranger.in(folder, it -> QUIET);
    baseline = Shown.all(quiet.pages());
  }

  @Test
  void everyFreeFieldTakesAnyTextButThoseWithAFormOfTheirOwn() {
    assertThat(quiet.held())
        .containsExactly("gloss", "made", "numbers", "part_number", "pattern", "size");
    assertThat(quiet.fields()).hasSizeGreaterThan(70);
    assertThat(baseline)
        .containsKeys("report", "copy", "roster", "roster, shared", "sheet", "guide", "changes")
        .hasSize(9);
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsDoneAndNothingIsLost(Attacks attack, @TempDir Path folder) throws IOException {
    Stranger stranger = Stranger.in(folder, it -> attack.text(), quiet.refused());
    assertThat(stranger.fields().keySet()).isEqualTo(quiet.fields().keySet());
    Map<String, Shown> pages = Shown.all(stranger.pages());
    assertThat(pages.keySet()).isEqualTo(baseline.keySet());
    List<String> faults = new ArrayList<>();
    pages.forEach(
        (kind, page) -> {
          Shown harmless = Objects.requireNonNull(baseline.get(kind));
          faults.addAll(page.lostFrom(harmless, attack, stranger.files(), kind));
          faults.addAll(page.otherPartsThan(harmless, kind));
        });
    assertThat(faults).isEmpty();
  }

  /** {@link FinishedPage} refuses a page that has one id twice. */
  @Test
  void areasAndItemsWhoseNamesContinueEachOtherAreToldApart(@TempDir Path folder)
      throws IOException {
    Files.writeString(
        folder.resolve("rules.yaml"),
        """
        rule_set: bare
        name: Bare
        edition: "1"
        models: {x: {name: X, built: 1932}}
        areas:
          front:
            name: Front
            items:
              horn: {title: Horn, points: 1, expect: {present: yes}}
              horn-title: {title: Plate, points: 1, expect: {present: yes}}
          front-title:
            name: Front, in gold
            items:
              other: {title: Other, points: 1, expect: {present: yes}}
        """);
    Path record = folder.resolve("record.yaml");
    Files.writeString(
        record,
        """
        record: r
        rules: rules.yaml
        vehicle: {name: R, model: x}
        """);
    Sheets.run("judge", record.toString(), "--out", folder.resolve("out").toString());
    Sheets.run("sheet", record.toString(), "--out", folder.resolve("sheet.html").toString());
    assertThat(folder.resolve("out").resolve("r.html")).exists();
    assertThat(folder.resolve("sheet.html")).exists();
  }
}
