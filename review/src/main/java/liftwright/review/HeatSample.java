package liftwright.review;

import java.util.Arrays;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.supply.CellDraw;

/**
 * Time in the air within every limit over the draws of the declared doubt. The first draws are
 * flown whole, so that the time and the hottest moment of each part have bands too; later ones only
 * as far as the verdict needs.
 */
final class HeatSample extends Sample<HeatSample.Scratch> {

    /** Draws of which every part is told. */
    static final int TOLD_DRAWS = Stage.FIRST_DRAWS;

    private final HeatCase asked;
    private final int told;
    private double[] airS = new double[0];

    /** When each part is at its limit in a flight onwards, by draw, then part; infinite: never. */
    private double[][] reachedS = new double[0][];

    /** The hottest each part gets in what is asked, rest included. */
    private double[][] hottestK = new double[0][];

    /**
     * @param told draws of which every part is told: {@link #TOLD_DRAWS}, or 0 where only the
     *     judged number is wanted
     */
    HeatSample(Plant plant, HeatCase asked, double[] widthScale, Settings settings, int told) {
        super(plant, widthScale, settings);
        this.asked = asked;
        this.told = told;
    }

    /** A run to be made. */
    static final class Scratch {
        final Discharge run;
        final double[] p;

        Scratch(Plant plant) {
            run = plant.discharge();
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
        int whole = Math.min(told, target);
        if (whole > reachedS.length) {
            int parts = plant.heatParts().size();
            int before = reachedS.length;
            reachedS = Arrays.copyOf(reachedS, whole);
            hottestK = Arrays.copyOf(hottestK, whole);
            for (int draw = before; draw < whole; draw++) {
                reachedS[draw] = new double[parts];
                hottestK[draw] = new double[parts];
            }
        }
    }

    @Override
    boolean solve(Scratch scratch, int draw) {
        Discharge run = scratch.run;
        try {
            plant.parameters().draw(settings.seed(), draw, widthScale, scratch.p);
            run.load(scratch.p, new CellDraw.Drawn(settings.seed(), draw, widthScale));
        } catch (ImpossibleValueException beyond) {
            if (draw < told) {
                Arrays.fill(reachedS[draw], Double.POSITIVE_INFINITY);
            }
            return false;
        }
        HeatFlight flight = asked.flight(plant, scratch.p);
        run.stopAtFirst(true);
        airS[draw] = draw < told ? told(flight, run, draw) : flight.withinLimitsS(run);
        if (run.failed()) {
            airS[draw] = 0;
            return false;
        }
        return true;
    }

    /** The same number; on the way what each part comes to. */
    private double told(HeatFlight flight, Discharge run, int draw) {
        run.stopAtFirst(false);
        flight.begin(run);
        flight.onwards(run, moment -> {});
        double flownS = flight.airS(run.firstS());
        boolean failed = run.failed();
        for (int part = 0; part < reachedS[draw].length; part++) {
            reachedS[draw][part] = run.heatReachedS(part).orElse(Double.POSITIVE_INFINITY);
        }
        flight.begin(run);
        if (!failed && flight.asked(run, moment -> {})) {
            flight.soak(run, moment -> {});
        }
        for (int part = 0; part < hottestK[draw].length; part++) {
            hottestK[draw][part] = run.hottestK(part);
        }
        if (flownS < flight.askedS() || run.failed() || run.firstS() == Double.POSITIVE_INFINITY) {
            return flownS;
        }
        run.stopAtFirst(true);
        return flight.longestS(run);
    }

    @Override
    double[] values(int draws) {
        return Arrays.copyOf(airS, draws);
    }

    /** Draws of which every part is told, among so many. */
    int toldDraws(int draws) {
        return Math.min(draws, reachedS.length);
    }

    /** When a part is at its limit in the draws that tell; infinite where it never is. */
    double[] reachedS(int part, int draws) {
        return column(reachedS, part, draws);
    }

    /** The hottest a part gets in what is asked, in the draws that tell. */
    double[] hottestK(int part, int draws) {
        return column(hottestK, part, draws);
    }

    private double[] column(double[][] of, int part, int draws) {
        double[] found = new double[toldDraws(draws)];
        int next = 0;
        for (int draw = 0; draw < found.length; draw++) {
            if (isSolved(draw)) {
                found[next++] = of[draw][part];
            }
        }
        return Arrays.copyOf(found, next);
    }
}
