/** What judging gave: a verdict for each item, and the score. */
@NullMarked
package assize.judgment;

import org.jspecify.annotations.NullMarked;
