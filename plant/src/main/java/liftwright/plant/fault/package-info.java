/** What can fail, what that takes from supply and fans, and which losses come to the same. */
@NullMarked
package liftwright.plant.fault;

import org.jspecify.annotations.NullMarked;
