package liftwright.flight.loops;

import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/**
 * One fan as loops and mixer see it, in body axes (x forward, y right, z down) about the centre of
 * mass.
 *
 * @param id of the fan
 * @param force on the rig for each newton of thrust, what the jet strikes included, 1
 * @param moment on the rig for each newton of thrust, residual swirl included, m
 * @param axis of the thrust, a unit vector
 * @param spin +1 right-hand about the axis, −1 left-hand
 * @param hoverN thrust at hover with every fan at one throttle, N
 * @param mostN thrust at full duty with all fans at full throttle, N
 * @param limitN thrust at the current limit of its controller, N; infinite without one
 * @param idleN least thrust while it flies: at its declared idle, else 0, N
 * @param volts voltage behind a thrust
 * @param rotor how it spools
 */
public record Lifter(
        PartId id,
        Vec3 force,
        Vec3 moment,
        Vec3 axis,
        int spin,
        double hoverN,
        double mostN,
        double limitN,
        double idleN,
        Volts volts,
        Rotor rotor) {

    /** The same with a rotor that is faster or slower by a factor on its inertia. */
    Lifter spooled(double factor) {
        return new Lifter(
                id,
                force,
                moment,
                axis,
                spin,
                hoverN,
                mostN,
                limitN,
                idleN,
                volts,
                new Rotor(
                        factor * rotor.inertiaKgm2(),
                        rotor.speedRadps(),
                        factor * rotor.lagS(),
                        rotor.newtonSpRad()));
    }

    /**
     * Duty times voltage that a steady thrust takes: d V = a + b √T + c T. Follows from {@code d V
     * = R I + Ω/K_v}, {@code I = I₀ + s Ω + K_v Q} and thrust and torque in step with Ω²; exact
     * without a drift of the coefficients, and with one exact at hover.
     *
     * @param stillV a, V
     * @param rootVpRootN b, V/√N
     * @param perNewtonVpN c, V/N
     */
    public record Volts(double stillV, double rootVpRootN, double perNewtonVpN) {

        /** Duty times voltage for a thrust ≥ 0, V; nothing for none. */
        public double at(double thrustN) {
            return thrustN > 0
                    ? stillV + rootVpRootN * Math.sqrt(thrustN) + perNewtonVpN * thrustN
                    : 0;
        }

        /** Steady thrust that duty times voltage gives, N: the inverse of {@link #at}. */
        public double thrustN(double volt) {
            double left = volt - stillV;
            if (!(left > 0)) {
                return 0;
            }
            double root =
                    2
                            * left
                            / (rootVpRootN
                                    + Math.sqrt(
                                            rootVpRootN * rootVpRootN + 4 * perNewtonVpN * left));
            return root * root;
        }
    }

    /**
     * How a rotor answers its duty near hover.
     *
     * @param inertiaKgm2 of all that turns, kg·m²
     * @param speedRadps at hover, rad/s
     * @param lagS time constant of the thrust after a step of the duty at a voltage that stays, s
     * @param newtonSpRad thrust that one rad/s more gives at hover, N·s/rad
     */
    public record Rotor(double inertiaKgm2, double speedRadps, double lagS, double newtonSpRad) {}
}
