/**
 * How the parts of a rig warm: their bodies of heat, what flows between them, one step of it, and
 * what of it is watched. It knows currents and losses as they are told, no network: {@code supply}
 * steps it together with charge.
 */
@NullMarked
package liftwright.plant.heat;

import org.jspecify.annotations.NullMarked;
