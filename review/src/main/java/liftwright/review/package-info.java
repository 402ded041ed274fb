@NullMarked
package liftwright.review;

import org.jspecify.annotations.NullMarked;
