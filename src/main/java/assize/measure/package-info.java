/** Sizes, threads, gauges, gloss and colors: reading them exactly, and comparing them fairly. */
@NullMarked
package assize.measure;

import org.jspecify.annotations.NullMarked;
