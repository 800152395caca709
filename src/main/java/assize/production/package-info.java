/**
 * Which vehicles there can be by a rule set: its models, plants, markets, equipment and number
 * series, the days on which they were built, and which of these exclude each other.
 */
@NullMarked
package assize.production;

import org.jspecify.annotations.NullMarked;
