/** One vehicle, and what was found on it, as values. */
@NullMarked
package assize.record;

import org.jspecify.annotations.NullMarked;
