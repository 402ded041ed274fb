@NullMarked
package liftwright.physics;

import org.jspecify.annotations.NullMarked;
