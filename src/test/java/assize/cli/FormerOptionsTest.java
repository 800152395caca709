package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every former name is answered with the one of today, and there is such a one. */
class FormerOptionsTest {
  /** What a command takes besides options, so that nothing else is wrong with the line. */
  private static final Map<String, List<String>> VALUES =
      Map.of("merge", List.of("a.yaml", "b.yaml"), "compare", List.of("a.yaml", "b.yaml"));

  private static final Pattern QUOTED = Pattern.compile("\"([a-z]+)\"");

  private static CommandResult wrong(String command, List<String> more) {
    List<Object> words = new ArrayList<>(List.of(command));
    words.addAll(more);
    CommandResult ran = CommandResult.of(words.toArray());
    assertThat(ran.exit()).as("%s", words).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    return ran;
  }

  private static CommandResult help(String command) {
    CommandResult ran = CommandResult.of(command, "--help");
    assertThat(ran.exit()).as(command).isZero();
    return ran;
  }

  @Test
  void eachIsAnsweredWithTheNameOfToday() {
    FormerOptions.COMMANDS.forEach(
        (name, answer) -> {
          assertThat(wrong(name, List.of("x.yaml", "--json")).err())
              .isEqualTo(
                  "there is no command \"" + name + "\"; " + answer + "\nTry: assize --help\n");
          assertThat(QUOTED.matcher(answer).results().map(it -> it.group(1)).toList())
              .isNotEmpty()
              .allSatisfy(FormerOptionsTest::help);
        });
    for (FormerOptions.Former former : FormerOptions.OPTIONS) {
      for (String command : former.commands()) {
        List<String> words =
            Stream.concat(
                    VALUES.getOrDefault(command, List.of("x.yaml")).stream(),
                    Stream.of(former.name().split(" ")))
                .toList();
        assertThat(wrong(command, words).err())
            .isEqualTo(former.answer() + "\nTry: assize " + command + " --help\n");
        String now = former.now().split(" ")[0];
        if (now.startsWith("--")) {
          assertThat(help(command).out()).contains(" " + now);
        } else {
          help(now);
        }
      }
    }
  }

  @Test
  void theTableIsThatOfTheChanges() {
    assertThat(FormerOptions.COMMANDS.get("lint")).isEqualTo("it is called \"check\" now");
    assertThat(wrong("judge", List.of("x.yaml", "--share")).err())
        .startsWith("--share is called --redact now\n");
    assertThat(wrong("judge", List.of("x.yaml", "--photos=beside")).err())
        .startsWith("--photos beside is called --photos folder now\n");
    assertThat(wrong("sheet", List.of("x.yaml", "--share")).err())
        .startsWith("there is no option \"--share\"");
  }
}
