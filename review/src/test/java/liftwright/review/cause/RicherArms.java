package liftwright.review.cause;

import static liftwright.review.cause.Solid.plus;
import static liftwright.review.cause.Solid.times;
import static liftwright.review.cause.Solid.turn;

/**
 * Arms of a {@link RicherRig}: lengths over stature after de Leva, J. Biomech. 29, 1996, table 4
 * (men); half the width between the shoulders from memory. Side −1 is left; angles of the left arm
 * stand before those of the right.
 */
record RicherArms(double stature) {

    private static final double UPPER = 0.2817 / 1.741;
    private static final double FORE = 0.2689 / 1.741;
    private static final double SHOULDER = 0.1085;

    double[] elbow(int side, double[] held) {
        double[] shoulder = {0, side * SHOULDER * stature, 0};
        return plus(shoulder, alongUpper(side, held, 1));
    }

    /** So far down the upper arm, from the shoulder. */
    double[] alongUpper(int side, double[] held, double share) {
        return upper(side, held, times(share * UPPER * stature, Solid.DOWN));
    }

    /** So far down the forearm, from the elbow. */
    double[] alongFore(int side, double[] held, double share) {
        return fore(side, held, times(share * FORE * stature, Solid.DOWN));
    }

    /** Flexion, then abduction, then rotation about axes that go along: written innermost first. */
    private static double[] upper(int side, double[] held, double[] v) {
        int at = side < 0 ? 0 : 4;
        double[] turned = turn(Solid.DOWN, side * held[at + 2], v);
        turned = turn(Solid.FORWARD, -side * held[at + 1], turned);
        return turn(Solid.RIGHT, held[at], turned);
    }

    /** A vector of the forearm. */
    static double[] fore(int side, double[] held, double[] v) {
        return upper(side, held, turn(Solid.RIGHT, held[side < 0 ? 3 : 7], v));
    }
}
