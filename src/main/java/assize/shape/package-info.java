/**
 * What may be written in rule sets and records, as data: which names a group has, which of them are
 * needed, and what is written under each. The readers go by it, and schemas for editors are made
 * from it.
 */
@NullMarked
package assize.shape;

import org.jspecify.annotations.NullMarked;
