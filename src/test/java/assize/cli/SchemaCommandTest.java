package assize.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaCommandTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void writesBothBesideTheFilesAndSaysWhatToPutOnTop() throws IOException {
    Path below = folder.resolve("standards");
    CommandResult ran = CommandResult.of("schema", below);
    assertThat(ran.exit()).isZero();
    assertThat(below.resolve("assize-record.json"))
        .hasSameTextualContentAs(Path.of("docs/schema/record.json"));
    assertThat(below.resolve("assize-rule-set.json"))
        .hasSameTextualContentAs(Path.of("docs/schema/rule-set.json"));
    assertThat(ran.out())
        .contains("# yaml-language-server: $schema=assize-record.json")
        .contains("# yaml-language-server: $schema=assize-rule-set.json");
    assertThat(CommandResult.of("schema", below)).isEqualTo(ran);
  }

  @Test
  void replacesASchemaOfAnotherEditionAndNothingElse() throws IOException {
    assertThat(CommandResult.of("schema", folder).exit()).isZero();
    Path record = folder.resolve("assize-record.json");
    String whole = Files.readString(record);
    Files.writeString(record, whole.replace("\"market\"", "\"markt\""));
    assertThat(CommandResult.of("schema", folder).exit()).isZero();
    assertThat(record).hasContent(whole);
    Files.writeString(record, "{\"mine\": true}");
    CommandResult refused = CommandResult.of("schema", folder);
    assertThat(refused.exit()).isEqualTo(1);
    assertThat(refused.err()).contains("assize-record.json is there already and is no schema");
    assertThat(record).hasContent("{\"mine\": true}");
  }

  @Test
  void leadsAFileToTheNearestSchema() throws IOException {
    Path deep = Files.createDirectories(folder.resolve("cars/mine"));
    assertThat(Modeline.of(deep.resolve("x.yaml"), Modeline.RECORD)).isEmpty();
    assertThat(CommandResult.of("schema", folder).exit()).isZero();
    assertThat(Modeline.of(deep.resolve("x.yaml"), Modeline.RECORD))
        .contains("# yaml-language-server: $schema=../../assize-record.json");
    assertThat(CommandResult.of("schema", deep).exit()).isZero();
    assertThat(Modeline.of(deep.resolve("x.yaml"), Modeline.RECORD))
        .contains("# yaml-language-server: $schema=assize-record.json");
  }
}
