package assize.ruleset;

import assize.aspect.Vocabulary;
import assize.diagnostic.DiagnosticCode;
import assize.diagnostic.Result;
import assize.schema.DefinedNames;
import assize.schema.MappingReader;
import assize.schema.ScalarReader;
import assize.text.FileChecksum;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.BoundedFileReader;
import assize.yaml.ContainedFileResolver;
import assize.yaml.DiagnosticCollector;
import assize.yaml.Node;
import assize.yaml.YamlTreeBuilder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads a rule set from one file or a folder of them. */
public final class RuleSetReader {
  private RuleSetReader() {}

  /** The most entries of all files of a rule set. */
  private static final int MOST_ENTRIES = 400_000;

  /** Reads the rule set at a path: a file, or a folder with {@code rules.yaml} in it. */
  public static Result<RuleSet> read(Path fileOrFolder) {
    return read(fileOrFolder, BoundedFileReader.shown(fileOrFolder));
  }

  /**
   * Reads the rule set at a path.
   *
   * @param fileOrFolder a file, or a folder with {@code rules.yaml} and others in it or below
   * @param shown how messages name the path
   */
  public static Result<RuleSet> read(Path fileOrFolder, String shown) {
    DiagnosticCollector problems = new DiagnosticCollector();
    List<BoundedFileReader.Loaded> files = BoundedFileReader.ruleSet(fileOrFolder, shown, problems);
    return files.isEmpty()
        ? Result.failed(problems.all())
        : parse(
            files,
            !problems.hasErrors(),
            Optional.of(
                new ContainedFileResolver(
                    folderOf(fileOrFolder), ContainedFileResolver.OF_RULE_SET)),
            problems);
  }

  /** Returns the folder that a rule set lies in, and what its claims show in it or below. */
  public static Path folderOf(Path fileOrFolder) {
    Path whole = fileOrFolder.toAbsolutePath();
    Path parent = whole.getParent();
    return parent == null || Files.isDirectory(whole) ? whole : parent;
  }

  /** Reads a rule set from texts, the head first; files that they name are not looked for. */
  public static Result<RuleSet> parse(List<SourceFile> files) {
    List<BoundedFileReader.Loaded> loaded =
        files.stream().map(BoundedFileReader.Loaded::of).toList();
    return loaded.isEmpty()
        ? Result.failed(List.of())
        : parse(loaded, true, Optional.empty(), new DiagnosticCollector());
  }

  private static Result<RuleSet> parse(
      List<BoundedFileReader.Loaded> files,
      boolean allLoaded,
      Optional<ContainedFileResolver> folder,
      DiagnosticCollector problems) {
    ScalarReader values = new ScalarReader(problems);
    RuleSetFileMerger sections = new RuleSetFileMerger(values);
    boolean complete = allLoaded;
    long entries = 0;
    for (BoundedFileReader.Loaded loaded : files) {
      Optional<Node> root = YamlTreeBuilder.parse(loaded.file(), problems);
      entries += root.map(RuleSetReader::entries).orElse(0L);
      if (entries > MOST_ENTRIES) {
        problems.add(
            DiagnosticCode.TOO_MANY_ENTRIES,
            loaded.file().span(0, 0),
            "the files of a rule set may have at most "
                + MOST_ENTRIES
                + " entries together; with this file they have more");
        return Result.failed(problems.all());
      }
      root.ifPresent(it -> sections.add(it, loaded.file().span(0, 0)));
      complete &= root.isPresent();
    }
    if (!Crowding.isFree(sections, problems)) {
      return Result.failed(problems.all());
    }
    Span start = files.get(0).file().span(0, 0);
    List<FileChecksum> prints = files.stream().map(BoundedFileReader.Loaded::checksum).toList();
    ClaimPhotos photos = new ClaimPhotos(folder, values);
    Vocabulary names = defined(sections, values, complete);
    AreaReader areas = new AreaReader(sections, names, values, photos);
    areas.nameItems();
    Scale scale = RuleSet.scale(sections.group(RuleSet.SCALE.name()), () -> values);
    RuleSetReading reading =
        new RuleSetReading(sections, names, values, scale, areas, photos, prints, complete);
    MappingReader fields = values.fields(sections.joined(start), RuleSet.TABLE.block(), start);
    RuleSet rules = RuleSet.TABLE.read(fields, reading, start).orElseThrow();
    if (Crowding.isFree(rules, problems)) {
      RuleSetChecks.ALL.forEach(it -> it.check(rules, problems));
    }
    return new Result<>(Optional.of(rules).filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Counts a tree and all that is in it. */
  private static long entries(Node node) {
    return node.match(
        mapping -> 1 + mapping.entries().stream().mapToLong(it -> entries(it.value())).sum(),
        list -> 1 + list.nodes().stream().mapToLong(RuleSetReader::entries).sum(),
        text -> 1L);
  }

  private static Vocabulary defined(
      RuleSetFileMerger sections, ScalarReader values, boolean complete) {
    Vocabulary names = new Vocabulary(complete);
    define(names.finishes, sections.all(RuleSet.FINISHES), values);
    define(names.colors, sections.all(RuleSet.COLORS), values);
    define(names.materials, sections.all(RuleSet.MATERIALS), values);
    define(names.sources, sections.all(RuleSet.SOURCES), values);
    define(names.models, sections.all(RuleSet.MODELS), values);
    define(names.plants, sections.all(RuleSet.PLANTS), values);
    define(names.markets, sections.all(RuleSet.MARKETS), values);
    define(names.equipment, sections.all(RuleSet.EQUIPMENT), values);
    define(names.numbers, sections.all(RuleSet.NUMBER_TABLES), values);
    define(names.areas, sections.all(RuleSet.AREAS), values);
    for (Node.Entry one : sections.all(RuleSet.CONDITIONS)) {
      values.checkWord(one.key());
      names.conditions.define(one.name(), Optional.of(one.key().at()));
    }
    return names;
  }

  private static void define(DefinedNames names, List<Node.Entry> entries, ScalarReader values) {
    for (Node.Entry entry : entries) {
      values.checkId(entry.key());
      ReservedWords.check(entry.key(), values.problems());
      names.define(entry.name(), Optional.of(entry.key().at()));
    }
  }
}
