package assize.record;

import assize.aspect.Aspect;
import assize.aspect.Expectation;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the owner holds to be right at an item, and why. It is told beside the evidence and weighs
 * nothing.
 *
 * @param holds for each aspect at least one value, any of which the owner holds to be right
 */
public record Opinion(Map<Aspect, List<Expectation>> holds, Optional<String> because) {}
