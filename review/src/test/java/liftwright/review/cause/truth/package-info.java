/**
 * A referee of the ranking of causes: worn rigs as they truly are, with mechanics of their own. Of
 * the product it uses only the reader of rig files and the records of a table of turning.
 */
@NullMarked
package liftwright.review.cause.truth;

import org.jspecify.annotations.NullMarked;
