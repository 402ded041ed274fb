package liftwright.rig;

import java.util.Optional;
import liftwright.quantity.Quantity;

/**
 * One battery pack in its place.
 *
 * @param id lasting name
 * @param declaredAt the group it comes from
 * @param cell its cells
 * @param series cells in series
 * @param parallel cells side by side
 * @param extraMass case, leads and links, kg; used unless {@code mass} is given
 * @param mass whole mass, kg, where it was weighed
 * @param interconnect resistance of links and leads inside the pack, Ω
 * @param mount what carries it
 * @param at place in the mount's axes, m
 * @param charge share left at the start, 0 to 1
 * @param temperature start temperature, K; empty means that of the air
 * @param serial serial number
 */
public record Pack(
        PartId id,
        RigPath declaredAt,
        CellType cell,
        int series,
        int parallel,
        Quantity extraMass,
        Optional<Quantity> mass,
        Quantity interconnect,
        Mount mount,
        Vec3 at,
        Quantity charge,
        Optional<Quantity> temperature,
        Optional<String> serial) {}
