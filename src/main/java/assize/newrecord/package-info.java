/** A record to fill in: what applies to one vehicle, each item with where to look. */
@NullMarked
package assize.newrecord;

import org.jspecify.annotations.NullMarked;
