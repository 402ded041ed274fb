package liftwright.trials.predict;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import liftwright.numerics.ProportionInterval;
import liftwright.numerics.Work;
import liftwright.quantity.Measure;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.Abort;
import liftwright.trials.Reading;
import liftwright.trials.Run;
import org.junit.jupiter.api.Test;

/**
 * Values to stop at, on random rigs: where they may lie, how they move with the time of a stop, and
 * what a crew that obeys them meets in a richer model with faults in it.
 */
class AbortValuesTest {

    private static final int RIGS = 120;

    /** Enough for bands of a test, in half of the time. */
    private static final int DRAWS = 128;

    private static final int FAULTS = 8;

    private int kept;
    private int passed;
    private int values;
    private int none;

    /** Runs that went further out than values are made for, and came to one. */
    private int further;

    private final List<String> which = new ArrayList<>();

    private static int sign(Abort abort) {
        return abort.side() == Abort.Side.ABOVE ? 1 : -1;
    }

    @Test
    void aStopAtTheValueComesBeforeTheLimit() {
        Seeded.check(RIGS, this::judge);
        String told =
                String.format(
                        Locale.ROOT,
                        "%d values, %d none; of runs stopped at one %d stayed within the limit, %d passed it: %s; %d went further out",
                        values,
                        none,
                        kept,
                        passed,
                        which,
                        further);
        assertThat(values).as(told).isGreaterThan(none / 2);
        assertThat(none).as(told).isPositive();
        assertThat(kept + passed).as(told).isGreaterThan(RIGS / 5);
        // Some eighty runs come to a value: as many must have stayed within as 95 % leave room for.
        double most = ProportionInterval.clopperPearson(kept, kept + passed, 0.95).upper();
        assertThat(most).as(told).isGreaterThan(0.95);
        assertThat(further).as(told).isPositive();
    }

    private void judge(RandomGenerator random) {
        RandomCard card = NearLimits.of(RandomCard.draw(random), random);
        Prediction prediction =
                new Prediction(card.rig(), card.run(), Conditions.DECLARED, random.nextLong());
        Told told = prediction.told(DRAWS, 2, Work.quiet()).orElseThrow();
        Stopping usual = Stopping.of(card.rig());
        Predictions all = prediction.predictions(told, usual);
        for (Abort abort : all.aborts()) {
            placed(abort, all);
        }
        double before = 0;
        List<Abort> last = List.of();
        for (double times : new double[] {0.2, 0.6, 1, 1.7, 3}) {
            List<Abort> now =
                    prediction
                            .predictions(
                                    told, new Stopping(times * usual.totalS(), 0, "of the test"))
                            .aborts();
            for (int k = 0; k < last.size(); k++) {
                notNearer(last.get(k), now.get(k));
            }
            assertThat(times).isGreaterThan(before);
            before = times;
            last = now;
        }
        for (int k = 0; k < FAULTS; k++) {
            crew(card, prediction, all, random);
        }
    }

    private void placed(Abort abort, Predictions of) {
        switch (abort.value()) {
            case Abort.Worth.None(String reason) -> {
                none++;
                assertThat(reason).isNotBlank();
            }
            case Abort.Worth.At(double si, double secondsToLimit) -> {
                values++;
                assertThat(sign(abort) * (abort.limitSi() - si))
                        .as("inside the limit: %s", abort)
                        .isPositive();
                assertThat(sign(abort) * (si - abort.predictedSi()))
                        .as("outside the bands: %s", abort)
                        .isPositive();
                assertThat(secondsToLimit)
                        .as("time to stop: %s", abort)
                        .isGreaterThanOrEqualTo(of.stopping().totalS() - 1e-6);
                for (StepReadings step : of.steps()) {
                    for (Reading reading : step.worst()) {
                        if (reading.channel().equals(abort.channel())) {
                            assertThat(reading.band().high() < si || reading.band().low() > si)
                                    .as("%s in %s", abort, reading)
                                    .isTrue();
                        }
                    }
                }
            }
        }
    }

    /** A longer stop never moves a value nearer to the limit. */
    private static void notNearer(Abort quick, Abort slow) {
        assertThat(slow.channel()).isEqualTo(quick.channel());
        if (slow.value() instanceof Abort.Worth.At(double late, double _)) {
            assertThat(quick.value()).as("%s", quick).isInstanceOf(Abort.Worth.At.class);
            if (quick.value() instanceof Abort.Worth.At(double early, double _)) {
                assertThat(sign(slow) * (early - late))
                        .as("%s %s", quick, slow)
                        .isGreaterThanOrEqualTo(-1e-9);
            }
        }
    }

    /** One run with a fault; for each value a crew that reads it, obeys and takes its time. */
    private void crew(
            RandomCard card, Prediction declared, Predictions told, RandomGenerator random) {
        long seed = random.nextLong();
        int fault = random.nextInt(4);
        double by = 1 + 1.6 * random.nextDouble();
        List<Abort> watched =
                told.aborts().stream()
                        .filter(one -> one.value() instanceof Abort.Worth.At)
                        .filter(one -> !one.channel().field().matches("card-(time|height)"))
                        .toList();
        double[] crossedS = new double[watched.size()];
        Arrays.fill(crossedS, Double.POSITIVE_INFINITY);
        boolean[] left = new boolean[watched.size()];
        TrueRun run = spoilt(card, seed, fault, by);
        TrueReader reader = new TrueReader(new TrueNumbers(seed + 1));
        run.go(
                (timeS, step, ends) -> {
                    for (int k = 0; k < left.length && !cut(told, step); k++) {
                        Abort abort = watched.get(k);
                        double truth = run.value(abort.channel());
                        double reads = reader.reads(abort.channel(), truth, 0.5);
                        if (!left[k] && crosses(abort, reads)) {
                            boolean meant = times(declared, abort, timeS, truth) <= Margins.MOST;
                            further += meant ? 0 : 1;
                            crossedS[k] = meant ? timeS : Double.POSITIVE_INFINITY;
                            left[k] = true;
                        }
                        left[k] |= ends && outside(told.steps().get(step), abort, reads);
                    }
                    return !cut(told, step);
                });
        for (int k = 0; k < left.length; k++) {
            if (crossedS[k] < Double.POSITIVE_INFINITY) {
                double stopS = crossedS[k] + told.stopping().totalS();
                count(watched.get(k), spoilt(card, seed, fault, by), stopS, fault, by);
            }
        }
    }

    /** How many times as far from its start as declared a reading is at a time. */
    private static double times(Prediction declared, Abort abort, double timeS, double truth) {
        Trace trace = declared.trace();
        double[] whenS = trace.timesS();
        int moment = 0;
        while (moment < whenS.length - 1 && whenS[moment] < timeS) {
            moment++;
        }
        for (int k = 0; k < declared.watches().size(); k++) {
            if (declared.watches().get(k).channel().equals(abort.channel())) {
                double way = trace.of(k)[moment] - trace.atStart(k);
                return (truth - trace.atStart(k)) / way;
            }
        }
        throw new IllegalArgumentException(abort.toString());
    }

    private static boolean cut(Predictions told, int step) {
        return told.steps().get(step).cut().isPresent();
    }

    private static TrueRun spoilt(RandomCard card, long seed, int fault, double by) {
        TrueRun run = new TrueRun(new TrueRig(card.rig(), seed), card.run());
        run.spoil(fault, by);
        return run;
    }

    private static boolean crosses(Abort abort, double reads) {
        return abort.value() instanceof Abort.Worth.At(double si, double _)
                && sign(abort) * (reads - si) >= 0;
    }

    /** The same run, stopped; after it everything goes on to warm for a while. */
    private void count(Abort abort, TrueRun run, double stopS, int fault, double by) {
        boolean[] over = {false};
        Runnable looks =
                () -> over[0] |= sign(abort) * (run.value(abort.channel()) - abort.limitSi()) > 0;
        run.go(
                (timeS, step, ends) -> {
                    looks.run();
                    return timeS < stopS;
                });
        if (isHeat(abort)) {
            run.rest(30, looks);
        }
        passed += over[0] ? 1 : 0;
        kept += over[0] ? 0 : 1;
        if (over[0]) {
            which.add(
                    String.format(
                            Locale.ROOT,
                            "%s fault %d by %.1f",
                            abort.channel().field(),
                            fault,
                            by));
        }
    }

    private static boolean isHeat(Abort abort) {
        return abort.channel().measure() == Measure.TEMPERATURE;
    }

    /** Whether a reading at the end of a step lies outside its band. */
    private static boolean outside(StepReadings step, Abort abort, double reads) {
        return step.readings().stream()
                .filter(one -> one.channel().equals(abort.channel()))
                .anyMatch(one -> reads > one.band().high() || reads < one.band().low());
    }

    @Test
    void aClimbStoppedAtItsHeightStaysBelowTheLimit() throws IOException {
        Rig rig = PredictionsTest.curlew();
        Run hover =
                new Run(
                        rig.fans().stream().map(Fan::id).toList(),
                        Run.Held.NOTHING,
                        false,
                        List.of(new Run.Step(new Run.Level.OfWeight(1.0), 6, 5)));
        Prediction prediction = new Prediction(rig, hover, Conditions.DECLARED, 3);
        Told told = prediction.told(DRAWS, 2, Work.quiet()).orElseThrow();
        int found = 0;
        for (double stop = 0.02; stop < 2; stop *= 1.3) {
            Abort height =
                    prediction
                            .predictions(told, new Stopping(stop, 0, "of the test"))
                            .aborts()
                            .stream()
                            .filter(one -> one.channel().field().equals("card-height"))
                            .findFirst()
                            .orElseThrow();
            double from = height.value() instanceof Abort.Worth.At(double si, double _) ? si : -1;
            found += from > 0 ? 1 : 0;
            if (from > 0) {
                assertThat(apex(from, 1.05, stop)).isLessThan(height.limitSi());
            }
        }
        assertThat(found).isLessThan(20);
    }

    /** Up from the ground, lift over weight held until the stop, then none; by short steps. */
    private static double apex(double fromM, double lift, double stopS) {
        double dt = 1e-4;
        double height = 0;
        double speed = 0;
        double left = Double.POSITIVE_INFINITY;
        while (speed >= 0) {
            if (height >= fromM && left == Double.POSITIVE_INFINITY) {
                left = stopS;
            }
            left -= dt;
            speed += dt * 9.80665 * (left > 0 ? lift - 1 : -1);
            height += dt * speed;
        }
        return height;
    }
}
