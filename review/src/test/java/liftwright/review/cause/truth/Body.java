package liftwright.review.cause.truth;

import static liftwright.review.cause.truth.Solid.DOWN;
import static liftwright.review.cause.truth.Solid.FORWARD;
import static liftwright.review.cause.truth.Solid.RIGHT;
import static liftwright.review.cause.truth.Solid.plus;
import static liftwright.review.cause.truth.Solid.times;
import static liftwright.review.cause.truth.Solid.turn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A person, posed: origin between the shoulders at the upper end of the breastbone. Half widths of
 * shoulders and hips, the height of the ankle and the heel's share are from memory.
 *
 * @param hips flexion of both, rad
 * @param knees flexion of both, rad
 */
record Body(boolean man, double kg, double stature, double hips, double knees) {

    private static final double SHOULDER = 0.1085;
    private static final double HIP = 0.0525;
    private static final double ANKLE = 0.039;
    private static final double HEEL = 0.25;

    /** Angles of an arm: flexion, abduction, rotation, elbow; the left arm's come first. */
    static final int JOINTS = 8;

    /** One segment in place. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Limb(String name, double kg, double[] from, double[] to, double[][] axes, Segment of) {

        double length() {
            double[] along = Solid.minus(to, from);
            return Math.sqrt(Solid.dot(along, along));
        }
    }

    double length(Segment segment) {
        return segment.length(man) * stature;
    }

    List<Limb> limbs(double[] held) {
        List<Limb> limbs = new ArrayList<>();
        double hip = length(Segment.TRUNK);
        double sole = hip + length(Segment.THIGH) + length(Segment.SHANK) + ANKLE * stature;
        limbs.add(limb("head", Segment.HEAD, new double[] {0, 0, sole - stature}, v -> v));
        limbs.add(limb("trunk", Segment.TRUNK, new double[3], v -> v));
        for (int side = -1; side <= 1; side += 2) {
            String name = side < 0 ? "left " : "right ";
            leg(limbs, name, new double[] {0, side * HIP * stature, hip});
            double[] elbow = elbow(side, held);
            double[] wrist = plus(elbow, alongFore(side, held, 1));
            double[] shoulder = shoulder(side);
            int way = side;
            UnaryOperator<double[]> fore = v -> fore(way, held, v);
            limbs.add(
                    limb(
                            name + "upper arm",
                            Segment.UPPER_ARM,
                            shoulder,
                            v -> upper(way, held, v)));
            limbs.add(limb(name + "forearm", Segment.FOREARM, elbow, fore));
            limbs.add(limb(name + "hand", Segment.HAND, wrist, fore));
        }
        return limbs;
    }

    private void leg(List<Limb> limbs, String name, double[] hip) {
        UnaryOperator<double[]> thigh = v -> turn(RIGHT, hips, v);
        UnaryOperator<double[]> shank = v -> turn(RIGHT, hips - knees, v);
        double[] knee = plus(hip, thigh.apply(times(length(Segment.THIGH), DOWN)));
        double[] ankle = plus(knee, shank.apply(times(length(Segment.SHANK), DOWN)));
        double[] heel = {-HEEL * length(Segment.FOOT), 0, ANKLE * stature};
        limbs.add(limb(name + "thigh", Segment.THIGH, hip, thigh));
        limbs.add(limb(name + "shank", Segment.SHANK, knee, shank));
        limbs.add(
                limb(
                        name + "foot",
                        Segment.FOOT,
                        plus(ankle, shank.apply(heel)),
                        v -> shank.apply(turn(RIGHT, Math.PI / 2, v))));
    }

    private Limb limb(String name, Segment of, double[] from, UnaryOperator<double[]> turned) {
        double[][] axes = {turned.apply(FORWARD), turned.apply(RIGHT), turned.apply(DOWN)};
        double[] to = plus(from, times(length(of), axes[2]));
        return new Limb(name, of.mass(man) * kg, from, to, axes, of);
    }

    private double[] shoulder(int side) {
        return new double[] {0, side * SHOULDER * stature, 0};
    }

    double[] elbow(int side, double[] held) {
        return plus(shoulder(side), upper(side, held, times(length(Segment.UPPER_ARM), DOWN)));
    }

    /** So far down the forearm, from the elbow. */
    double[] alongFore(int side, double[] held, double share) {
        return fore(side, held, times(share * length(Segment.FOREARM), DOWN));
    }

    /** Flexion, then abduction, then rotation about axes that go along: written innermost first. */
    private static double[] upper(int side, double[] held, double[] v) {
        int at = side < 0 ? 0 : JOINTS / 2;
        double[] turned = turn(DOWN, side * held[at + 2], v);
        turned = turn(FORWARD, -side * held[at + 1], turned);
        return turn(RIGHT, held[at], turned);
    }

    /** A vector of the forearm. */
    static double[] fore(int side, double[] held, double[] v) {
        return upper(side, held, turn(RIGHT, held[side < 0 ? 3 : 7], v));
    }

    /** Lays the segments into a cloud. */
    void lay(Cloud cloud, double[] held) {
        for (Limb limb : limbs(held)) {
            double[] gyration = new double[3];
            for (int k = 0; k < 3; k++) {
                gyration[k] = limb.of.gyration(man, k) * limb.length();
            }
            double[] middle =
                    plus(limb.from, times(limb.of.centre(man) * limb.length(), limb.axes[2]));
            cloud.body(limb.kg, middle, limb.axes, gyration);
        }
    }

    /** About the upright axis, arms hanging and legs straight. */
    double standingYaw() {
        Cloud cloud = new Cloud();
        new Body(man, kg, stature, 0, 0).lay(cloud, new double[JOINTS]);
        return cloud.inertia(cloud.centre())[2][2];
    }
}
