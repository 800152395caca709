/** The command line: the only place that knows files, the clock and the terminal. */
@NullMarked
package assize.cli;

import org.jspecify.annotations.NullMarked;
