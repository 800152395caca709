/**
 * A YAML file as a tree with places, what is wrong with it, what it says wherever it stands, and
 * how values are written. No domain.
 */
@NullMarked
package assize.yaml;

import org.jspecify.annotations.NullMarked;
