/** Drawings as plain coordinates, ready to be printed. */
@NullMarked
package assize.report.chart;

import org.jspecify.annotations.NullMarked;
