package liftwright.review.cause.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.review.cause.truth.Hidden.Part;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Swap;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Bands of the moments of a worn rig against draws of the referee: its own person, whose arms
 * wander, its own jets on limbs and frame, seats and mounts askew, fans that scatter, swirl in
 * doubt; another generator.
 */
class WornBandsTest {

    private static final int DRAWS = 768;
    private static final int REFEREE_DRAWS = 2000;

    /** What a wearer's arms wander unless something else is declared, k = 2. */
    private static final double WANDER_RAD = Math.toRadians(4);

    @Test
    void theBandsOfAWornRigAreThoseOfTheReferee() {
        Seeded.check(1, WornBandsTest::judge);
    }

    private static void judge(RandomGenerator random) {
        Plan plan = Plan.drawn(random);
        // Masses are exact here: the referee's are.
        String text = PlanText.yaml(plan).replace(" ± 0.4 kg", "").replace("8 kg ± 2 %", "8 kg");
        double[][] ours = ours(TrueRig.read(text));
        double[][] theirs =
                theirs(
                        plan,
                        RandomGeneratorFactory.of("Xoshiro256PlusPlus").create(random.nextLong()));
        for (int axis = 0; axis < 3; axis++) {
            Arrays.sort(ours[axis]);
            Arrays.sort(theirs[axis]);
            double width = end(theirs[axis], 0.975) - end(theirs[axis], 0.025);
            assertThat(width).isGreaterThan(0.5);
            // Standard errors of such ends: 0.025 and 0.016 of the width of a normal band.
            for (double share : new double[] {0.025, 0.25, 0.5, 0.75, 0.975}) {
                assertThat(end(ours[axis], share))
                        .as("axis %d at %s", axis, share)
                        .isCloseTo(end(theirs[axis], share), within(0.12 * width));
            }
        }
    }

    private static double[][] ours(Rig rig) {
        Balancing balancing = Balancing.of(rig);
        Balancing.Worker worker = balancing.worker();
        double[] p = new double[balancing.parameters().size()];
        double[][] moments = new double[3][DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            balancing.parameters().draw(5, draw, p);
            HoverPoint point = worker.liftOff(p);
            assertThat(point.lifts()).isTrue();
            Vec3 moment = point.ledger().moment();
            moments[0][draw] = moment.x();
            moments[1][draw] = moment.y();
            moments[2][draw] = moment.z();
        }
        return moments;
    }

    private static double[][] theirs(Plan plan, RandomGenerator random) {
        Mechanics mechanics = new Mechanics(plan);
        Plan.Doubt doubt = plan.doubt();
        double[][] moments = new double[3][REFEREE_DRAWS];
        for (int draw = 0; draw < REFEREE_DRAWS; draw++) {
            Hidden hidden = new Hidden(plan);
            for (int k = 0; k < plan.fans(); k++) {
                hidden.add(Part.GIVES, k, doubt.scatter() / 2 * random.nextGaussian());
            }
            for (int k = 0; k < 2 * plan.fans(); k++) {
                hidden.add(Part.SEAT, k, doubt.seatRad() / 2 * random.nextGaussian());
            }
            hidden.add(Part.SWIRL, 0, doubt.swirl() / 2 * random.nextGaussian());
            // The back alone, and two pairs of twins: the one on the right is in the mirror.
            tilt(hidden, 0, 0, random);
            tilt(hidden, 1, 2, random);
            tilt(hidden, 3, 4, random);
            double[] off = new double[Body.JOINTS];
            for (int k = 0; k < off.length; k++) {
                off[k] = WANDER_RAD / 2 * random.nextGaussian();
            }
            double[] moment =
                    mechanics.moment(hidden, OptionalDouble.empty(), new Swap.None(), off);
            for (int axis = 0; axis < 3; axis++) {
                moments[axis][draw] = moment[axis];
            }
        }
        return moments;
    }

    private static void tilt(Hidden hidden, int left, int right, RandomGenerator random) {
        double sigma = hidden.plan.doubt().turnRad() / 2;
        double about = sigma * random.nextGaussian();
        double across = sigma * random.nextGaussian();
        hidden.set(Part.TILT, 2 * left, about);
        hidden.set(Part.TILT, 2 * left + 1, across);
        if (right != left) {
            hidden.set(Part.TILT, 2 * right, -about);
            hidden.set(Part.TILT, 2 * right + 1, across);
        }
    }

    private static double end(double[] sorted, double share) {
        return sorted[(int) (share * (sorted.length - 1))];
    }
}
