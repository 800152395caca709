/** The copy for others: what it leaves out, what it masks, and how a masked number is proved. */
@NullMarked
package assize.redaction;

import org.jspecify.annotations.NullMarked;
