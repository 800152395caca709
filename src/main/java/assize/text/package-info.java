/** Text as a person typed it, where in it a thing stands, and JSON as it is written. */
@NullMarked
package assize.text;

import org.jspecify.annotations.NullMarked;
