/** The copy for others: what it leaves out, what it masks, and how a masked number is proved. */
@NullMarked
package assize.share;

import org.jspecify.annotations.NullMarked;
