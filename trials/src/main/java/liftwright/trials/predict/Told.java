package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.numerics.CounterStream;
import liftwright.numerics.Quantiles;
import liftwright.quantity.Band;
import liftwright.trials.Reading;
import liftwright.trials.Run;

/** Draws made into what instruments show. */
final class Told {

    private static final double COVERAGE = 0.95;
    private static final double TAIL = (1 - COVERAGE) / 2;

    /** A band needs so many of the draws. */
    private static final double LEAST = 0.78;

    /** More draws than this share that come to nothing are told. */
    private static final double FEW = 0.02;

    private static final String METHOD =
            "sampled from the declared tolerances, the error of the instrument and what the model leaves out";

    private final List<Watch> watches;
    private final Trace trace;
    private final List<Drawn> draws;
    private final long seed;
    private final Optional<String> cut;
    private final List<StepReadings> steps = new ArrayList<>();

    /** Bands of the worst within each step, by step, then watch; of steps that are not cut. */
    private final List<List<Band>> worst = new ArrayList<>();

    private final List<List<Band>> atEnd = new ArrayList<>();

    Told(
            Run run,
            List<Watch> watches,
            Trace trace,
            List<Drawn> draws,
            long seed,
            Optional<String> cut) {
        this.watches = watches;
        this.trace = trace;
        this.draws = draws;
        this.seed = seed;
        this.cut = cut;
        double endS = 0;
        for (int step = 0; step < run.steps().size(); step++) {
            Run.Step ordered = run.steps().get(step);
            endS += ordered.riseS() + ordered.holdS();
            steps.add(step(step, ordered, endS));
        }
    }

    private StepReadings step(int step, Run.Step ordered, double endS) {
        if (step > atEnd.size()) {
            return without(ordered, endS, "it comes after a step that is cut");
        }
        if (step == trace.steps()) {
            return without(ordered, endS, cut.orElseThrow());
        }
        int reached = (int) draws.stream().filter(draw -> draw.steps > step).count();
        if (reached < LEAST * draws.size()) {
            return without(
                    ordered,
                    endS,
                    (draws.size() - reached)
                            + " of "
                            + draws.size()
                            + " draws of the declared doubt do not reach it");
        }
        List<String> notes = new ArrayList<>();
        if (draws.size() - reached > FEW * draws.size()) {
            notes.add(
                    (draws.size() - reached)
                            + " of "
                            + draws.size()
                            + " draws of the declared doubt do not reach this step");
        }
        List<Reading> readings = new ArrayList<>();
        List<Reading> most = new ArrayList<>();
        List<Band> atEnds = new ArrayList<>();
        List<Band> worstBands = new ArrayList<>();
        for (int k = 0; k < watches.size(); k++) {
            Watch watch = watches.get(k);
            double[] shownEnd = shown(step, k, false);
            double[] shownWorst = shown(step, k, true);
            atEnds.add(band(shownEnd));
            worstBands.add(band(shownWorst));
            readings.add(new Reading(watch.channel(), trace.atEnd(step, k), atEnds.getLast()));
            if (watch.limit().isPresent()) {
                most.add(new Reading(watch.channel(), worst(step, k), worstBands.getLast()));
            }
        }
        atEnd.add(atEnds);
        worst.add(worstBands);
        return new StepReadings(ordered, endS, readings, most, Optional.empty(), notes);
    }

    private static StepReadings without(Run.Step ordered, double endS, String why) {
        return new StepReadings(ordered, endS, List.of(), List.of(), Optional.of(why), List.of());
    }

    /** At the declared values. */
    private double worst(int step, int watch) {
        double[] values =
                Arrays.copyOfRange(
                        trace.of(watch),
                        step == 0 ? 0 : trace.end(step - 1) + 1,
                        trace.end(step) + 1);
        return watches.get(watch).gauge().sign() > 0
                ? Arrays.stream(values).max().orElseThrow()
                : Arrays.stream(values).min().orElseThrow();
    }

    /** What the instrument shows in each draw that reaches a step. */
    private double[] shown(int step, int watch, boolean atWorst) {
        Gauge gauge = watches.get(watch).gauge();
        String stream = watches.get(watch).stream();
        long missing = CounterStream.channel(stream + "/left out");
        long error = CounterStream.channel(stream + "/instrument");
        double[] shown = new double[draws.size()];
        int count = 0;
        for (int draw = 0; draw < shown.length; draw++) {
            Drawn of = draws.get(draw);
            if (of.steps <= step) {
                continue;
            }
            double value = (atWorst ? of.worst : of.end)[step][watch];
            double way = value - of.start[watch];
            double left = Math.hypot(gauge.missing() * way, gauge.missingSi()) / 2;
            double truth = value + left * CounterStream.normal(seed, missing, draw);
            shown[count++] =
                    gauge.within(
                            truth
                                    + gauge.errorSi(truth)
                                            / 2
                                            * CounterStream.normal(seed, error, draw, step));
        }
        return Arrays.copyOf(shown, count);
    }

    private static Band band(double[] sample) {
        double[] sorted = sample.clone();
        Arrays.sort(sorted);
        return new Band(
                Quantiles.ofSorted(sorted, TAIL),
                Quantiles.ofSorted(sorted, 1 - TAIL),
                COVERAGE,
                METHOD,
                sample.length,
                Math.max(
                        Quantiles.standardError(sorted, TAIL),
                        Quantiles.standardError(sorted, 1 - TAIL)));
    }

    List<StepReadings> steps() {
        return steps;
    }

    /** Steps that are not cut. */
    int whole() {
        return atEnd.size();
    }

    int draws() {
        return draws.size();
    }

    /** End of the bands over all steps on the side of the limit, in what the instrument shows. */
    double predicted(int watch) {
        int sign = watches.get(watch).gauge().sign();
        double most = -Double.POSITIVE_INFINITY;
        for (List<Band> step : worst) {
            Band band = step.get(watch);
            most = Math.max(most, sign > 0 ? band.high() : -band.low());
        }
        return sign * most;
    }

    /**
     * How many times as far from its start as declared a reading may be at the end of a step and
     * still lie in its band.
     */
    double within(int step, int watch) {
        int sign = watches.get(watch).gauge().sign();
        Band band = atEnd.get(step).get(watch);
        double start = trace.atStart(watch);
        double moved = sign * (trace.atEnd(step, watch) - start);
        double most = sign > 0 ? band.high() - start : start - band.low();
        return moved > 0 ? Math.max(1, most / moved) : Double.POSITIVE_INFINITY;
    }

    /**
     * Time of the first limit of any kind that 97.5 % of the draws do not reach sooner, the last
     * level held on, s; as far as it was followed where they reach none.
     */
    double firstLimitS() {
        double[] firsts = draws.stream().mapToDouble(draw -> draw.firstS).sorted().toArray();
        double planned = steps.get(whole() - 1).endS();
        return Math.min(
                firsts[(int) Math.floor(TAIL * firsts.length)], planned + Prediction.HELD_ON_S);
    }

    List<String> notes() {
        return List.of(
                "fans follow their throttle at once: a spool lag is left out, so that a reading is taken at the end of a hold",
                "air is still but for what the fans move, and as warm everywhere as declared");
    }
}
