@NullMarked
package liftwright.review.failures;

import org.jspecify.annotations.NullMarked;
