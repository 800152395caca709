/** Judging: pure functions of a rule set and a record; no files, no clock. */
@NullMarked
package assize.judge;

import org.jspecify.annotations.NullMarked;
