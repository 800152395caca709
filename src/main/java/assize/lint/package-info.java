/** Doubts: what a rule set may say, but probably does not mean. */
@NullMarked
package assize.lint;

import org.jspecify.annotations.NullMarked;
