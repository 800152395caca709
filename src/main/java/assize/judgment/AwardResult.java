package assize.judgment;

import assize.ruleset.Award;
import java.util.Optional;

/**
 * The award that is certain (on the low score), reached (on the likely one) and possible (on the
 * high one).
 */
public record AwardResult(
    Optional<Award> certain, Optional<Award> reached, Optional<Award> possible) {}
