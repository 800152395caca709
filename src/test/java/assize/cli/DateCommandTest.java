package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tools.jackson.databind.JsonNode;

class DateCommandTest {
  @ParameterizedTest
  @CsvFileSource(resources = "dates.csv", useHeadersInDisplayName = true)
  void coversTheDaysOfThePublishedExamples(String date, String first, String last) {
    JsonNode said = CommandResult.of("date", date, "--json").json();
    assertThat(said.get("first").stringValue("null")).isEqualTo(first);
    assertThat(said.get("last").stringValue("null")).isEqualTo(last);
    assertThat(said.get("open_start").booleanValue()).isEqualTo(date.startsWith("../"));
    assertThat(said.get("open_end").booleanValue()).isEqualTo(date.endsWith("/.."));
  }

  /** Strings that the Library of Congress specification of 4 February 2019 rules out. */
  @Test
  void refusesWhatTheSpecificationRulesOut() {
    for (String wrong : List.of("1985-4-12", "1985-13", "1985-04-31", "12345", "2004/1999", "")) {
      CommandResult ran = CommandResult.of("date", wrong, "--json");
      assertThat(ran.exit()).as(wrong).isEqualTo(1);
      assertThat(ran.json().get("error").stringValue()).isNotBlank();
      assertThat(ran.err()).isEmpty();
    }
  }

  @Test
  void answersOneObjectALineAndABadOneInItsPlace() {
    CommandResult ran =
        CommandResult.of("date", "1934-05-07", "soon", "1934~", "1934-06?", "--json");
    assertThat(ran.exit()).isEqualTo(1);
    List<JsonNode> lines = ran.jsonLines();
    assertThat(lines).hasSize(4);
    assertThat(lines.get(0).propertyNames())
        .containsExactly("first", "last", "open_start", "open_end", "uncertain", "approximate");
    assertThat(lines.get(1).propertyNames()).containsExactly("error");
    assertThat(lines.get(2).get("approximate").booleanValue()).isTrue();
    assertThat(lines.get(2).get("uncertain").booleanValue()).isFalse();
    assertThat(lines.get(3).get("uncertain").booleanValue()).isTrue();
  }

  @Test
  void keepsResultsAndMessagesApart() {
    CommandResult ran = CommandResult.of("date", "1934-05", "soon");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).isEqualTo("1934-05: May 1934\n");
    assertThat(ran.err()).startsWith("soon: ").hasLineCount(1);
  }

  @Test
  void takesAYearBeforeTheFirstForADateAndNotForAnOption() {
    // Level 1 of the specification: '-1985'
    CommandResult ran = CommandResult.of("date", "-1985-04", "--json", "1934", "-1985");
    assertThat(ran.exit()).as(ran.err()).isZero();
    assertThat(ran.jsonLines().stream().map(it -> it.get("first").stringValue()))
        .containsExactly("-1985-04-01", "1934-01-01", "-1985-01-01");
  }

  @Test
  void readsNoFileInPlaceOfADate() {
    CommandResult ran = CommandResult.of("date", "@src/test/resources/assize/cli/dates.csv");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.err()).startsWith("@src/");
  }

  @Test
  void showsWhatWouldSteerTheTerminal() {
    assertThat(CommandResult.of("date", "\u001b[31m").err())
        .contains("<U+001B>")
        .doesNotContain("\u001b");
  }
}
