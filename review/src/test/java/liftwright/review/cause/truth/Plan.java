package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/**
 * What the builder wrote down: a worn rig with fans on the back, on two booms and on both forearms.
 *
 * @param held angles of the arms
 * @param thrustN of a fan at its speed, as installed
 * @param powerW at its shaft there
 * @param swirl share of the shaft's torque that is left in the jet
 * @param doubt what was declared of how sure this is
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Plan(
        Body body,
        double[] held,
        List<Mount> mounts,
        List<Seat> seats,
        double thrustN,
        double powerW,
        double swirl,
        Doubt doubt) {

    /**
     * A mount: on the trunk (arm 0), the left (−1) or the right (+1) forearm.
     *
     * @param at from the shoulders, or from the elbow where it is on an arm
     * @param root about which it gives, from {@code at}
     * @param along share of the forearm
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Mount(String name, int arm, double[] at, double[] root, double along) {}

    /**
     * @param offset from the mount
     * @param sense 1 for right-hand
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Seat(String id, int mount, double[] offset, int sense) {}

    /** Declared ± of each, k = 2. */
    record Doubt(double scatter, double seatRad, double turnRad, double swirl, double armsRad) {}

    static final double FAN_KG = 0.92;
    static final double TIP = 0.14;
    static final double EXIT_AREA = 0.0128;
    static final double PACK_KG = 19;
    static final double[] PACK_AT = {-0.06, 0, 0};
    static final double FRAME_KG = 8;
    static final double[] FRAME_EDGES = {0.3, 0.9, 0.4};

    int fans() {
        return seats.size();
    }

    double kg() {
        return body.kg() + fans() * FAN_KG + PACK_KG + FRAME_KG;
    }

    static Plan drawn(RandomGenerator random) {
        Body body =
                new Body(
                        random.nextBoolean(),
                        random.nextDouble(52, 88),
                        random.nextDouble(1.58, 1.90),
                        Math.toRadians(random.nextDouble(0, 15)),
                        Math.toRadians(random.nextDouble(0, 15)));
        double[] arm = {
            random.nextDouble(5, 20), random.nextDouble(12, 28), 0, random.nextDouble(5, 30)
        };
        double[] held = new double[Body.JOINTS];
        for (int k = 0; k < held.length; k++) {
            held[k] = Math.toRadians(arm[k % arm.length]);
        }
        double out = random.nextDouble(0.34, 0.5);
        double ahead = random.nextDouble(0.02, 0.12);
        List<Mount> mounts = new ArrayList<>();
        double[] none = {0, 0, 0};
        mounts.add(new Mount("back", 0, new double[] {-0.18, 0, -0.06}, none, 0));
        for (int side = -1; side <= 1; side += 2) {
            double[] root = {0, -0.5 * side * out, 0};
            String name = side < 0 ? "left boom" : "right boom";
            mounts.add(new Mount(name, 0, new double[] {ahead, side * out, -0.05}, root, 0));
        }
        mounts.add(new Mount("left pod", -1, none, none, 0.6));
        mounts.add(new Mount("right pod", 1, none, none, 0.6));
        List<Seat> seats = seats(random.nextBoolean() ? 4 : 2);
        double kg = body.kg() + seats.size() * FAN_KG + PACK_KG + FRAME_KG;
        double thrustN = 9.80665 * kg / seats.size() * random.nextDouble(1.5, 2);
        double looseRad =
                Math.toRadians(Math.exp(random.nextDouble(Math.log(0.15), Math.log(0.5))));
        Doubt doubt =
                new Doubt(
                        random.nextDouble(0.01, 0.03),
                        looseRad,
                        looseRad,
                        0.10,
                        Math.toRadians(random.nextDouble(0.5, 1.5)));
        double swirl = Math.exp(random.nextDouble(Math.log(0.1), Math.log(0.9)));
        double powerW = thrustN * random.nextDouble(48, 56);
        return new Plan(body, held, mounts, seats, thrustN, powerW, swirl, doubt);
    }

    private static List<Seat> seats(int row) {
        List<Seat> seats = new ArrayList<>();
        for (int k = 0; k < row; k++) {
            double y = row == 4 ? -0.24 + 0.16 * k : -0.12 + 0.24 * k;
            seats.add(seat("back." + (k + 1), 0, new double[] {0, y, -0.15}, k));
        }
        for (int side = 0; side < 2; side++) {
            String name = side == 0 ? "left" : "right";
            // A twin spins the other way; rows run from front to back.
            for (int k = 0; k < 2; k++) {
                double x = k == 0 ? 0.08 : -0.08;
                String id = name + "-boom." + (k + 1);
                seats.add(seat(id, 1 + side, new double[] {x, 0, 0}, k + side));
            }
            for (int k = 0; k < 2; k++) {
                double x = k == 0 ? 0.075 : -0.075;
                String id = name + "-pod." + (k + 1);
                seats.add(seat(id, 3 + side, new double[] {x, 0, 0}, k + side));
            }
        }
        return seats;
    }

    private static Seat seat(String id, int mount, double[] offset, int number) {
        return new Seat(id, mount, offset, number % 2 == 0 ? 1 : -1);
    }
}
