/** Measures: ratios of the program's speed to that of something plain, taken in one run. */
@NullMarked
package assize.bench;

import org.jspecify.annotations.NullMarked;
