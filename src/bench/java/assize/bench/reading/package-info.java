/** How fast rule sets and records are read, against the bare stream of tokens. */
@NullMarked
package assize.bench.reading;

import org.jspecify.annotations.NullMarked;
