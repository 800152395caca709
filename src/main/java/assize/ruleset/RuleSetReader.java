package assize.ruleset;

import assize.aspect.ColorChip;
import assize.aspect.Definition;
import assize.aspect.Finish;
import assize.aspect.Graded;
import assize.aspect.Origin;
import assize.aspect.Vocabulary;
import assize.date.Edtf;
import assize.diagnostic.Accepted;
import assize.diagnostic.Code;
import assize.diagnostic.Result;
import assize.evidence.Source;
import assize.schema.Facts;
import assize.schema.Names;
import assize.schema.Table;
import assize.schema.Type;
import assize.schema.Values;
import assize.text.Fingerprint;
import assize.text.SourceFile;
import assize.text.Span;
import assize.yaml.InputFiles;
import assize.yaml.InsideFolder;
import assize.yaml.Node;
import assize.yaml.Problems;
import assize.yaml.YamlTree;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Reads a rule set from one file or a folder of them. */
public final class RuleSetReader {
  /** Sections of words that do not know their own place. */
  private static final List<String> WORDS =
      List.of("plants", "markets", "equipment", "numbers", "colors", "finishes", "materials");

  private RuleSetReader() {}

  /** The most entries of all files of a rule set. */
  private static final int MOST_ENTRIES = 400_000;

  /** Reads the rule set at a path: a file, or a folder with {@code rules.yaml} in it. */
  public static Result<RuleSet> read(Path fileOrFolder) {
    return read(fileOrFolder, InputFiles.shown(fileOrFolder));
  }

  /**
   * Reads the rule set at a path.
   *
   * @param fileOrFolder a file, or a folder with {@code rules.yaml} and others in it or below
   * @param shown how messages name the path
   */
  public static Result<RuleSet> read(Path fileOrFolder, String shown) {
    Problems problems = new Problems();
    List<InputFiles.Loaded> files = InputFiles.ruleSet(fileOrFolder, shown, problems);
    return files.isEmpty()
        ? Result.failed(problems.all())
        : parse(
            files,
            !problems.hasErrors(),
            Optional.of(new InsideFolder(folderOf(fileOrFolder), InsideFolder.OF_RULE_SET)),
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
    List<InputFiles.Loaded> loaded = files.stream().map(InputFiles.Loaded::of).toList();
    return loaded.isEmpty()
        ? Result.failed(List.of())
        : parse(loaded, true, Optional.empty(), new Problems());
  }

  private static Result<RuleSet> parse(
      List<InputFiles.Loaded> files,
      boolean allLoaded,
      Optional<InsideFolder> folder,
      Problems problems) {
    Values values = new Values(problems);
    Sections sections = new Sections(values);
    boolean complete = allLoaded;
    long entries = 0;
    for (InputFiles.Loaded loaded : files) {
      Optional<Node> root = YamlTree.parse(loaded.file(), problems);
      entries += root.map(RuleSetReader::entries).orElse(0L);
      if (entries > MOST_ENTRIES) {
        problems.add(
            Code.TOO_MANY_ENTRIES,
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
    RuleSetReader.Reading reading =
        new Reading(
            sections, defined(sections, values, complete), values, new ClaimPhotos(folder, values));
    List<Fingerprint> prints = files.stream().map(InputFiles.Loaded::fingerprint).toList();
    Optional<RuleSet> rules = reading.ruleSet(start, prints, complete);
    return new Result<>(rules.filter(it -> !problems.hasErrors()), problems.all());
  }

  /** Counts a tree and all that is in it. */
  private static long entries(Node node) {
    return node.match(
        mapping -> 1 + mapping.entries().stream().mapToLong(it -> entries(it.value())).sum(),
        list -> 1 + list.nodes().stream().mapToLong(RuleSetReader::entries).sum(),
        text -> 1L);
  }

  private static Vocabulary defined(Sections sections, Values values, boolean complete) {
    Vocabulary names = new Vocabulary(complete);
    define(names.finishes, sections.all("finishes"), values);
    define(names.colors, sections.all("colors"), values);
    define(names.materials, sections.all("materials"), values);
    define(names.sources, sections.all("sources"), values);
    define(names.models, sections.all("models"), values);
    define(names.plants, sections.all("plants"), values);
    define(names.markets, sections.all("markets"), values);
    define(names.equipment, sections.all("equipment"), values);
    define(names.numbers, sections.all("numbers"), values);
    define(names.areas, sections.all("areas"), values);
    for (Node.Entry one : sections.all("conditions")) {
      values.checkWord(one.key());
      names.conditions.define(one.name(), Optional.of(one.key().at()));
    }
    return names;
  }

  private static void define(Names names, List<Node.Entry> entries, Values values) {
    for (Node.Entry entry : entries) {
      values.checkId(entry.key());
      ReservedWords.check(entry.key(), values.problems());
      names.define(entry.name(), Optional.of(entry.key().at()));
    }
  }

  /** One reading of the sections, once all names are known. */
  private record Reading(Sections sections, Vocabulary names, Values values, ClaimPhotos photos)
      implements assize.schema.Reading {

    Optional<RuleSet> ruleSet(Span start, List<Fingerprint> prints, boolean complete) {
      Optional<String> id = values.id(head("rule_set", start, complete));
      Optional<String> name = values.name(head("name", start, complete));
      Optional<String> edition = values.name(head("edition", start, complete));
      Optional<Edtf> issued =
          values.parsed(sections.one("issued"), Code.BAD_DATE, "a date", Edtf::parse);
      AreaReader areaReader = new AreaReader(sections, names, values, photos);
      areaReader.nameItems();
      Scale scale =
          Type.group(Scale.TABLE)
              .reader()
              .apply(sections.group("scale"), this)
              .orElse(Scale.usual());
      List<Area> areas = areaReader.areas();
      if (sections.all("areas").isEmpty() && complete) {
        values
            .problems()
            .add(Code.NO_ITEMS, start, "this rule set has no areas", "add `areas:` with items");
      }
      List<Fingerprint> files = new ArrayList<>(prints);
      files.addAll(photos.fingerprints());
      RuleSet rules =
          new RuleSet(
              id.orElse(""),
              name.orElse(""),
              edition.orElse(""),
              issued,
              values.text(sections.one("maker")),
              values.text(sections.one("scope")),
              values.text(sections.one("notes")),
              scale,
              awards(scale.outOf()),
              defined("models", Model.TABLE),
              meanings("plants"),
              meanings("markets"),
              meanings("equipment"),
              defined("numbers", NumberTable.TABLE),
              defined("sources", Source.TABLE),
              defined("colors", ColorChip.TABLE),
              defined("finishes", Finish.TABLE),
              meanings("materials"),
              origins(),
              conditions(),
              areas,
              files,
              accepted(complete),
              new Defined(defined()));
      if (Crowding.isFree(rules, values.problems())) {
        RuleSetChecks.ALL.forEach(it -> it.check(rules, values.problems()));
      }
      return Optional.of(rules);
    }

    private List<Award> awards(long outOf) {
      List<Award> awards = new ArrayList<>();
      for (Node.Entry entry : sections.all("awards")) {
        values.checkId(entry.key());
        Award.Scored in = new Award.Scored(entry.name(), outOf, values);
        Type.group(Award.TABLE).reader().apply(Optional.of(entry), in).ifPresent(awards::add);
      }
      return awards;
    }

    /** Reads what a section defines, each from its own group of names. */
    private <S extends Facts> Map<String, S> defined(String section, Table<Definition, S> table) {
      Map<String, S> defined = new LinkedHashMap<>();
      for (Node.Entry entry : sections.all(section)) {
        Type.group(table)
            .reader()
            .apply(Optional.of(entry), new Definition(entry.name(), names, values))
            .ifPresent(it -> defined.put(entry.name(), it));
      }
      return defined;
    }

    /** Reads names with what they mean: plants, markets, equipment, materials. */
    private Map<String, String> meanings(String section) {
      Map<String, String> meanings = new LinkedHashMap<>();
      for (Node.Entry entry : sections.all(section)) {
        values.name(Optional.of(entry)).ifPresent(it -> meanings.put(entry.name(), it));
      }
      return meanings;
    }

    private Map<Origin, BigFraction> origins() {
      Map<Origin, BigFraction> origins = new LinkedHashMap<>();
      for (Node.Entry entry : sections.all("origins")) {
        Optional<Origin> origin = Graded.ORIGINS.find(entry.key(), values.problems());
        Optional<BigFraction> credit = values.credit(Optional.of(entry));
        origin.ifPresent(it -> credit.ifPresent(share -> origins.put(it, share)));
      }
      return origins;
    }

    private Map<String, BigFraction> conditions() {
      Map<String, BigFraction> conditions = new LinkedHashMap<>();
      for (Node.Entry entry : sections.all("conditions")) {
        values.credit(Optional.of(entry)).ifPresent(it -> conditions.put(entry.name(), it));
      }
      return conditions;
    }

    private List<Accepted> accepted(boolean complete) {
      AcceptedReader reader = new AcceptedReader(AcceptedReader.names(names), complete, values);
      return sections.accepted().stream()
          .flatMap(it -> reader.read(Optional.of(it)).stream())
          .toList();
    }

    private Map<String, Span> defined() {
      Map<String, Span> defined = new HashMap<>();
      for (String section : WORDS) {
        sections.all(section).forEach(it -> defined.put(section + "/" + it.name(), it.key().at()));
      }
      return defined;
    }

    private Optional<Node.Entry> head(String name, Span start, boolean complete) {
      Optional<Node.Entry> entry = sections.one(name);
      if (entry.isEmpty() && complete) {
        values
            .problems()
            .add(
                Code.MISSING_KEY,
                start,
                "this rule set has no `" + name + "`",
                "add `" + name + ":` at the top");
      }
      return entry;
    }
  }
}
