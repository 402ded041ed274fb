package liftwright.flight.pilot;

/**
 * What a person turns to turn the rig, about one axis: I d²θ/dt² = M φ − J d²φ/dt².
 *
 * @param what is turned, in words
 * @param momentNm M, turning moment for each radian that stays, N·m/rad
 * @param reactionKgm2 J, angular momentum of the turning part for each rad/s, to which the rest of
 *     the rig answers the other way, kg·m²
 * @param reachRad how far it can be turned either way, rad
 * @param inertiaKgm2 I of the whole
 */
public record Means(
        String what, double momentNm, double reactionKgm2, double reachRad, double inertiaKgm2) {

    /**
     * z = √(M/J), the zero in the right half-plane, rad/s: what is turned pushes the rig the wrong
     * way first. Infinite where it pushes it the right way from the start.
     */
    public double inverseRadps() {
        double square = momentNm / reactionKgm2;
        return square > 0 ? Math.sqrt(square) : Double.POSITIVE_INFINITY;
    }

    /** Whether the rig first turns the wrong way. */
    public boolean isInverse() {
        return inverseRadps() < Double.POSITIVE_INFINITY;
    }

    /** How long after a sudden turn of φ the rig stands the wrong way, √2/z, s. */
    public double wrongForS() {
        return Math.sqrt(2) / inverseRadps();
    }

    /** Turn of the rig the wrong way for each radian, right after a sudden turn, J/I; 0 if none. */
    public double wrongShare() {
        return isInverse() ? Math.abs(reactionKgm2) / inertiaKgm2 : 0;
    }

    /** Angular acceleration at full reach, rad/s². */
    public double mostRadps2() {
        return Math.abs(momentNm) * reachRad / inertiaKgm2;
    }
}
