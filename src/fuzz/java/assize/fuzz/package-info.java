/** Readers under texts and files that nobody would write, led by what of the program they reach. */
@NullMarked
package assize.fuzz;

import org.jspecify.annotations.NullMarked;
