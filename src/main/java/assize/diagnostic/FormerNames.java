package assize.diagnostic;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What keys, words and messages were called before. For one release each is answered with its name
 * of today, which spelling alone would not find.
 */
final class FormerNames {
  /**
   * A name that is gone.
   *
   * @param now what stands for it, where that is one of the names that can stand there
   */
  record Former(String before, String now) {}

  /** Each on a line; one that became two names stands twice. */
  static final List<Former> ALL =
      """
          scope = purpose
          numbers = number_tables
          from = first_numbers
          for = purpose
          built = production
          not_shown = not_assessed
          too_early = early_part_credit
          allow = allowances
          at = min_score
          no_area_under = min_area_share
          no_item_over = max_item_loss
          most = max_loss
          worth = aspect_points
          made = lead_time
          each_missing = loss_per_piece
          cautions = hazards
          accepted = accepted_warnings
          doubt = warning
          of = about
          because = reason
          because = owner_view
          holds = owner_view
          why = explanation
          until = review_by
          judged = inspected
          cover = black_out
          right, from another = correct donor part
          old stock = new old stock
          made for it = fabricated
          not known = unknown
          works photograph = factory photograph
          advertisement = sales literature
          no-such-file = file-not-found
          not-readable = cannot-open-file
          no-text = empty-file
          tab = tab-indentation
          repeated-key = duplicate-key
          repeated-name = duplicate-name
          key-not-a-word = invalid-key
          nothing-written = missing-value
          wrong-shape = wrong-structure
          unknown-doubt = unknown-warning
          copies-in-a-circle = circular-copies
          kind-of-in-a-circle = circular-kind-of
          same-as-in-a-circle = circular-same-as
          model-without-end = open-production-dates
          numbers-not-rising = numbers-not-ascending
          dates-going-back = dates-not-ascending
          worth-of-nothing = points-for-missing-aspect
          no-aspects = nothing-expected
          credit-left-open = credit-not-allowed
          too-tangled = too-many-claims
          aspect-not-judged = aspect-not-expected
          bad-cover = bad-blackout-area
          merged-other-vehicle = different-vehicle
          merged-other-rules = different-edition
          changed-meanwhile = changed-during-merge
          other-rule-set = sheet-for-other-rule-set
          other-record = sheet-for-other-record
          other-edition = record-for-other-edition
          changed-cell = converted-cell
          looks-changed = possibly-converted-cell
          source-not-cited = uncited-source
          evidence-not-cited = uncited-evidence
          unsourced = no-source
          copy-beside-original = redundant-copy
          claim-within-claim = overlapping-claims
          positions-alike = indistinguishable-positions
          claim-never-speaks = unreachable-claim
          pattern-matches-nothing = unmatchable-pattern
          code-never-fits = unmatchable-date-code
          numbers-outside = numbers-outside-table
          numbers-with-holes = number-table-gap
          word-never-used = unused-word
          same-title = duplicate-title
          points-do-not-add-up = area-points-mismatch
          departure-overdue = overdue-review
          accepted-for-nothing = unused-acceptance
          unknown-caution = unknown-hazard
          """
          .lines()
          .map(line -> line.split(" = "))
          .map(pair -> new Former(pair[0], pair[1]))
          .toList();

  private FormerNames() {}

  /** Returns what a name is called now, if that is one of the valid names. */
  static Optional<String> now(String name, Collection<String> valid) {
    return ALL.stream()
        .filter(it -> it.before().equals(name))
        .map(Former::now)
        .filter(valid::contains)
        .findFirst();
  }
}
