/** What other programs are told of the command line: completions for shells, and the manual. */
@NullMarked
package assize.clidoc;

import org.jspecify.annotations.NullMarked;
