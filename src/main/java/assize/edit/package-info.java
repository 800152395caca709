/**
 * Changes a person's YAML by putting in and replacing pieces of its text: every other letter stays
 * as it was, and the text is read again before anybody gets it. What the names mean is not known
 * here: whoever changes a text hands in how such texts are written, and what checks them.
 */
@NullMarked
package assize.edit;

import org.jspecify.annotations.NullMarked;
