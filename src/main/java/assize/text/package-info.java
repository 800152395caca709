/** Text as a person typed it, and where in it a thing stands. */
@NullMarked
package assize.text;

import org.jspecify.annotations.NullMarked;
