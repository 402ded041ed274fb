@NullMarked
package liftwright.review.cause;

import org.jspecify.annotations.NullMarked;
