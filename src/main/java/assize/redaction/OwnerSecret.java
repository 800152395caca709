package assize.redaction;

import assize.text.Parsed;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the keys of one record's numbers are made from: 32 random bytes that the owner keeps and
 * shows to nobody, the record's name when it was made, and the day. The same secret gives the same
 * keys each time.
 */
public final class OwnerSecret {
  private static final int BYTES = 32;
  private static final String LINE = "secret:";
  private static final String RECORD = "record:";
  private static final String MADE = "made:";
  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9-]*");

  private final byte[] bytes;
  private final Optional<String> record;
  private final Optional<LocalDate> made;

  private OwnerSecret(byte[] bytes, Optional<String> record, Optional<LocalDate> made) {
    this.bytes = bytes.clone();
    this.record = record;
    this.made = made;
  }

  /**
   * Makes a new one that nobody can guess.
   *
   * @param record the record's short name
   * @param made the day
   */
  public static OwnerSecret random(String record, LocalDate made) {
    byte[] bytes = new byte[BYTES];
    new SecureRandom().nextBytes(bytes);
    return new OwnerSecret(bytes, Optional.of(record), Optional.of(made));
  }

  /**
   * Reads the file that {@link #file} wrote. What else it says does not count; files of the first
   * version have neither record nor day.
   */
  public static Parsed<OwnerSecret> read(String file) {
    if (file.isBlank()) {
      return bad("it is empty");
    }
    List<String> words = lines(file, LINE);
    if (words.size() != 1) {
      return bad(
          words.isEmpty()
              ? "it has no line that begins with `secret:`"
              : "it has more than one line that begins with `secret:`");
    }
    return record(file)
        .then(
            record ->
                made(file)
                    .then(
                        made ->
                            ProofCode.read(words.get(0))
                                .map(bytes -> new OwnerSecret(bytes, record, made))));
  }

  private static Parsed<Optional<String>> record(String file) {
    List<String> said = lines(file, RECORD);
    return said.size() > 1 || said.stream().anyMatch(it -> !NAME.matcher(it).matches())
        ? bad("behind `record:` it needs one record's short name")
        : Parsed.ok(said.stream().findFirst());
  }

  private static Parsed<Optional<LocalDate>> made(String file) {
    List<LocalDate> days = new ArrayList<>();
    List<String> said = lines(file, MADE);
    for (String day : said) {
      try {
        days.add(LocalDate.parse(day));
      } catch (DateTimeParseException e) {
        return bad("behind `made:` it needs a day, as in 2026-07-14");
      }
    }
    return said.size() > 1
        ? bad("it has more than one line that begins with `made:`")
        : Parsed.ok(days.stream().findFirst());
  }

  private static List<String> lines(String file, String name) {
    return file.lines()
        .map(String::strip)
        .filter(it -> it.toLowerCase(Locale.ROOT).startsWith(name))
        .map(it -> it.substring(name.length()).strip())
        .toList();
  }

  private static <T> Parsed<T> bad(String reason) {
    return Parsed.bad(reason, 0, 0);
  }

  /** Returns the short name that its record had when it was made; the first version kept none. */
  public Optional<String> record() {
    return record;
  }

  /** Returns the day on which it was made; the first version kept none. */
  public Optional<LocalDate> made() {
    return made;
  }

  /**
   * Returns five letters and digits that tell this secret from another, and nothing of what it
   * holds.
   */
  public String mark() {
    return ProofCode.of(Hmac.of(bytes, "mark")).substring(0, ProofCode.GROUP);
  }

  /**
   * Returns the key of one number. It stays the same when the record is named otherwise.
   *
   * @param now the record's short name, for a secret that does not say for which it was made
   */
  public ProofKey key(String now, String table) {
    return new ProofKey(Hmac.of(bytes, "number key\n" + record.orElse(now) + "\n" + table));
  }

  /**
   * Returns the text of the file that keeps it.
   *
   * @param name the name of the record's file
   */
  public String file(String name) {
    List<String> lines =
        new ArrayList<>(
            List.of(
                "# Keep this file, and give it to nobody.",
                "#",
                "# It belongs to "
                    + name.replaceAll("\\p{Cntrl}", " ")
                    + ". In the copies for others",
                "# (assize judge --redact) numbers are masked, and each has a hash that only",
                "# this secret can make. With it you can prove later which number was meant:",
                "# assize prove says how. Without it nobody can, you neither. Whoever has it can find",
                "# out the masked numbers. If somebody else has had it, make a new one:",
                "# assize prove --new-secret."));
    record.ifPresent(it -> lines.add(RECORD + " " + it));
    made.ifPresent(it -> lines.add(MADE + " " + it));
    lines.add(LINE + " " + ProofCode.of(bytes));
    return String.join("\n", lines) + "\n";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OwnerSecret that && Arrays.equals(bytes, that.bytes);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bytes);
  }
}
