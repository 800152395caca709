/** Warnings: what a rule set may say, but probably does not mean. */
@NullMarked
package assize.check;

import org.jspecify.annotations.NullMarked;
