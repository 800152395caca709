/** One edition of one standard: what it holds, what reads it and what checks it. */
@NullMarked
package assize.ruleset;

import org.jspecify.annotations.NullMarked;
