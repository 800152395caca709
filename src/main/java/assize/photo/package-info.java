/** Pictures of evidence: decoded under a bound, and passed on with nothing but the picture. */
@NullMarked
package assize.photo;

import org.jspecify.annotations.NullMarked;
