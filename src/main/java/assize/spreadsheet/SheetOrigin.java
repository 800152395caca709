package assize.spreadsheet;

import assize.ruleset.RuleSet;
import assize.text.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a table was made for; it stands as the heading of the table's last column.
 *
 * @param ruleSet the name of the rule set that records use
 * @param edition its edition
 * @param sha256 what tells whether it is still the same, 64 hexadecimal digits
 * @param record the name of the record; empty for a table made for no record
 */
public record SheetOrigin(String ruleSet, String edition, String sha256, Optional<String> record) {
  private static final Pattern FORM =
      Pattern.compile(
          "(?i)made for rule set (\\S+), edition (.{1,200}), sha-256 ([0-9a-f]{64})(?:, record"
              + " (\\S+))?");

  /** Reads a heading; empty where it says nothing of the kind. */
  static Optional<SheetOrigin> of(String heading) {
    Matcher matcher = FORM.matcher(heading.strip());
    return matcher.matches()
        ? Optional.of(
            new SheetOrigin(
                matcher.group(1),
                matcher.group(2),
                matcher.group(3),
                Optional.ofNullable(matcher.group(4))))
        : Optional.empty();
  }

  /** Says what a table is made for. */
  static SheetOrigin of(RuleSet rules, String record) {
    return new SheetOrigin(
        rules.id(),
        rules.edition(),
        digest(rules),
        Optional.of(record).filter(it -> !it.isEmpty()));
  }

  /**
   * Returns what tells whether a rule set is still the same: SHA-256 (FIPS 180-4) over a line for
   * each of its files, as {@code sha256sum} prints it.
   */
  static String digest(RuleSet rules) {
    StringBuilder lines = new StringBuilder();
    rules.files().forEach(it -> lines.append(it.sha256() + "  " + it.path() + "\n"));
    return Sha256.of(lines.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** Returns the heading. */
  String heading() {
    return "Made for rule set "
        + ruleSet
        + ", edition "
        + edition
        + ", SHA-256 "
        + sha256
        + record.map(it -> ", record " + it).orElse("");
  }
}
