package liftwright.review.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import liftwright.review.cause.truth.TrueRig;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable;
import liftwright.rig.table.TurningTable.Swap;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * The ranking of causes against true rigs with one of six causes, drawn here. What the measurement
 * shows of a fault, and how far it tells two kinds of fault apart, an ideal observer says that
 * knows the true mechanics and how rigs and faults are drawn.
 */
class AttributionTest {

    private static final int RIGS = 200;

    /** In a deep run ten batches are drawn; each is smaller. */
    private static final int DEEP_RIGS = 60;

    /**
     * The effect of a fault in standard deviations of all that is not known: something is wrong.
     */
    private static final double SEEN = 5;

    /** From here on the observer, too, names the right one of six kinds in nine of ten. */
    private static final double SHOWN = 8;

    /** Swaps are made, and the observer is held to what it says, on one rig of so many. */
    private static final int WHOLE = 8;

    private static final class Counts {
        private int shown;
        private int shownRight;
        private int seen;
        private int seenRight;
        private int observedRight;
        private int asked;
        private double chances;
        private double doubts;
        private int cameTrue;
        private Judged.Pairs pairs = Judged.Pairs.NONE;
        private Judged.Swapped swapped = Judged.Swapped.NONE;

        /**
         * @param whole whether the observer is asked whatever is shown, and swaps are made
         */
        private void judge(long seed, boolean whole) {
            Judged judged = new Judged(new TrueRig(new SplittableRandom(seed)));
            double signal = judged.signal();
            int isRight = judged.isRight() ? 1 : 0;
            boolean isSeen = signal >= SEEN;
            int isObserved = (isSeen || whole) && judged.isRightForTheObserver() ? 1 : 0;
            double chance = whole ? judged.chance() : 0;
            Judged.Pairs own = judged.pairs();
            Judged.Swapped made = whole ? judged.swapped() : Judged.Swapped.NONE;
            synchronized (this) {
                shown += signal >= SHOWN ? 1 : 0;
                shownRight += signal >= SHOWN ? isRight : 0;
                seen += isSeen ? 1 : 0;
                seenRight += isSeen ? isRight : 0;
                observedRight += isSeen ? isObserved : 0;
                asked += whole ? 1 : 0;
                cameTrue += whole ? isObserved : 0;
                chances += chance;
                doubts += chance * (1 - chance);
                pairs = pairs.plus(own);
                swapped = swapped.plus(made);
            }
        }

        @Override
        public String toString() {
            return ("from %s sigma %d of %d right; from %s sigma %d of %d, for the observer %d;"
                            + " of %d it expected %.1f and had %d; %s; %s")
                    .formatted(
                            SHOWN,
                            shownRight,
                            shown,
                            SEEN,
                            seenRight,
                            seen,
                            observedRight,
                            asked,
                            chances,
                            cameTrue,
                            pairs,
                            swapped);
        }
    }

    @Test
    void theRightCauseComesFirstOnRigsOfARicherModel() {
        Counts counts = new Counts();
        Seeded.check(
                1,
                random -> {
                    long base = random.nextLong();
                    IntStream.range(0, Seeded.deep() ? DEEP_RIGS : RIGS)
                            .parallel()
                            .forEach(k -> counts.judge(base + k * 7919L, k % WHOLE == 0));
                });
        String told = counts.toString();
        assertThat(counts.shown).as(told).isGreaterThan(15);
        assertThat(counts.shownRight).as(told).isGreaterThanOrEqualTo((int) (0.80 * counts.shown));
        assertThat(counts.seen).as(told).isGreaterThan(30);
        assertThat(counts.seenRight)
                .as(told)
                .isGreaterThanOrEqualTo((int) (0.85 * counts.observedRight));
        // Who says 70 % is right in 70 %, or is no referee.
        assertThat((double) counts.cameTrue)
                .as(told)
                .isCloseTo(counts.chances, within(3 * Math.sqrt(counts.doubts) + 0.5));
        Judged.Pairs pairs = counts.pairs;
        assertThat(pairs.falsely()).as(told).isLessThanOrEqualTo((int) (0.05 * pairs.said()));
        assertThat(pairs.missed()).as(told).isLessThanOrEqualTo((int) (0.05 * pairs.silent()));
        Judged.Swapped made = counts.swapped;
        assertThat(made.made()).as(told).isGreaterThan(5);
        assertThat(made.told()).as(told).isGreaterThanOrEqualTo((int) (0.75 * made.made()));
        assertThat(made.seen()).as(told).isGreaterThanOrEqualTo((int) (0.75 * made.made()));
    }

    /** Seats stay where fans are turned or exchanged; what is wrong with a fan goes with it. */
    @Test
    void swapsMoveWhatIsWrongWithAFanAndLeaveItsSeat() {
        TrueRig rig = new TrueRig(new SplittableRandom(5));
        Throttles throttles = Throttles.of(rig.rig(), List.of(OptionalDouble.empty()), 7);
        Bench bench = throttles.bench(0);
        Swap none = new Swap.None();
        String one = rig.rig().fans().get(0).id().text();
        int mate = 0;
        for (int k = 1; k < rig.rig().fans().size(); k++) {
            mate = rig.rig().fans().get(k).spin() == rig.rig().fans().get(0).spin() ? k : mate;
        }
        assertThat(mate).isPositive();
        Swap half = new Swap.HalfTurn(one);
        Swap exchange = new Swap.Exchange(one, rig.rig().fans().get(mate).id().text());
        Swap reversal = new Swap.Reversal(one);
        alike(bench, half, new Fault.Seat(0, 0.05, -0.03), none, new Fault.Seat(0, 0.05, -0.03));
        alike(
                bench,
                half,
                new Fault.Crooked(0, 0.05, -0.03),
                none,
                new Fault.Crooked(0, -0.05, 0.03));
        alike(bench, exchange, new Fault.Weak(0, 0.2), none, new Fault.Weak(mate, 0.2));
        alike(bench, exchange, new Fault.Seat(0, 0.05, 0), none, new Fault.Seat(0, 0.05, 0));
        alike(
                bench,
                exchange,
                new Fault.Crooked(mate, 0.05, 0.02),
                none,
                new Fault.Crooked(0, 0.05, 0.02));
        alike(bench, reversal, new Fault.None(), none, new Fault.Spins(Set.of(0), 1));
        alike(bench, reversal, new Fault.Spins(Set.of(0), 1), none, new Fault.None());
        Vec3 weak = bench.acceleration(none, new Fault.Weak(0, 0.2));
        assertThat(weak.minus(bench.acceleration(none, new Fault.None())).length())
                .isGreaterThan(0.05);
    }

    private static void alike(Bench bench, Swap swap, Fault fault, Swap other, Fault otherFault) {
        Vec3 one = bench.acceleration(swap, fault);
        assertThat(one.minus(bench.acceleration(other, otherFault)).length())
                .as("%s %s", swap, fault)
                .isLessThan(1e-9);
    }

    /** Mounts give with the square of thrust, all else goes with thrust: a throttle step tells. */
    @Test
    void aThrottleStepTellsAMountThatGivesFromASeat() {
        TrueRig rig = new TrueRig(new SplittableRandom(5));
        Throttles throttles =
                Throttles.of(rig.rig(), List.of(OptionalDouble.empty(), OptionalDouble.of(0.4)), 7);
        double load = throttles.bench(1).load() / throttles.bench(0).load();
        Fault seat = new Fault.Seat(0, 0.05, 0.02);
        Fault twist = new Fault.Twist(Set.of(0, 1), 0.03, 0.02);
        assertThat(load).isBetween(0.1, 0.6);
        assertThat(share(throttles, seat)).isBetween(0.9 * load, 1.1 * load);
        assertThat(share(throttles, twist)).isBetween(0.8 * load * load, 1.2 * load * load);
    }

    private static double share(Throttles throttles, Fault fault) {
        double[] yaw = new double[2];
        for (int k = 0; k < 2; k++) {
            Bench bench = throttles.bench(k);
            yaw[k] =
                    bench.acceleration(new Swap.None(), fault)
                            .minus(bench.acceleration(new Swap.None(), new Fault.None()))
                            .length();
        }
        return yaw[1] / yaw[0];
    }

    /** Turning that the declared doubt explains blames nothing. */
    @Test
    void whatIsDeclaredExplainsItself() {
        TrueRig rig = new TrueRig(new SplittableRandom(3));
        Throttles throttles = Throttles.of(rig.rig(), List.of(OptionalDouble.empty()), 7);
        var rate = throttles.bench(0).acceleration(new Swap.None(), new Fault.None());
        List<TurningTable.Rate> rates =
                List.of(
                        new TurningTable.Rate(TurningTable.Axis.ROLL, rate.x(), 0.05),
                        new TurningTable.Rate(TurningTable.Axis.PITCH, rate.y(), 0.05),
                        new TurningTable.Rate(TurningTable.Axis.YAW, rate.z(), 0.05));
        Attribution told =
                Attribution.of(
                        rig.rig(),
                        new TurningTable(
                                "t.csv",
                                List.of(
                                        new TurningTable.Row(
                                                2,
                                                OptionalDouble.empty(),
                                                OptionalDouble.of(0.01),
                                                new Swap.None(),
                                                rates))),
                        7);
        assertThat(told.ranked().getFirst().blame()).isEqualTo(Blame.AS_DECLARED);
        assertThat(told.ranked().stream().mapToDouble(Attribution.Ranked::probability).sum())
                .isBetween(1 - 1e-9, 1 + 1e-9);
        assertThat(told.unlike()).isEmpty();
        assertThat(told.rows()).hasSize(3);
    }
}
