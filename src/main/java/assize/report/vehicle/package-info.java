/** The report of one vehicle: what it says, and its printing. */
@NullMarked
package assize.report.vehicle;

import org.jspecify.annotations.NullMarked;
