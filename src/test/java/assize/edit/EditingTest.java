package assize.edit;

import static org.assertj.core.api.Assertions.assertThat;

import assize.text.SourceFile;
import assize.yaml.Content;
import assize.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Any text of names and values is changed, whatever its names mean. */
class EditingTest {
  private static final Style STYLE = new Style(Set.of("ready"), Set.of("steps"), 2);
  private static final SourceFile SOUP =
      new SourceFile("soup.yaml", "soup: leek  # for two\nsteps:\n  - {do: wash}\n");

  private static Content.Group content(SourceFile file) {
    return YamlTree.read(file).value().map(Content::of).flatMap(Content::asGroup).orElseThrow();
  }

  private static Content.Group wanted(Change... changes) {
    return Change.all(content(SOUP), List.of(changes));
  }

  private static Content group(String name, String text) {
    return new Content.Group(List.of(new Content.Field(name, Content.text(text))));
  }

  @Test
  void writesAsTheStyleSays() {
    Content.Group wanted =
        wanted(
            new Change(List.of("soup"), Content.text("pea: dried")),
            new Change(List.of("steps"), new Content.Items(List.of(group("do", "no"))), true),
            new Change(List.of("ready"), Content.text("no")),
            new Change(List.of("pot", "lid"), group("tight", "no")));
    assertThat(Editing.edit(SOUP, wanted, STYLE, (text, meant) -> true).map(Edited::text))
        .contains(
            "soup: 'pea: dried'  # for two\n"
                + "steps:\n  - {do: wash}\n  - {do: 'no'}\n"
                + "ready: no\npot:\n  lid: {tight: 'no'}\n");
  }

  @Test
  void asksWhetherTheChangedTextIsRight() {
    Content.Group wanted = wanted(new Change(List.of("soup"), Content.text("pea")));
    List<String> asked = new ArrayList<>();
    Optional<Edited> refused =
        Editing.edit(
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
    Content.Group less = new Content.Group(content(SOUP).fields().subList(0, 1));
    assertThat(Editing.edit(SOUP, less, STYLE, (text, meant) -> true)).isEmpty();
  }
}
