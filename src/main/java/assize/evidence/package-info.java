/** Who says what is right, how far that can be trusted, and what it comes to together. */
@NullMarked
package assize.evidence;

import org.jspecify.annotations.NullMarked;
