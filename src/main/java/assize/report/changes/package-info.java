/** The page that says what changed between two editions: what it says, and its printing. */
@NullMarked
package assize.report.changes;

import org.jspecify.annotations.NullMarked;
