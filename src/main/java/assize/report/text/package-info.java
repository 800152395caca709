/** Results and messages as text for a terminal or another program. */
@NullMarked
package assize.report.text;

import org.jspecify.annotations.NullMarked;
