package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.review.cause.truth.Hidden.Part;

/** How far a true rig is from what was written down: standard deviations of each hidden number. */
final class Spread {

    /** One hidden number in doubt. */
    record Doubtful(Part part, int k, double sigma) {}

    /** People's yaw inertia over that of the table: the stack reads low (three measured men). */
    static final double LEAST_YAW = 1.05;

    static final double MOST_YAW = 1.35;

    private Spread() {}

    /** All but the yaw inertia of the person, which is even between two factors. */
    static List<Doubtful> of(Plan plan) {
        Plan.Doubt told = plan.doubt();
        List<Doubtful> all = new ArrayList<>();
        each(all, plan, Part.GIVES, told.scatter() / 2);
        each(all, plan, Part.SEAT, told.seatRad() / 2);
        each(all, plan, Part.TILT, told.turnRad() / 2);
        each(all, plan, Part.SWIRL, told.swirl() / 2);
        // What nobody wrote down.
        each(all, plan, Part.LEAN, Math.toRadians(0.05));
        each(all, plan, Part.TWIST, Math.toRadians(0.05));
        each(all, plan, Part.INERTIA, 0.03);
        each(all, plan, Part.CATCH, 0.2);
        all.add(new Doubtful(Part.CENTRE, 0, 0.003));
        all.add(new Doubtful(Part.CENTRE, 1, 0.002));
        all.add(new Doubtful(Part.CENTRE, 2, 0.008));
        return List.copyOf(all);
    }

    private static void each(List<Doubtful> all, Plan plan, Part part, double sigma) {
        for (int k = 0; k < Hidden.count(plan, part); k++) {
            all.add(new Doubtful(part, k, sigma));
        }
    }

    /** The rig as an observer expects it. */
    static Hidden expected(Plan plan) {
        Hidden hidden = new Hidden(plan);
        hidden.set(Part.PERSON_YAW, 0, (LEAST_YAW + MOST_YAW) / 2);
        return hidden;
    }

    /** Standard deviation of the yaw inertia's factor. */
    static double yawSigma() {
        return (MOST_YAW - LEAST_YAW) / Math.sqrt(12);
    }

    static Hidden drawn(Plan plan, RandomGenerator random) {
        Hidden hidden = new Hidden(plan);
        for (Doubtful each : of(plan)) {
            hidden.add(each.part, each.k, each.sigma * random.nextGaussian());
        }
        hidden.set(Part.PERSON_YAW, 0, random.nextDouble(LEAST_YAW, MOST_YAW));
        return hidden;
    }
}
