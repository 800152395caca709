/** A rule set as a book: what it says, and its printing. */
@NullMarked
package assize.report.handbook;

import org.jspecify.annotations.NullMarked;
