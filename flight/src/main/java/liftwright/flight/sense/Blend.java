package liftwright.flight.sense;

/**
 * Gains of an estimate that leaves integration for measurement at one frequency.
 *
 * <p>Errors of lean e, of velocity v and of the gyro's offset b obey e' = b − (k₂/g) v, v' = g e −
 * k₁ v, b' = −(k₃/g) v. With k₁ = 3ω, k₂ = 3ω², k₃ = ω³ all three poles lie at −ω: an offset b that
 * was there from the start gives e(t) = b (t + ω t²) e^(−ωt), a lean that was wrong by e₀ gives e₀
 * (1 + ωt − ω²t²) e^(−ωt), and neither leaves anything behind.
 *
 * @param first k₁, 1/s
 * @param second k₂, 1/s²
 * @param third k₃, 1/s³
 */
public record Blend(double first, double second, double third) {

    /** Radian per second at which the open loop of {@link #at} falls through one, over ω. */
    static final double CROSSOVER = 3.0547;

    /** Most phase that lateness may take there, rad: 40° of the 71° that there are. */
    static final double MOST_LAG = Math.toRadians(40);

    /** Three poles at −ω. */
    public static Blend at(double omega) {
        return new Blend(3 * omega, 3 * omega * omega, omega * omega * omega);
    }

    /** Highest ω at which a measurement so late may be used, rad/s. */
    static double highest(double lateS) {
        return MOST_LAG / (CROSSOVER * lateS);
    }
}
