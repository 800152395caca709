/** How fast vehicles are judged, against a loop written by hand and against rule engines. */
@NullMarked
package assize.bench.judging;

import org.jspecify.annotations.NullMarked;
