package assize;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the package table of DEVELOPERS.md: who may import whom, and which library where. */
class PackagesTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("assize");

  private static final Map<String, Set<String>> MAY_IMPORT = new LinkedHashMap<>();

  static {
    MAY_IMPORT.put("text", Set.of());
    MAY_IMPORT.put("date", Set.of("text"));
    MAY_IMPORT.put("measure", Set.of("text"));
    MAY_IMPORT.put("diagnostic", Set.of("text"));
    MAY_IMPORT.put("yaml", Set.of("text", "diagnostic"));
    MAY_IMPORT.put("schema", Set.of("text", "diagnostic", "date", "yaml"));
    Set<String> basis = Set.of("text", "diagnostic", "date", "measure", "yaml", "schema");
    MAY_IMPORT.put("pattern", Set.of("text", "date"));
    MAY_IMPORT.put("aspect", and(basis, "pattern"));
    MAY_IMPORT.put("evidence", and(basis, "pattern", "aspect"));
    Set<String> facts = and(basis, "pattern", "aspect", "evidence");
    MAY_IMPORT.put("ruleset", facts);
    MAY_IMPORT.put("production", and(facts, "ruleset"));
    MAY_IMPORT.put("record", and(facts, "ruleset"));
    MAY_IMPORT.put("judgment", and(facts, "ruleset", "record"));
    MAY_IMPORT.put("edit", Set.of("text", "diagnostic", "yaml"));
    MAY_IMPORT.put("merge", and(facts, "ruleset", "record", "edit"));
    MAY_IMPORT.put("check", and(facts, "ruleset", "production", "record", "judgment"));
    MAY_IMPORT.put("judge", and(facts, "ruleset", "production", "record", "judgment"));
    MAY_IMPORT.put("timeline", and(facts, "ruleset", "production", "record", "judgment", "judge"));
    MAY_IMPORT.put(
        "compare", and(facts, "ruleset", "production", "record", "judgment", "judge", "timeline"));
    MAY_IMPORT.put("image", Set.of("text", "diagnostic"));
    MAY_IMPORT.put("clidoc", Set.of());
    MAY_IMPORT.put("redaction", and(facts, "ruleset", "record", "judgment", "judge"));
    MAY_IMPORT.put("report.chart", and(facts));
    MAY_IMPORT.put(
        "report.view",
        and(
            facts,
            "ruleset",
            "production",
            "record",
            "judgment",
            "judge",
            "timeline",
            "report.chart"));
    MAY_IMPORT.put("spreadsheet", and(facts, "ruleset", "record", "report.view", "report.sheet"));
    MAY_IMPORT.put("report.html", Set.of("text"));
    MAY_IMPORT.put(
        "report.handbook",
        and(
            facts,
            "ruleset",
            "production",
            "judgment",
            "judge",
            "timeline",
            "report.chart",
            "report.view",
            "report.html"));
    MAY_IMPORT.put(
        "report.changes",
        and(
            facts,
            "ruleset",
            "record",
            "judgment",
            "timeline",
            "compare",
            "report.view",
            "report.html",
            "report.handbook"));
    MAY_IMPORT.put(
        "report.sheet",
        and(facts, "ruleset", "record", "judgment", "judge", "report.view", "report.html"));
    MAY_IMPORT.put(
        "report.vehicle",
        and(facts, "ruleset", "record", "judgment", "report.chart", "report.view", "report.html"));
    MAY_IMPORT.put(
        "report.dossier",
        and(facts, "ruleset", "record", "judgment", "report.view", "report.html"));
    MAY_IMPORT.put(
        "report.results",
        and(facts, "ruleset", "record", "judgment", "report.chart", "report.view", "report.html"));
    MAY_IMPORT.put(
        "report.redacted",
        and(
            facts,
            "ruleset",
            "record",
            "judgment",
            "redaction",
            "report.chart",
            "report.view",
            "report.vehicle",
            "report.dossier",
            "report.results"));
    MAY_IMPORT.put(
        "report.text", and(facts, "ruleset", "record", "judgment", "check", "edit", "merge"));
    MAY_IMPORT.put("newrecord", and(facts, "ruleset", "record", "report.view", "report.sheet"));
  }

  private static final Map<String, String> LIBRARY_IN =
      Map.ofEntries(
          entry("tools.jackson..", "assize.yaml"),
          entry("freemarker..", "assize.report.html"),
          entry("org.jsoup..", "assize.report.html"),
          entry("org.commonmark..", "assize.report.html"),
          entry("com.google.re2j..", "assize.pattern"),
          entry("picocli..", "assize.cli"),
          entry("com.twelvemonkeys..", "assize.image"),
          entry("com.drew..", "assize.image"),
          entry("java.awt..", "assize.image"),
          entry("org.dhatim..", "assize.spreadsheet"),
          entry("de.siegmar..", "assize.spreadsheet"),
          entry("javax.xml..", "assize.spreadsheet"),
          entry("javax.imageio..", "assize.image"));

  private static Set<String> and(Set<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).collect(Collectors.toSet());
  }

  static Stream<String> packages() {
    return MAY_IMPORT.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void importsOnlyWhatItMay(String name) {
    List<String> others =
        Stream.concat(MAY_IMPORT.keySet().stream(), Stream.of("cli"))
            .filter(other -> !other.equals(name) && !allowed(name).contains(other))
            .map(other -> "assize." + other)
            .toList();
    noClasses()
        .that()
        .resideInAPackage("assize." + name)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(others.toArray(String[]::new))
        .check(CLASSES);
  }

  private static Set<String> allowed(String name) {
    return MAY_IMPORT.getOrDefault(name, Set.of());
  }

  @Test
  void everyPackageStandsInTheTable() {
    Set<String> found =
        CLASSES.stream()
            .map(JavaClass::getPackageName)
            .filter(name -> !name.equals("assize") && !name.equals("assize.cli"))
            .map(name -> name.substring("assize.".length()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(found).isEqualTo(new TreeSet<>(MAY_IMPORT.keySet()));
  }

  @Test
  void noPackagesImportEachOtherInACircle() {
    slices().matching("assize.(**)").should().beFreeOfCycles().check(CLASSES);
  }

  static Stream<String> libraries() {
    return LIBRARY_IN.keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("libraries")
  void eachLibraryHasItsOnePackage(String library) {
    noClasses()
        .that()
        .resideOutsideOfPackage(LIBRARY_IN.getOrDefault(library, ""))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .check(CLASSES);
  }

  @Test
  void onlyTheCommandLineKnowsTheClock() {
    noClasses()
        .that()
        .resideOutsideOfPackage("assize.cli")
        .should()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.time.Clock")
        .orShould()
        .callMethod(java.time.LocalDate.class, "now")
        .check(CLASSES);
  }
}
