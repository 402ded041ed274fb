package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.numerics.Draws;
import liftwright.numerics.Kept;
import liftwright.numerics.Quantiles;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.plant.Runaway;
import liftwright.plant.motion.RunawayCase;
import liftwright.plant.motion.RunawayCase.Start;
import liftwright.plant.motion.RunawayCase.Trigger;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Stop;
import liftwright.plant.motion.Surroundings;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.Band;
import liftwright.review.runaway.RunawayReview.Run;

/** All runs of one review. */
final class RunawayRuns {

    /** A climb that nothing stops is followed so long, s. */
    private static final double UNSTOPPED_S = 4;

    /** After the kill it is followed so long: up, and down again, s. */
    private static final double AFTER_KILL_S = 25;

    /**
     * Lift over weight less 1 of a throttle frozen in a hover whose motors warm: a hot motor gives
     * up to 11 % more thrust at the same duty.
     */
    static final double WARM_EXCESS = 0.11;

    /** A band needs so many draws. */
    private static final int LEAST_DRAWS = 200;

    private static final double COVERAGE = 0.95;

    /** What went wrong and what came of it under the slowest kill. */
    record Wrong(String words, RunawayPath path) {}

    private final Plant plant;
    private final Runaway runaway;
    private final List<Run> runs;

    private RunawayRuns(Plant plant, Runaway runaway, List<Run> runs) {
        this.plant = plant;
        this.runaway = runaway;
        this.runs = runs;
    }

    static RunawayRuns of(
            Plant plant, List<KillPath> kills, long seed, int draws, int threads, Work work) {
        Runaway runaway = plant.runaway();
        runaway.load(plant.parameters().nominal());
        List<RunawayPath> paths = new ArrayList<>();
        for (KillPath kill : kills) {
            paths.add(runaway.run(usual(plant, kill.stop(), Surroundings.OPEN), true));
        }
        double[][][] drawn = drawn(plant, kills, paths, seed, draws, threads, work);
        List<Run> runs = new ArrayList<>();
        for (int k = 0; k < paths.size(); k++) {
            runs.add(new Run(kills.get(k), paths.get(k), band(drawn[0][k]), band(drawn[1][k])));
        }
        return new RunawayRuns(plant, runaway, runs);
    }

    RunawayReview review() {
        List<Section> sections = new ArrayList<>(RunawayTables.of(this));
        List<Finding> findings = new ArrayList<>(RunawayFindings.of(this));
        Optional<Overhead> overhead = Overhead.of(plant);
        overhead.ifPresent(
                above -> {
                    sections.add(above.table(this));
                    findings.addAll(above.findings(this));
                });
        NoWayOut heights = NoWayOut.of(this, overhead);
        sections.add(heights.plot());
        findings.addAll(heights.findings());
        return new RunawayReview(sections, findings, runs);
    }

    Plant plant() {
        return plant;
    }

    Runaway runaway() {
        return runaway;
    }

    List<Run> runs() {
        return runs;
    }

    /** The slowest kill that ends a runaway. */
    Optional<Run> slowest() {
        return new RunawayReview(List.of(), List.of(), runs).slowest();
    }

    /** When and how a runaway is stopped that is to be looked at from other sides. */
    Stop slowestStop() {
        return slowest().map(run -> run.kill().stop()).orElse(Stop.NEVER);
    }

    /** Everything that can go wrong, under the slowest kill. */
    List<Wrong> wrongs() {
        Stop stop = slowestStop();
        double heightM = plant.rig().demands().height().si();
        List<Wrong> all = new ArrayList<>();
        all.add(
                wrong(
                        "every fan at full, standing on the ground",
                        new Trigger.AllFull(),
                        new Start.Ground(),
                        stop));
        all.add(wrong("every fan at full, hovering", new Trigger.AllFull(), start(heightM), stop));
        if (plant.rig().control().groups().size() > 1) {
            for (var group : plant.rig().control().groups()) {
                all.add(
                        wrong(
                                group.name() + " at full, hovering",
                                new Trigger.GroupFull(group.name()),
                                start(heightM),
                                stop));
            }
        }
        all.add(
                wrong(
                        "throttle frozen at hover while motors warm",
                        new Trigger.FrozenHover(WARM_EXCESS),
                        start(heightM),
                        stop));
        return all;
    }

    private Wrong wrong(String words, Trigger trigger, Start start, Stop stop) {
        return new Wrong(
                words,
                runaway.run(
                        new RunawayCase(trigger, start, stop, Surroundings.OPEN, horizonS(stop)),
                        false));
    }

    private static Start start(double heightM) {
        return heightM > 0 ? new Start.Hover(heightM) : new Start.Ground();
    }

    /** Every fan at full from a hover at the height that is asked. */
    static RunawayCase usual(Plant plant, Stop stop, Surroundings around) {
        return new RunawayCase(
                new Trigger.AllFull(),
                start(plant.rig().demands().height().si()),
                stop,
                around,
                horizonS(stop));
    }

    static double horizonS(Stop stop) {
        return stop.firstS() < Double.POSITIVE_INFINITY
                ? stop.firstS() + AFTER_KILL_S
                : UNSTOPPED_S;
    }

    /** Apex and impact of every kill in every draw that could be followed to the ground. */
    private static double[][][] drawn(
            Plant plant,
            List<KillPath> kills,
            List<RunawayPath> nominal,
            long seed,
            int draws,
            int threads,
            Work work) {
        double[][][] all = new double[2][kills.size()][draws];
        boolean[][] told = new boolean[kills.size()][draws];
        int made = 0;
        if (draws > 0) {
            work.stage("runaways", draws);
            made =
                    Draws.forEachKept(
                            work,
                            threads,
                            0,
                            draws,
                            () -> new Scratch(plant),
                            (scratch, draw) -> {
                                if (!scratch.load(seed, draw)) {
                                    return;
                                }
                                for (int k = 0; k < kills.size(); k++) {
                                    if (nominal.get(k).impact().isPresent()) {
                                        RunawayPath path =
                                                scratch.runaway.run(
                                                        usual(
                                                                plant,
                                                                kills.get(k).stop(),
                                                                Surroundings.OPEN),
                                                        false);
                                        told[k][draw] = !path.failed() && path.impact().isPresent();
                                        all[0][k][draw] = path.apex().heightM();
                                        all[1][k][draw] =
                                                path.impact().map(at -> -at.upMps()).orElse(0.0);
                                    }
                                }
                            },
                            form(all, told));
        }
        for (int k = 0; k < kills.size(); k++) {
            for (double[][] figure : all) {
                figure[k] = kept(figure[k], told[k], made);
            }
        }
        return all;
    }

    /** Of each kill whether a draw told it, its apex and its impact. */
    private static Kept.Form form(double[][][] all, boolean[][] told) {
        return new Kept.Form() {
            @Override
            public double[] numbers(int draw) {
                double[] numbers = new double[3 * told.length];
                for (int k = 0; k < told.length; k++) {
                    numbers[3 * k] = told[k][draw] ? 1 : 0;
                    numbers[3 * k + 1] = all[0][k][draw];
                    numbers[3 * k + 2] = all[1][k][draw];
                }
                return numbers;
            }

            @Override
            public void putBack(int draw, double[] numbers) {
                for (int k = 0; k < told.length; k++) {
                    told[k][draw] = numbers[3 * k] > 0;
                    all[0][k][draw] = numbers[3 * k + 1];
                    all[1][k][draw] = numbers[3 * k + 2];
                }
            }
        };
    }

    private static double[] kept(double[] values, boolean[] told, int made) {
        double[] kept = new double[made];
        int count = 0;
        for (int draw = 0; draw < made; draw++) {
            if (told[draw]) {
                kept[count++] = values[draw];
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static Optional<Band> band(double[] sample) {
        if (sample.length < LEAST_DRAWS) {
            return Optional.empty();
        }
        Arrays.sort(sample);
        double tail = (1 - COVERAGE) / 2;
        return Optional.of(
                new Band(
                        Quantiles.ofSorted(sample, tail),
                        Quantiles.ofSorted(sample, 1 - tail),
                        COVERAGE,
                        "sampled from the declared tolerances",
                        sample.length,
                        Math.max(
                                Quantiles.standardError(sample, tail),
                                Quantiles.standardError(sample, 1 - tail))));
    }

    /** One thread's. */
    private static final class Scratch {
        private final Plant plant;
        private final Runaway runaway;
        private final double[] p;
        private final double[] turning;

        Scratch(Plant plant) {
            this.plant = plant;
            runaway = plant.runaway();
            p = new double[plant.parameters().size()];
            turning = new double[runaway.inertia().table().size()];
        }

        boolean load(long seed, int draw) {
            try {
                plant.parameters().draw(seed, draw, p);
                runaway.inertia().table().draw(seed, draw, turning);
            } catch (ImpossibleValueException beyond) {
                return false;
            }
            runaway.load(p, turning);
            return true;
        }
    }
}
