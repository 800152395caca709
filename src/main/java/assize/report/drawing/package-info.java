/** Drawings as plain coordinates, ready to be printed. */
@NullMarked
package assize.report.drawing;

import org.jspecify.annotations.NullMarked;
