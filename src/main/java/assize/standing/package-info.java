/**
 * What sources come to over the whole production, for each kind of vehicle that they tell apart.
 */
@NullMarked
package assize.standing;

import org.jspecify.annotations.NullMarked;
