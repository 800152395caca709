package assize.newrecord;

import static org.assertj.core.api.Assertions.assertThat;

import assize.date.Edtf;
import assize.diagnostic.Result;
import assize.record.Built;
import assize.record.RecordReader;
import assize.record.VehicleRecord;
import assize.ruleset.RuleSet;
import assize.ruleset.RuleSetReader;
import assize.text.SourceFile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A record's head says the same when it is read again. */
class RecordHeadTest {
  private static RuleSet rules(String edition) {
    String text =
        "rule_set: x\nname: X\nedition: '"
            + edition.replace("'", "''")
            + "'\nmodels: {X1: {name: X1, production: 1932/1936}}\n"
            + "areas: {a: {items: {i: {title: I, points: 1, expect: {present: yes}}}}}\n";
    return RuleSetReader.parse(List.of(new SourceFile("x.yaml", text))).value().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"3", "03", "1.10", "yes", "off", "3:45", "2026-03", "a: b", "it's", "\"3\"", "#3"})
  void readsBackAsItWasWritten(String text) {
    RuleSet rules = rules(text);
    VehicleRecord own =
        VehicleRecord.of("our-x1", "x.yaml", text)
            .with(VehicleRecord.EDITION, Optional.of(text))
            .with(VehicleRecord.BUILT, Edtf.parse("1934-05").toOptional().map(Built::on));
    Result<VehicleRecord> read =
        RecordReader.parse(new SourceFile("our-x1.yaml", RecordHead.of(own)), rules);
    assertThat(read.diagnostics()).isEmpty();
    assertThat(read.value()).contains(own);
  }
}
