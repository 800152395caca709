package assize.merge;

import static org.assertj.core.api.Assertions.assertThat;

import assize.edit.EditResult;
import assize.edit.ManualEdit;
import assize.text.SourceFile;
import assize.yaml.YamlValue;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts before and after, written out. */
class RecordEditingTest {
  private static final String HEAD = "record: our-x1\nrules: rules.yaml\nvehicle: {name: Ours}\n";

  private static EditResult edit(String before, UnaryOperator<YamlValue.Group> change) {
    return RecordEditing.edit(
            new SourceFile("record.yaml", before),
            Samples.RULES,
            change.apply(Samples.content(before)))
        .orElseThrow();
  }

  private static String changed(String before, String path, String text) {
    EditResult edited =
        edit(before, it -> Samples.with(it, List.of(path.split("/")), YamlValue.text(text)));
    assertThat(edited.byHand()).isEmpty();
    return edited.text();
  }

  @Test
  void anAspectGoesBehindThoseInLines() {
    String before =
        HEAD + "observations:\n  horn-button:\n    finish: nickel  # as found\n  # end\n";
    assertThat(changed(before, "observations/horn-button/note", "Cleaned."))
        .isEqualTo(
            HEAD
                + "observations:\n  horn-button:\n    finish: nickel  # as found\n"
                + "    note: Cleaned.\n  # end\n");
  }

  @Test
  void anAspectGoesBehindThoseInBrackets() {
    String before = HEAD + "observations:\n  horn-button: { finish: nickel }  # as found";
    assertThat(changed(before, "observations/horn-button/note", "Cleaned, dried."))
        .isEqualTo(
            HEAD
                + "observations:\n  horn-button: { finish: nickel, note: 'Cleaned, dried.' }"
                + "  # as found");
  }

  @Test
  void bracketsOverManyLinesKeepTheirRemarks() {
    String before = HEAD + "observations:\n  horn-button: {\n    finish: nickel  # as found\n  }\n";
    assertThat(changed(before, "observations/horn-button/note", "Cleaned."))
        .isEqualTo(
            HEAD
                + "observations:\n  horn-button: {\n    finish: nickel,  # as found\n"
                + "    note: Cleaned.\n  }\n");
    String comma = HEAD + "observations:\n  horn-button: {\n    finish: nickel,  # as found\n  }\n";
    assertThat(changed(comma, "observations/horn-button/note", "Cleaned."))
        .isEqualTo(
            HEAD
                + "observations:\n  horn-button: {\n    finish: nickel,  # as found\n"
                + "    note: Cleaned.,\n  }\n");
  }

  @Test
  void anObservationIsWrittenAsItsNeighborsAre() {
    String brackets = HEAD + "observations:\n    horn-button: {finish: nickel}\n";
    YamlValue.Group lamp = Samples.group("choice", "left", "note", "Seen.");
    assertThat(
            edit(brackets, it -> Samples.with(it, List.of("observations", "rear-lamp"), lamp))
                .text())
        .isEqualTo(brackets + "    rear-lamp: {choice: left, note: Seen.}\n");
    String lines = HEAD + "observations:\r\n    horn-button:\r\n        finish: nickel";
    assertThat(
            edit(lines, it -> Samples.with(it, List.of("observations", "rear-lamp"), lamp)).text())
        .isEqualTo(lines + "\r\n    rear-lamp:\r\n        choice: left\r\n        note: Seen.");
  }

  @Test
  void whatIsMissingOnTheWayIsMade() {
    assertThat(changed(HEAD + "# end\n", "observations/horn-button/finish", "nickel"))
        .isEqualTo(HEAD + "observations:\n  horn-button:\n    finish: nickel\n# end\n");
    assertThat(changed(HEAD + "observations: {}\n", "observations/horn-button/finish", "nickel"))
        .isEqualTo(HEAD + "observations: {horn-button: {finish: nickel}}\n");
  }

  @Test
  void entriesPartedByEmptyLinesStayParted() {
    String before =
        HEAD + "observations:\n\n  horn-button:\n    finish: nickel\n\n  bed:\n    material: ash\n";
    assertThat(changed(before, "observations/rear-lamp/choice", "left"))
        .isEqualTo(before + "\n  rear-lamp:\n    choice: left\n");
  }

  @Test
  void aValueIsChangedInItsPlace() {
    String before = HEAD + "observations:\n  horn-button: {finish: 'nickel' , note: x}  # y\n";
    assertThat(changed(before, "observations/horn-button/finish", "chrome"))
        .isEqualTo(before.replace("'nickel'", "chrome"));
    String note = HEAD + "observations:\n  bed:\n    note: |\n      One.\n      Two.\n\n# end\n";
    assertThat(changed(note, "observations/bed/note", "One: two."))
        .isEqualTo(HEAD + "observations:\n  bed:\n    note: 'One: two.'\n\n# end\n");
  }

  @Test
  void aListGoesOn() {
    String head = HEAD + "evidence: {a: {measurement: rule}, b: {measurement: gauge}}\n";
    YamlValue both = new YamlValue.Items(List.of(YamlValue.text("a"), YamlValue.text("b")));
    List<String> path = List.of("observations", "bed", "evidence");
    String brackets = head + "observations:\n  bed: {evidence: [a]}\n";
    assertThat(edit(brackets, it -> Samples.with(it, path, both)).text())
        .isEqualTo(brackets.replace("[a]", "[a, b]"));
    String lines = head + "observations:\n  bed:\n    evidence:\n    - a  # one\n    # two\n";
    assertThat(edit(lines, it -> Samples.with(it, path, both)).text())
        .isEqualTo(lines.replace("# one\n", "# one\n    - b\n"));
    String one = head + "observations:\n  bed:\n    evidence: a  # one\n";
    assertThat(edit(one, it -> Samples.with(it, path, both)).text())
        .isEqualTo(one.replace(": a ", ": [a, b] "));
  }

  @Test
  void jsonStaysJson() {
    String before =
        "{\"record\": \"our-x1\", \"rules\": \"rules.yaml\", \"vehicle\": {\"name\": \"Ours\"},\n"
            + " \"observations\": {\"bed\": {\"material\": \"ash\"}}}\n";
    assertThat(changed(before, "observations/bed/note", "It\nis \"ash\"."))
        .isEqualTo(before.replace("\"ash\"}", "\"ash\", \"note\": \"It\\nis \\\"ash\\\".\"}"));
  }

  @Test
  void whereNoPlaceIsSafeThePersonIsTold() {
    String odd = HEAD + "observations:\n  ? bed\n  : material: ash\n";
    EditResult edited =
        edit(
            odd,
            it -> Samples.with(it, List.of("observations", "bed", "note"), YamlValue.text("Dry.")));
    assertThat(edited.text()).isEqualTo(odd);
    assertThat(edited.byHand()).hasSize(1);
    ManualEdit told = edited.byHand().get(0);
    assertThat(told.at().line()).isEqualTo(6);
    assertThat(told.write()).isEqualTo("note: Dry.");
    String remarks =
        HEAD
            + "observations:\n  bed:\n    departure:\n      # at last\n      reason: safety\n"
            + "      # and\n      explanation: x\n";
    assertThat(
            edit(
                    remarks,
                    it ->
                        Samples.with(
                            it,
                            List.of("observations", "bed", "departure"),
                            Samples.group("explanation", "y", "reason", "safety")))
                .byHand())
        .hasSize(1);
  }

  @Test
  void whatWouldBeNoRecordIsNotWritten() {
    String before = HEAD + "observations:\n  bed: {material: ash}\n";
    YamlValue.Group wanted =
        Samples.with(
            Samples.content(before), List.of("observations", "bed", "x"), YamlValue.text("y"));
    assertThat(RecordEditing.edit(new SourceFile("r.yaml", before), Samples.RULES, wanted))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "no",
        "Yes",
        "~",
        "null",
        "0510210600",
        "7E4",
        "1e3",
        "2.50",
        "0x1F",
        "1_000",
        "12:30",
        "1934-05-01",
        ".5",
        "a: b",
        "a:",
        "a #b",
        "#a",
        "- a",
        "-",
        "?",
        "? a",
        "*a",
        "&a",
        "!a",
        "|",
        ">",
        "'",
        "\"",
        "%a",
        "@a",
        "`a",
        "it's",
        "say \"it\"",
        "it's \"it\"",
        "a, b",
        "[a]",
        "{a}",
        "a\\b",
        " a",
        "a ",
        "a\tb",
        "a\nb",
        "a\n",
        "a\n b\n\nc",
        "\na",
        "\ud83d\ude9a",
        "é ü 漢字",
        "\u00a0a",
        "a\u2028b",
        "a\u200db",
        "---",
        "...",
        "<<",
        "=",
        "4210",
        "-18.5",
        "x: {y}",
        "a:b",
        "://",
        "''",
        "a#b",
        "on",
        "\u0085"
      })
  void anyTextIsReadAsItWasMeant(String text) {
    for (String bed : List.of("bed: {material: ash}", "bed:\n    material: ash")) {
      String before = HEAD + "observations:\n  horn-button: {finish: nickel}\n  " + bed + "\n";
      // A stamped number may hold nothing that can't be seen.
      List<String> paths =
          text.contains("\u200d")
              ? List.of("bed/note", "rear-lamp/note")
              : List.of("bed/note", "rear-lamp/note", "horn-button/part_number");
      for (String path : paths) {
        String after = changed(before, "observations/" + path, text);
        assertThat(Samples.content(after).at(List.of(("observations/" + path).split("/"))))
            .contains(YamlValue.text(text));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"no", "0510210600", "7E4", "2.50", "a: b", "a #b", "\ud83d\ude9a", "~"})
  void whatOthersWouldMisreadIsQuoted(String text) {
    assertThat(RecordEditing.FLOW.of("part_number", YamlValue.text(text), false))
        .isEqualTo("'" + text + "'");
  }

  @ParameterizedTest
  @ValueSource(strings = {"nickel", "A-41207", "4120", "Cleaned, not plated again.", "5/64 in"})
  void whatIsSafeIsNot(String text) {
    assertThat(RecordEditing.FLOW.of("note", YamlValue.text(text), false)).isEqualTo(text);
  }

  @Test
  void numbersDatesAndYesOrNoStandAsTheyAreMeant() {
    assertThat(RecordEditing.FLOW.of("present", YamlValue.text("no"), true)).isEqualTo("no");
    assertThat(RecordEditing.FLOW.of("lab", YamlValue.text("-18.50"), true)).isEqualTo("-18.50");
    assertThat(RecordEditing.FLOW.of("on", YamlValue.text("2026-10-03"), true))
        .isEqualTo("2026-10-03");
  }
}
