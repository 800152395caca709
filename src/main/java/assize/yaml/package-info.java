/**
 * Reads rule sets and records from YAML: text to tokens to a tree with places, and from there to
 * values, with everything that is wrong said at once. The only package that knows Jackson.
 */
@NullMarked
package assize.yaml;

import org.jspecify.annotations.NullMarked;
