package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class NumberCommandTest {
  private Path rules = Path.of("");

  @BeforeEach
  void lay(@TempDir Path folder) {
    rules = CommandBench.in(folder).at("rules.yaml");
  }

  @Test
  void datesEachNumberByTheTableThatItFits() {
    CommandResult ran = CommandResult.of("number", rules, "X1-150", "E50", "--json");
    assertThat(ran.exit()).isZero();
    List<JsonNode> lines = ran.jsonLines();
    assertThat(lines.get(0).propertyNames()).contains("first", "last", "likely");
    assertThat(lines.get(0).get("first").stringValue()).isEqualTo("1934-01-01");
    assertThat(lines.get(0).get("last").stringValue()).isEqualTo("1934-02-01");
    // halfway through the 100 numbers, so halfway from 1 January to 1 February
    assertThat(lines.get(0).get("likely").stringValue()).isBetween("1934-01-16", "1934-01-17");
    assertThat(lines.get(1).get("last").stringValue()).isEqualTo("1934-12-31");
  }

  @Test
  void answersABadOneInItsPlace() {
    CommandResult ran =
        CommandResult.of("number", "--json", rules, "X1-999", "nonsense", "X1-255", "X1-200");
    assertThat(ran.exit()).isEqualTo(1);
    List<JsonNode> lines = ran.jsonLines();
    assertThat(lines.subList(0, 3))
        .allSatisfy(line -> assertThat(line.propertyNames()).containsExactly("error"));
    assertThat(lines.get(2).get("error").stringValue()).contains("show vehicles");
    assertThat(lines.get(3).get("first").stringValue()).isEqualTo("1934-02-01");
  }

  @Test
  void keepsResultsAndMessagesApart() {
    CommandResult ran = CommandResult.of("number", rules, "X1-150", "X1-999");
    assertThat(ran.exit()).isEqualTo(1);
    assertThat(ran.out()).startsWith("X1-150: Chassis number, ").hasLineCount(1);
    assertThat(ran.err()).isEqualTo("X1-999: outside the numbers that the table covers\n");
  }

  @Test
  void looksInOneTableOnly() {
    assertThat(CommandResult.of("number", rules, "E50", "--table", "engine").exit()).isZero();
    assertThat(CommandResult.of("number", rules, "E50", "--table", "chassis").exit()).isEqualTo(1);
    CommandResult near = CommandResult.of("number", rules, "E50", "--table", "chasis");
    assertThat(near.exit()).isEqualTo(1);
    assertThat(near.err()).contains("did you mean \"chassis\"?");
  }
}
