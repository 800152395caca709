package assize.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Goes through what is done most, on the demonstration, so that Java can keep the classes that it
 * took for the next start. The launcher runs it, and throws away what it writes.
 */
final class CdsTrainingRun {
  private CdsTrainingRun() {}

  /** Takes the folder to do it in, which does not exist yet. */
  public static void main(String[] arguments) {
    Path folder = Path.of(arguments[0]);
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    Terminal terminal = new Terminal(nowhere, nowhere, false);
    String record = folder.resolve("l45-4388.yaml").toString();
    String rules = folder.resolve("quillhurst-q.yaml").toString();
    String out = folder.resolve("out").toString();
    Main.run(terminal, "demo", folder.toString());
    Main.run(terminal, "judge", record, "--out", out, "--json", out + "/l45.json");
    Main.run(terminal, "judge", record, "--out", out, "--redact");
    Main.run(terminal, "check", record, rules);
    Main.run(terminal, "sheet", record, "--out", out + "/sheet.html");
    Main.run(terminal, "handbook", rules, "--out", out + "/handbook.html");
    Main.run(terminal, "dossier", record, "--out", out);
    Main.run(terminal, "date", "1934-05~");
    Main.run(terminal, "color", "50,0,0", "51,1,1");
    Main.run(terminal, "--help");
  }
}
