/** Compares two editions of one standard: what changed, and what that means for a vehicle. */
@NullMarked
package assize.editions;

import org.jspecify.annotations.NullMarked;
