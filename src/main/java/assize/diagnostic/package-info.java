/** What is wrong with a file, or doubtful, and where: values, not exceptions. */
@NullMarked
package assize.diagnostic;

import org.jspecify.annotations.NullMarked;
