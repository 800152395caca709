/** How time and memory grow with what a command is given. */
@NullMarked
package assize.bench.growth;

import org.jspecify.annotations.NullMarked;
