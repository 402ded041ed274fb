/** What the life sheet of a pack says of it: resistances that can be compared, and its end. */
@NullMarked
package liftwright.logbook.life;

import org.jspecify.annotations.NullMarked;
