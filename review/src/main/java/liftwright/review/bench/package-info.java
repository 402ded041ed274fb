/** What the rows of one fan on a stand tell, and whether they can be true. */
@NullMarked
package liftwright.review.bench;

import org.jspecify.annotations.NullMarked;
