/** The report as one page that opens offline. */
@NullMarked
package assize.report.html;

import org.jspecify.annotations.NullMarked;
