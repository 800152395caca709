/** What friends filled in, held against a record: what is new in it, the same, or different. */
@NullMarked
package assize.merge;

import org.jspecify.annotations.NullMarked;
