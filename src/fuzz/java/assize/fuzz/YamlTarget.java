package assize.fuzz;

import assize.text.SourceFile;
import assize.yaml.YamlTreeBuilder;

/** YAML into a tree with places. */
public final class YamlTarget {
  private YamlTarget() {}

  /** Tries one input. */
  public static void fuzzerTestOneInput(byte[] data) {
    SourceFile file = new SourceFile("any.yaml", Checks.text(data));
    Checks.result(YamlTreeBuilder.read(file), YamlTreeBuilder.read(file));
  }
}
