package assize.judge;

import assize.aspect.Aspect;
import assize.aspect.Comparison;
import assize.aspect.Place;
import assize.aspect.Verdict;
import assize.diagnostic.Result;
import assize.judgment.AspectJudgment;
import assize.judgment.ItemJudgment;
import assize.judgment.Judgment;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;

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

  /** What holding a finding against a position gave, in words too. */
  record Compared(Verdict verdict, BigFraction credit, String words) {}

  /** Returns how the vehicle stands to the first position of an item's first aspect. */
  static Compared comparison(Judgment judgment, String item) {
    AspectJudgment aspect = item(judgment, item).stretches().get(0).aspects().get(0);
    Comparison comparison = aspect.positions().get(0).comparison();
    return new Compared(comparison.verdict(), comparison.credit(), words(judgment, item, aspect));
  }

  /** Returns why an aspect's first position earns what it earns. */
  static String words(Judgment judgment, String item, AspectJudgment aspect) {
    Place at = new Place(judgment.rules(), item, aspect.rule().aspect());
    return aspect.positions().get(0).comparison().reason().words(at);
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
