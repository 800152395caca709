/** One edition of one standard, as values. */
@NullMarked
package assize.ruleset;

import org.jspecify.annotations.NullMarked;
