/** The walk-round sheet: what there is to look at on a vehicle, and the page to fill in. */
@NullMarked
package assize.report.sheet;

import org.jspecify.annotations.NullMarked;
