package assize.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The YAML in a page of the documentation. */
final class MarkdownBlocks {
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```yaml\\n(.*?)^```");

  private MarkdownBlocks() {}

  /**
   * A block.
   *
   * @param page the page's path
   * @param line the line of the page in which it begins
   */
  record Block(String page, int line, String text) {
    boolean hasKey(String key) {
      return Pattern.compile("(?m)^" + Pattern.quote(key) + ":").matcher(text).find();
    }

    @Override
    public String toString() {
      return page + ":" + line;
    }
  }

  static List<Block> of(String page) throws IOException {
    String text = Files.readString(Path.of(page));
    List<Block> blocks = new ArrayList<>();
    Matcher matcher = BLOCK.matcher(text);
    while (matcher.find()) {
      int line = (int) text.substring(0, matcher.start(1)).lines().count() + 1;
      blocks.add(new Block(page, line, matcher.group(1)));
    }
    return blocks;
  }

  /** Returns the pieces of a file, each beginning with a name that is not indented. */
  static List<String> pieces(String text) {
    return List.of(text.split("(?m)(?=^[a-z_]+:)"));
  }
}
