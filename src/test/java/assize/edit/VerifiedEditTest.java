package assize.edit;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.SourceFile;
import assize.yaml.YamlTreeBuilder;
import assize.yaml.YamlValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Any text of names and values is changed, whatever its names mean. */
class VerifiedEditTest {
  private static final Style STYLE = new Style(Set.of("ready"), Set.of("steps"), 2);
  private static final SourceFile SOUP =
      new SourceFile("soup.yaml", "soup: leek  # for two\nsteps:\n  - {do: wash}\n");

  private static YamlValue.Group content(SourceFile file) {
    return YamlTreeBuilder.read(file)
        .value()
        .map(YamlValue::of)
        .flatMap(YamlValue::asGroup)
        .orElseThrow();
  }

  private static YamlValue.Group wanted(TextChange... changes) {
    return TextChange.all(content(SOUP), List.of(changes));
  }

  private static YamlValue group(String name, String text) {
    return new YamlValue.Group(List.of(new YamlValue.Field(name, YamlValue.text(text))));
  }

  @Test
  void writesAsTheStyleSays() {
    YamlValue.Group wanted =
        wanted(
            new TextChange(List.of("soup"), YamlValue.text("pea: dried")),
            new TextChange(List.of("steps"), new YamlValue.Items(List.of(group("do", "no"))), true),
            new TextChange(List.of("ready"), YamlValue.text("no")),
            new TextChange(List.of("pot", "lid"), group("tight", "no")));
    assertThat(VerifiedEdit.edit(SOUP, wanted, STYLE, (text, meant) -> true).map(EditResult::text))
        .contains(
            "soup: 'pea: dried'  # for two\n"
                + "steps:\n  - {do: wash}\n  - {do: 'no'}\n"
                + "ready: no\npot:\n  lid: {tight: 'no'}\n");
  }

  @Test
  void asksWhetherTheChangedTextIsRight() {
    YamlValue.Group wanted = wanted(new TextChange(List.of("soup"), YamlValue.text("pea")));
    List<String> asked = new ArrayList<>();
    Optional<EditResult> refused =
        VerifiedEdit.edit(
            SOUP,
            wanted,
            STYLE,
            (text, meant) -> {
              asked.add(text.path() + ": " + text.text().lines().findFirst().orElse(""));
              assertThat(meant).isEqualTo(wanted);
              return false;
            });
    assertThat(refused).isEmpty();
    assertThat(asked).containsExactly("soup.yaml: soup: pea  # for two");
  }

  @Test
  void nothingIsTakenAway() {
    YamlValue.Group less = new YamlValue.Group(content(SOUP).fields().subList(0, 1));
    assertThat(VerifiedEdit.edit(SOUP, less, STYLE, (text, meant) -> true)).isEmpty();
  }
}
