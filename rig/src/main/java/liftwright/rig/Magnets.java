package liftwright.rig;

import java.util.OptionalDouble;

/**
 * Heat grade of neodymium magnets: what the trade prints as their highest working temperature,
 * common practice. A magnet that works against a strong opposing field loses strength below it.
 */
public enum Magnets {
    N(80),
    M(100),
    H(120),
    SH(150),
    UH(180),
    EH(200),
    UNKNOWN(0);

    private static final double ZERO_CELSIUS_K = 273.15;

    private final double mostCelsius;

    Magnets(double mostCelsius) {
        this.mostCelsius = mostCelsius;
    }

    /** Highest working temperature, K; empty where the grade is not known. */
    public OptionalDouble mostK() {
        return this == UNKNOWN
                ? OptionalDouble.empty()
                : OptionalDouble.of(mostCelsius + ZERO_CELSIUS_K);
    }
}
