/** Where the file says the places of parts, and the changes that say others. */
@NullMarked
package liftwright.rig.place;

import org.jspecify.annotations.NullMarked;
