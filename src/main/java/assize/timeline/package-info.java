/**
 * What sources come to over the whole production, for each kind of vehicle that they tell apart.
 */
@NullMarked
package assize.timeline;

import org.jspecify.annotations.NullMarked;
