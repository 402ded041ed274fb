@NullMarked
package liftwright.rig;

import org.jspecify.annotations.NullMarked;
