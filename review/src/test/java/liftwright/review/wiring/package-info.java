@NullMarked
package liftwright.review.wiring;

import org.jspecify.annotations.NullMarked;
