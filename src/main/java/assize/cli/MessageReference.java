package assize.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the page on messages says of each; the page travels with the program. */
final class MessageReference {
  private static final String PAGE = "messages.md";
  private static final int WIDTH = 90;
  private static final String ENTRY = "### ";
  private static final String CHAPTER = "## ";
  private static final String FENCE = "```";
  private static final Pattern LINK = Pattern.compile("\\[([^\\]]+)]\\(([^)]+)\\)");

  private final Map<String, List<String>> entries;

  private MessageReference(Map<String, List<String>> entries) {
    this.entries = entries;
  }

  /** Reads the page that travels with the program. */
  static MessageReference read() {
    try (InputStream in = MessageReference.class.getResourceAsStream(PAGE)) {
      byte[] bytes = Objects.requireNonNull(in, PAGE).readAllBytes();
      return of(new String(bytes, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static MessageReference of(String page) {
    Map<String, List<String>> entries = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (String line : page.lines().toList()) {
      if (line.startsWith(ENTRY)) {
        lines = new ArrayList<>();
        entries.put(line.substring(ENTRY.length()), lines);
      } else if (line.startsWith(CHAPTER)) {
        lines = new ArrayList<>();
      } else {
        lines.add(line);
      }
    }
    return new MessageReference(entries);
  }

  /** Returns the codes of all messages, in the order of the page. */
  Set<String> codes() {
    return entries.keySet();
  }

  /** Returns what the page says of a message, laid out for a terminal. */
  Optional<String> text(String code) {
    return Optional.ofNullable(entries.get(code)).map(MessageReference::laidOut);
  }

  /** Joins the lines of each paragraph and breaks them anew; examples stay as they are. */
  private static String laidOut(List<String> lines) {
    List<String> blocks = new ArrayList<>();
    List<String> block = new ArrayList<>();
    boolean isExample = false;
    for (String line : lines) {
      boolean isFence = line.startsWith(FENCE);
      if (isFence || line.isBlank() && !isExample) {
        if (!block.isEmpty()) {
          blocks.add(isExample ? indented(block) : broken(String.join(" ", block)));
        }
        block = new ArrayList<>();
        isExample = isFence != isExample;
      } else {
        block.add(line);
      }
    }
    if (!block.isEmpty()) {
      blocks.add(broken(String.join(" ", block)));
    }
    return String.join("\n\n", blocks);
  }

  private static String indented(List<String> lines) {
    return String.join("\n", lines.stream().map(it -> ("  " + it).stripTrailing()).toList());
  }

  private static String broken(String paragraph) {
    StringBuilder text = new StringBuilder();
    int column = 0;
    for (String word :
        LINK.matcher(paragraph).replaceAll(it -> link(it.group(1), it.group(2))).split(" ")) {
      if (column > 0 && column + 1 + word.length() > WIDTH) {
        text.append('\n');
        column = 0;
      } else if (column > 0) {
        text.append(' ');
        column++;
      }
      text.append(word);
      column += word.length();
    }
    return text.toString();
  }

  /** Returns a link as it is read where nobody can follow it. */
  private static String link(String words, String page) {
    String file = page.replaceFirst("#.*", "");
    return Matcher.quoteReplacement(
        words.equals(file) ? "docs/" + file : words + " (docs/" + file + ")");
  }
}
