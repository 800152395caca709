/** The inspection sheet as the table of a spreadsheet, and what somebody filled in there. */
@NullMarked
package assize.spreadsheet;

import org.jspecify.annotations.NullMarked;
