package assize.judge;

import assize.aspect.Aspect;
import assize.diagnostic.Result;
import assize.judgment.AspectJudgment;
import assize.judgment.Comparison;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.text.SourceFile;
import assize.yaml.RecordReader;
import assize.yaml.RuleSetReader;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Judges what a test writes as a person would. */
final class Judging {
  private Judging() {}

  static RuleSet rules(String yaml) {
    return good(RuleSetReader.parse(List.of(new SourceFile("rules.yaml", yaml))));
  }

  static VehicleRecord vehicle(RuleSet rules, String yaml) {
    return good(RecordReader.parse(new SourceFile("record.yaml", yaml), rules));
  }

  static Judgment judge(String rulesYaml, String recordYaml) {
    RuleSet rules = rules(rulesYaml);
    return Judge.judge(rules, vehicle(rules, recordYaml), Optional.empty());
  }

  static ItemJudgment item(Judgment judgment, String id) {
    return judgment.items().stream()
        .filter(item -> item.item().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** Returns an aspect in the first stretch. */
  static AspectJudgment aspect(Judgment judgment, String item, Aspect aspect) {
    return item(judgment, item).stretches().get(0).aspects().stream()
        .filter(one -> one.rule().aspect() == aspect)
        .findFirst()
        .orElseThrow();
  }

  /** Returns how the vehicle stands to the first position of an item's first aspect. */
  static Comparison comparison(Judgment judgment, String item) {
    return item(judgment, item).stretches().get(0).aspects().get(0).positions().get(0).comparison();
  }

  private static <T> T good(Result<T> read) {
    return read.value()
        .orElseThrow(
            () ->
                new AssertionError(
                    read.diagnostics().stream()
                        .map(it -> it.at() + ": " + it.message())
                        .collect(Collectors.joining("\n"))));
  }
}
