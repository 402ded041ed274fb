package liftwright.review;

import java.util.Arrays;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;

/** Time in the air of one plant over the draws of its declared doubt, unlike cells included. */
final class EnduranceSample extends Sample<EnduranceSample.Scratch> {

    /** Moments of a hover at which lift over weight at full throttle is told, s. */
    static final double[] MARKS_S = {10, 30, 60};

    private static final Cause[] CAUSES = Cause.values();

    private final Task task;
    private double[] airS = new double[0];
    private double[][] ratioAtMark = new double[MARKS_S.length][0];
    private boolean[][] reachedMark = new boolean[MARKS_S.length][0];
    private int[] cause = new int[0];

    EnduranceSample(Plant plant, Task task, double[] widthScale, Settings settings) {
        super(plant, widthScale, settings);
        this.task = task;
    }

    /** A run to be made. */
    static final class Scratch {
        final Discharge run;
        final double[] p;

        Scratch(Plant plant) {
            run = plant.discharge();
            run.stopAtFirst(true);
            p = new double[plant.parameters().size()];
        }
    }

    @Override
    Scratch scratch() {
        return new Scratch(plant);
    }

    @Override
    void reserve(int target) {
        airS = Arrays.copyOf(airS, target);
        cause = Arrays.copyOf(cause, target);
        for (int mark = 0; mark < MARKS_S.length; mark++) {
            ratioAtMark[mark] = Arrays.copyOf(ratioAtMark[mark], target);
            reachedMark[mark] = Arrays.copyOf(reachedMark[mark], target);
        }
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        cause[draw] = -1;
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
            scratch.run.load(scratch.p, new CellDraw.Drawn(settings.seed(), draw, widthScale));
        } catch (ImpossibleValueException beyond) {
            return false;
        }
        double weightN = plant.weightN(scratch.p);
        scratch.run.start();
        marks(plant.rig(), task, scratch.run, weightN, draw, ratioAtMark, reachedMark);
        double time = task.run(plant.rig(), scratch.run, weightN, run -> {});
        if (scratch.run.failed()) {
            return false;
        }
        airS[draw] = time;
        scratch.run
                .ended()
                .ifPresent(end -> cause[draw] = Arrays.asList(CAUSES).indexOf(end.cause()));
        return true;
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
    double[] values(int draws) {
        return Arrays.copyOf(airS, draws);
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
