/** The page on one item on which sources differ: what it says, and its printing. */
@NullMarked
package assize.report.dossier;

import org.jspecify.annotations.NullMarked;
