package liftwright.plant.hold;

import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/**
 * One fan at full throttle while the others stand still: the most that it pushes with, whatever
 * runs beside it, since every other fan only takes voltage from it.
 *
 * @param id of the fan
 * @param at place in rig axes, m
 * @param direction of its thrust in rig axes, unit vector
 * @param thrustN along it, ≥ 0, N
 * @param swirlNm moment about it, right-hand, N·m
 */
public record FanAlone(PartId id, Vec3 at, Vec3 direction, double thrustN, double swirlNm) {}
