package assize.report.html;

import static org.assertj.core.api.Assertions.assertThat;

import assize.report.sheet.Sheets;
import assize.text.Invisible;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
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
@Tag("slow")
class InjectionTest {
  /** Shown as it stands, but in notes, where it is emphasis. */
  private static final String QUIET = "*Quiet*";

  private static final String QUIET_NOTE = "Quiet";

  /**
   * Words that files compare, and codes as they are stamped, which may hold nothing that can't be
   * seen; the edition has the same text as a condition.
   */
  private static final Set<String> COMPARED =
      Set.of(
          "allowances",
          "cause",
          "choice",
          "choices",
          "condition",
          "conditions",
          "date_code",
          "edition",
          "reason");

  private InjectionPages quiet = new InjectionPages(Path.of(""), Map.of(), Set.of(), Set.of());
  private Map<String, PageContent> baseline = Map.of();

  @BeforeAll
  void writeQuietPages(@TempDir Path folder) throws IOException {
    quiet = InjectionPages.in(folder, it -> QUIET);
    baseline = PageContent.all(quiet.pages());
  }

  @Test
  void everyFreeFieldTakesAnyTextButThoseWithAFormOfTheirOwn() {
    assertThat(quiet.held())
        .containsExactly("gloss", "lead_time", "numbers", "part_number", "pattern", "size");
    assertThat(quiet.fields()).hasSizeGreaterThan(70);
    assertThat(baseline)
        .containsKeys(
            "report", "copy", "results", "results, shared", "sheet", "handbook", "changes")
        .hasSize(9);
  }

  @ParameterizedTest
  @EnumSource
  void nothingIsDoneAndNothingIsLost(InjectionStrings attack, @TempDir Path folder)
      throws IOException {
    Path own = Files.createDirectories(folder.resolve("own"));
    InjectionPages stranger = InjectionPages.in(own, it -> attack.text(), quiet.refused());
    Map<String, PageContent> against = baseline;
    if (attack.text().codePoints().anyMatch(c -> c != ' ' && c != '\n' && Invisible.is(c))) {
      Set<String> held = new TreeSet<>(stranger.held());
      held.removeAll(quiet.held());
      assertThat(held).isSubsetOf(COMPARED).isNotEmpty();
      Path same = Files.createDirectories(folder.resolve("same"));
      against = PageContent.all(InjectionPages.in(same, it -> QUIET, stranger.refused()).pages());
    } else {
      assertThat(stranger.fields().keySet()).isEqualTo(quiet.fields().keySet());
    }
    Map<String, PageContent> pages = PageContent.all(stranger.pages());
    assertThat(pages.keySet()).isEqualTo(against.keySet());
    Map<String, PageContent> harmlessOnes = against;
    List<String> faults = new ArrayList<>();
    pages.forEach(
        (kind, page) -> {
          PageContent harmless = Objects.requireNonNull(harmlessOnes.get(kind));
          faults.addAll(page.lostFrom(harmless, attack, stranger.files(), kind));
          faults.addAll(page.otherPartsThan(harmless, kind));
        });
    assertThat(faults).isEmpty();
  }

  /** {@link PageValidator} refuses a page that has one id twice. */
  @Test
  void areasAndItemsWhoseNamesContinueEachOtherAreToldApart(@TempDir Path folder)
      throws IOException {
    Files.writeString(
        folder.resolve("rules.yaml"),
        """
        rule_set: bare
        name: Bare
        edition: "1"
        models: {x: {name: X, production: 1932}}
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
