/** How well a thrust stand will measure, before it is built. */
@NullMarked
package liftwright.review.stand;

import org.jspecify.annotations.NullMarked;
