package liftwright.plant.motion;

/**
 * Something that holds the body on one side alone, by a spring and a damper in parallel: an
 * overhead line, a line down to the floor, a mat. It pulls (or pushes) and never the other way: F =
 * k s + c ds/dt while it is stretched by s &gt; 0, and 0 where that would be negative.
 *
 * <p>Without mass of its own, straight up and down. Heights are those of the body, its soles.
 *
 * @param name for reports
 * @param way which side it holds
 * @param fromM height of the soles at which it begins to be stretched, m
 * @param stiffnessNpm k &gt; 0, N/m
 * @param dampingNspm c ≥ 0, N·s/m
 */
public record Spring(String name, Way way, double fromM, double stiffnessNpm, double dampingNspm) {

    /** Which way it acts on the body. */
    public enum Way {
        /** Upward, on a body below where it begins: an overhead line, a mat. */
        LIFTS,
        /** Downward, on a body above it: a line down to the floor. */
        HOLDS
    }

    public Spring {
        if (!(stiffnessNpm > 0) || !(dampingNspm >= 0)) {
            throw new IllegalArgumentException("a line without stiffness: " + name);
        }
    }

    /** How far it is stretched, m; below 0 where it is slack. */
    public double stretchM(double heightM) {
        return switch (way) {
            case LIFTS -> fromM - heightM;
            case HOLDS -> heightM - fromM;
        };
    }

    /** Force in it, N, ≥ 0. */
    public double forceN(double heightM, double upMps) {
        double stretch = stretchM(heightM);
        if (stretch < 0) {
            return 0;
        }
        double rate =
                switch (way) {
                    case LIFTS -> -upMps;
                    case HOLDS -> upMps;
                };
        return Math.max(0, stiffnessNpm * stretch + dampingNspm * rate);
    }

    /** What it adds to the upward force on the body, N. */
    double upN(double heightM, double upMps) {
        return switch (way) {
            case LIFTS -> forceN(heightM, upMps);
            case HOLDS -> -forceN(heightM, upMps);
        };
    }

    /** Energy stored in it, J. */
    double storedJ(double heightM) {
        double stretch = Math.max(0, stretchM(heightM));
        return stiffnessNpm * stretch * stretch / 2;
    }
}
