package assize.aspect;

import java.util.Optional;

/**
 * A finish of the rule set.
 *
 * @param kindOf the finish in whose place it may stand
 */
public record Finish(String id, String name, Optional<String> kindOf) {}
