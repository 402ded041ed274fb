/** Unwanted turning in a log: what it was, and which causes explain it. */
@NullMarked
package liftwright.learning.turning;

import org.jspecify.annotations.NullMarked;
