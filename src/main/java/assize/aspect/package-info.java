/** What can be looked at on a detail, what is expected of it, and what was found. */
@NullMarked
package assize.aspect;

import org.jspecify.annotations.NullMarked;
