/** The results page of many judged vehicles: what it says of them, and its printing. */
@NullMarked
package assize.report.results;

import org.jspecify.annotations.NullMarked;
