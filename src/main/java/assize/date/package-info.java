/** Days, dates as people know them, how long before a vehicle its parts were made, date codes. */
@NullMarked
package assize.date;

import org.jspecify.annotations.NullMarked;
