/** Pictures of evidence: decoded under a bound, and passed on with nothing but the picture. */
@NullMarked
package assize.image;

import org.jspecify.annotations.NullMarked;
