/**
 * Reads rule sets and records from YAML: text to events to a tree with places, and from there to
 * values, with everything that is wrong said at once. The only package that knows snakeyaml-engine.
 */
@NullMarked
package assize.yaml;

import org.jspecify.annotations.NullMarked;
