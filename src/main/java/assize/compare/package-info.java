/** Compares two editions of one standard: what changed, and what that means for a vehicle. */
@NullMarked
package assize.compare;

import org.jspecify.annotations.NullMarked;
