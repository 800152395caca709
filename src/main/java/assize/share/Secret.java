package assize.share;

import assize.text.Parsed;
import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;

/**
 * What the keys of one record's numbers are made from: 32 random bytes that the owner keeps and
 * shows to nobody. The same secret gives the same keys each time.
 */
public final class Secret {
  private static final int BYTES = 32;
  private static final String LINE = "secret:";

  private final byte[] bytes;

  private Secret(byte[] bytes) {
    this.bytes = bytes.clone();
  }

  /** Makes a new one that nobody can guess. */
  public static Secret random() {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return new Secret(bytes);
  }

  /** Reads the file that {@link #file} wrote; what it says around the secret does not count. */
  public static Parsed<Secret> read(String file) {
    List<String> lines =
        file.lines()
            .map(String::strip)
            .filter(it -> it.toLowerCase(Locale.ROOT).startsWith(LINE))
            .toList();
    if (lines.size() != 1) {
      return Parsed.bad(
          lines.isEmpty()
              ? "it has no line that begins with `secret:`"
              : "it has more than one line that begins with `secret:`",
          0,
          0);
    }
    return KeyWords.read(lines.get(0).substring(LINE.length())).map(Secret::new);
  }

  /** Returns the key of one number of one record. */
  public Key key(String record, String table) {
    return new Key(Hmac.of(bytes, "number key\n" + record + "\n" + table));
  }

  /**
   * Returns the text of the file that keeps it.
   *
   * @param record the name of the record's file
   */
  public String file(String record) {
    return String.join(
        "\n",
        "# Keep this file, and give it to nobody.",
        "#",
        "# It belongs to " + record.replaceAll("\\p{Cntrl}", " ") + ". In the copies for others",
        "# (assize judge --share) numbers are masked, and each has a fingerprint that only",
        "# this secret can make. With it you can prove later which number was meant:",
        "# assize vouch says how. Without it nobody can, you neither. Whoever has it can find",
        "# out the masked numbers.",
        LINE + " " + KeyWords.of(bytes),
        "");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Secret that && java.util.Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return java.util.Arrays.hashCode(bytes);
  }
}
