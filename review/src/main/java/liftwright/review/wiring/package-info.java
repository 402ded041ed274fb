/**
 * The wiring as something to be made, protected and looked after: what to solder, which fuse, what
 * a fault does, what to inspect.
 */
@NullMarked
package liftwright.review.wiring;

import org.jspecify.annotations.NullMarked;
