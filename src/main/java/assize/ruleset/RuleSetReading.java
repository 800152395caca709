package assize.ruleset;

import assize.aspect.Definition;
import assize.aspect.Vocabulary;
import assize.diagnostic.AcceptedWarning;
import assize.diagnostic.DiagnosticCode;
import assize.schema.Field;
import assize.schema.MappingReader;
import assize.schema.Reading;
import assize.schema.ScalarReader;
import assize.text.FileChecksum;
import assize.text.Span;
import assize.yaml.Node;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What reading a rule set needs, once all its names are known.
 *
 * @param scale how its points become a score, which its awards go by
 * @param files those it is read from
 * @param complete whether all of them could be read
 */
record RuleSetReading(
    RuleSetFileMerger sections,
    Vocabulary names,
    ScalarReader values,
    Scale scale,
    AreaReader areas,
    ClaimPhotos photos,
    List<FileChecksum> files,
    boolean complete)
    implements Reading {
  /** Sections of words that do not know their own place. */
  private static final List<Field<?, ?>> WORDS =
      List.of(
          RuleSet.PLANTS,
          RuleSet.MARKETS,
          RuleSet.EQUIPMENT,
          RuleSet.NUMBER_TABLES,
          RuleSet.COLORS,
          RuleSet.FINISHES,
          RuleSet.MATERIALS);

  Definition definition(Node.Entry entry) {
    return new Definition(entry.name(), names, values);
  }

  List<Area> areas(MappingReader fields) {
    if (fields.get(RuleSet.AREAS.name()).isEmpty() && complete) {
      values
          .problems()
          .add(
              DiagnosticCode.NO_ITEMS,
              fields.at(),
              "this rule set has no areas",
              "add `areas:` with items");
    }
    return List.copyOf(areas.areas());
  }

  List<AcceptedWarning> accepted() {
    AcceptedReader reader = new AcceptedReader(AcceptedReader.names(names), complete, values);
    return sections.accepted().stream()
        .flatMap(it -> reader.read(Optional.of(it)).stream())
        .toList();
  }

  /** Returns the files it is read from and those that its claims show. */
  List<FileChecksum> allFiles() {
    List<FileChecksum> all = new ArrayList<>(files);
    all.addAll(photos.checksums());
    return List.copyOf(all);
  }

  DefinitionLocations defined() {
    Map<String, Span> defined = new HashMap<>();
    for (Field<?, ?> section : WORDS) {
      for (Node.Entry one : sections.all(section)) {
        defined.put(section.name() + "/" + one.name(), one.key().at());
      }
    }
    return new DefinitionLocations(defined);
  }
}
