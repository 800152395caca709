/** How fast pages are printed, against the same text put together by hand. */
@NullMarked
package assize.bench.report;

import org.jspecify.annotations.NullMarked;
