/** One vehicle and what was found on it: its tables of fields and what reads them. */
@NullMarked
package assize.record;

import org.jspecify.annotations.NullMarked;
