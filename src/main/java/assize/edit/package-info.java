/**
 * Changes a person's YAML by putting in and replacing pieces of its text: every other letter stays
 * as it was, and the text is read again before anybody gets it.
 */
@NullMarked
package assize.edit;

import org.jspecify.annotations.NullMarked;
