/** What several pages say, finished: every word worded, every number rounded, every order fixed. */
@NullMarked
package assize.report.view;

import org.jspecify.annotations.NullMarked;
