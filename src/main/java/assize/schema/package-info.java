/**
 * Tables of the fields that a file can have: how each is read, when two say the same, what becomes
 * of it in a copy, and how it is described to editors (JSON Schema, draft 2020-12). No domain.
 */
@NullMarked
package assize.schema;

import org.jspecify.annotations.NullMarked;
