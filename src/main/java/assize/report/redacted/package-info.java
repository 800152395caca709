/** Copies of the pages for others: their texts masked, and what is left out. */
@NullMarked
package assize.report.redacted;

import org.jspecify.annotations.NullMarked;
