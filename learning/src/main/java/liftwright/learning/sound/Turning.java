package liftwright.learning.sound;

/**
 * How fans turn that were told something, on the grid of {@link HeardCourse}, and how likely they
 * are heard then.
 *
 * @param speed over its greatest, 0 to 1
 * @param heard logarithm of the chance to be heard
 * @param unheard logarithm of the chance not to be
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never shown
record Turning(double[] speed, double[] heard, double[] unheard) {

    /**
     * A fan at its greatest speed goes unheard for this share of the time; noise is taken for one
     * at rest as often.
     */
    private static final double ASTRAY = 0.02;

    /** At rest, and at the greatest speed. */
    static final Turning ENDS = of(new double[] {0, 1});

    /**
     * Noise goes with a high power of speed: with its square the chance to be heard does not fall
     * too fast, and rotors differ.
     */
    static Turning of(double[] speed) {
        double[] heard = new double[speed.length];
        double[] unheard = new double[speed.length];
        for (int k = 0; k < speed.length; k++) {
            double chance = ASTRAY + (1 - 2 * ASTRAY) * Math.min(1, speed[k] * speed[k]);
            heard[k] = Math.log(chance);
            unheard[k] = Math.log1p(-chance);
        }
        return new Turning(speed, heard, unheard);
    }

    /** Behind a rotor of the first order that gains speed and loses it in such times. */
    static Turning behind(double[] aim, double upS, double downS) {
        double up = -Math.expm1(-HeardCourse.STEP_S / upS);
        double down = -Math.expm1(-HeardCourse.STEP_S / downS);
        double[] turned = new double[aim.length];
        double now = 0;
        for (int k = 0; k < turned.length; k++) {
            now += (aim[k] - now) * (aim[k] > now ? up : down);
            turned[k] = now;
        }
        return of(turned);
    }

    /** Logarithm of the chance of what is heard at a place, 0 for silence. */
    double of(double what, int place) {
        return what > 0 ? heard[place] : unheard[place];
    }
}
