/** What other programs are told of the command line: completions for shells, and the manual. */
@NullMarked
package assize.shell;

import org.jspecify.annotations.NullMarked;
