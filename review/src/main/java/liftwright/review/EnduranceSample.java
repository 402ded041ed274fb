package liftwright.review;

import java.util.Arrays;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/** Time in the air of one plant over the draws of its declared doubt, unlike cells included. */
final class EnduranceSample implements Sample {

    /** Moments of a hover at which lift over weight at full throttle is told, s. */
    static final double[] MARKS_S = {10, 30, 60};

    private static final Cause[] CAUSES = Cause.values();

    private final Plant plant;
    private final Task task;
    private final double[] widthScale;
    private final Settings settings;
    private double[] airS = new double[0];
    private double[][] ratioAtMark = new double[MARKS_S.length][0];
    private boolean[][] reachedMark = new boolean[MARKS_S.length][0];
    private int[] cause = new int[0];
    private boolean[] solved = new boolean[0];
    private int count;

    /**
     * @param widthScale factor on the doubt of each declared input
     */
    EnduranceSample(Plant plant, Task task, double[] widthScale, Settings settings) {
        this.plant = plant;
        this.task = task;
        this.widthScale = widthScale.clone();
        this.settings = settings;
    }

    static EnduranceSample of(Plant plant, Task task, Settings settings) {
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        return new EnduranceSample(plant, task, asDeclared, settings);
    }

    private static final class Scratch {
        final Discharge run;
        final double[] p;

        Scratch(Plant plant) {
            run = plant.discharge();
            run.stopAtFirst(true);
            p = new double[plant.parameters().size()];
        }
    }

    @Override
    public boolean extendTo(int target, Work work) {
        if (target <= count) {
            return true;
        }
        airS = Arrays.copyOf(airS, target);
        cause = Arrays.copyOf(cause, target);
        solved = Arrays.copyOf(solved, target);
        for (int mark = 0; mark < MARKS_S.length; mark++) {
            ratioAtMark[mark] = Arrays.copyOf(ratioAtMark[mark], target);
            reachedMark[mark] = Arrays.copyOf(reachedMark[mark], target);
        }
        count =
                Draws.forEach(
                        work,
                        settings.threads(),
                        count,
                        target,
                        () -> new Scratch(plant),
                        this::draw);
        return count >= target;
    }

    /** A draw that cannot be, or finds no operating point, counts as no time, and is counted. */
    private void draw(Scratch scratch, int draw) {
        cause[draw] = -1;
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
            scratch.run.load(scratch.p, new CellDraw.Drawn(settings.seed(), draw, widthScale));
        } catch (ImpossibleValueException beyond) {
            return;
        }
        double weightN = plant.weightN(scratch.p);
        scratch.run.start();
        marks(plant.rig(), task, scratch.run, weightN, draw, ratioAtMark, reachedMark);
        double time = task.run(plant.rig(), scratch.run, weightN, run -> {});
        solved[draw] = !scratch.run.failed();
        if (solved[draw]) {
            airS[draw] = time;
            scratch.run
                    .ended()
                    .ifPresent(end -> cause[draw] = Arrays.asList(CAUSES).indexOf(end.cause()));
        }
    }

    /** Hovers from mark to mark; the run then goes on from the last one that it reached. */
    static void marks(
            Rig rig,
            Task task,
            Discharge run,
            double weightN,
            int draw,
            double[][] ratioAtMark,
            boolean[][] reachedMark) {
        if (!(task instanceof Task.Hover)) {
            return;
        }
        for (int mark = 0; mark < MARKS_S.length; mark++) {
            if (!run.follow(new Order.Lift(weightN), MARKS_S[mark] - run.timeS(), moment -> {})) {
                return;
            }
            var full = run.fullThrottleLiftN();
            if (full.isPresent()) {
                ratioAtMark[mark][draw] = full.getAsDouble() / weightN;
                reachedMark[mark][draw] = true;
            }
        }
    }

    @Override
    public double[] values(int draws) {
        return Arrays.copyOf(airS, draws);
    }

    @Override
    public int failed(int draws) {
        int failed = 0;
        for (int i = 0; i < draws; i++) {
            failed += solved[i] ? 0 : 1;
        }
        return failed;
    }

    /** Lift over weight at full throttle at a mark, in the draws that fly so long. */
    double[] ratiosAtMark(int mark, int draws) {
        double[] found = new double[draws];
        int next = 0;
        for (int i = 0; i < draws; i++) {
            if (reachedMark[mark][i]) {
                found[next++] = ratioAtMark[mark][i];
            }
        }
        return Arrays.copyOf(found, next);
    }

    /** Share of the draws that a cause ends first. */
    double shareEndedBy(Cause wanted, int draws) {
        int hits = 0;
        for (int i = 0; i < draws; i++) {
            hits += cause[i] >= 0 && CAUSES[cause[i]] == wanted ? 1 : 0;
        }
        return (double) hits / draws;
    }
}
