package assize.aspect;

import assize.date.DateRange;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * What comparing depends on besides the two values.
 *
 * @param others what was found of the same aspect of another item
 * @param builtOn a build day of the stretch
 * @param build all possible build days
 * @param tooEarly the credit of a part that was made earlier than its window
 */
public record Setting(
    Place at,
    Function<String, Optional<Finding>> others,
    LocalDate builtOn,
    DateRange build,
    BigFraction tooEarly) {}
