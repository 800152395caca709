/**
 * What can be looked at on a detail. Each {@link assize.aspect.Kind} is one class that reads what
 * is expected and what was found, compares them, and words both.
 */
@NullMarked
package assize.aspect;

import org.jspecify.annotations.NullMarked;
