/** Prints pages that open offline and checks each; what several templates share lies here too. */
@NullMarked
package assize.report.html;

import org.jspecify.annotations.NullMarked;
