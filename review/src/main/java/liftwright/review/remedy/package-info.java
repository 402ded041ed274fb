/** Changes that could bring a verdict to "holds", each a family with one size. */
@NullMarked
package liftwright.review.remedy;

import org.jspecify.annotations.NullMarked;
