/** What a pattern can match, and whether it matches anything. */
@NullMarked
package assize.pattern;

import org.jspecify.annotations.NullMarked;
