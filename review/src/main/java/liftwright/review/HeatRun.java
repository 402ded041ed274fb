package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.rig.table.StartState;

/**
 * The flights at the declared values, with what was seen on the way.
 *
 * @param onwards the flight until something ends all flying, past every limit before
 * @param first the first limit of that flight
 * @param curve its temperatures
 * @param extremes what packs and fans came to in it
 * @param asked the flight that is asked for with the rest after it
 * @param askedFirst the first limit of that
 * @param played its temperatures
 * @param flownS when the rest began, s since the start
 * @param wholeRest whether the flight went as far as asked, so that the rest could follow
 * @param energy where the energy went until the rest began
 * @param left what the parts were left with when the rest began
 * @param closure greatest power unaccounted for at any step, over all power
 */
record HeatRun(
        Discharge onwards,
        Optional<Discharge.End> first,
        List<HeatMoments.Moment> curve,
        Extremes extremes,
        Discharge asked,
        Optional<Discharge.End> askedFirst,
        List<HeatMoments.Moment> played,
        double flownS,
        boolean wholeRest,
        Energy energy,
        StartState left,
        double closure) {

    private static final int CURVE_MOMENTS = 120;
    private static final int PLAYED_MOMENTS = 60;

    /** A part whose last tenth of the flight adds less than this share of its rise has settled. */
    private static final double SETTLED_SHARE = 0.02;

    /**
     * Energy by receiver, J.
     *
     * @param sourceJ given up by the cells, their own heat included
     * @param shaftJ into the rotors
     * @param partJ heat made in each heat part
     */
    record Energy(double sourceJ, double shaftJ, List<Double> partJ) {

        /** What no receiver accounts for, over the whole. */
        double closure() {
            double sum = shaftJ;
            for (double part : partJ) {
                sum += part;
            }
            return sourceJ == 0 ? Math.abs(sum) : Math.abs(sourceJ - sum) / Math.abs(sourceJ);
        }
    }

    /** The worst that packs and fans came to in a flight. */
    static final class Extremes implements Discharge.Watcher {
        private final double[] leastCellV;
        private final double[] leastCharge;
        private final double[] mostA;
        private final double[] leastFanV;
        private double throttle;

        Extremes(Plant plant) {
            int packs = plant.rig().packs().size();
            leastCellV = filled(packs, Double.POSITIVE_INFINITY);
            leastCharge = filled(packs, Double.POSITIVE_INFINITY);
            mostA = filled(packs, Double.NEGATIVE_INFINITY);
            leastFanV = filled(plant.rig().fans().size(), Double.POSITIVE_INFINITY);
        }

        private static double[] filled(int size, double with) {
            double[] array = new double[size];
            java.util.Arrays.fill(array, with);
            return array;
        }

        @Override
        public void at(Discharge run) {
            for (int pack = 0; pack < mostA.length; pack++) {
                leastCellV[pack] = Math.min(leastCellV[pack], run.leastCellV(pack));
                leastCharge[pack] = Math.min(leastCharge[pack], run.leastChargeLeft(pack));
                mostA[pack] = Math.max(mostA[pack], run.packA(pack));
            }
            for (int fan = 0; fan < leastFanV.length; fan++) {
                double volt = run.network().loadTerminalV(fan);
                if (volt > 0) {
                    leastFanV[fan] = Math.min(leastFanV[fan], volt);
                }
            }
            throttle = Math.max(throttle, run.fans().throttle());
        }

        double leastCellV(int pack) {
            return leastCellV[pack];
        }

        double leastCharge(int pack) {
            return Math.max(0, leastCharge[pack]);
        }

        double mostA(int pack) {
            return mostA[pack];
        }

        double leastFanV(int fan) {
            return leastFanV[fan];
        }

        double throttle() {
            return throttle;
        }
    }

    static HeatRun of(Plant plant, HeatFlight flight) {
        int parts = plant.heatParts().size();
        double[] closure = {0};

        Discharge onwards = HeatJudge.declared(plant, false);
        var curve = new HeatMoments(parts, CURVE_MOMENTS);
        var extremes = new Extremes(plant);
        flight.begin(onwards);
        flight.onwards(
                onwards,
                run -> {
                    curve.at(run);
                    extremes.at(run);
                    closure[0] = Math.max(closure[0], run.network().closure());
                });

        Discharge asked = HeatJudge.declared(plant, false);
        var played = new HeatMoments(parts, PLAYED_MOMENTS);
        flight.begin(asked);
        boolean whole = flight.asked(asked, played);
        double flownS = asked.timeS();
        Energy energy = energy(asked, parts);
        StartState left = asked.stateNow();
        if (whole) {
            flight.soak(asked, played);
        }
        return new HeatRun(
                onwards,
                onwards.ended(),
                curve.all(),
                extremes,
                asked,
                asked.ended(),
                played.all(),
                flownS,
                whole,
                energy,
                left,
                closure[0]);
    }

    private static Energy energy(Discharge run, int parts) {
        List<Double> partJ = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            partJ.add(run.energyJ(part));
        }
        return new Energy(run.givenJ(), run.shaftJ(), partJ);
    }

    /** When a part is at its limit in the flight onwards. */
    OptionalDouble reached(int part) {
        return onwards.heatReachedS(part);
    }

    /** When a cause first held in the flight onwards. */
    OptionalDouble reached(Cause cause, int part) {
        return onwards.reached(cause, part);
    }

    /** Whether a part was still getting warmer when the flight onwards ended. */
    boolean isRising(int part) {
        if (curve.size() < 3) {
            return true;
        }
        double endS = curve.getLast().timeS();
        HeatMoments.Moment before = curve.getFirst();
        for (HeatMoments.Moment moment : curve) {
            if (moment.timeS() <= 0.9 * endS) {
                before = moment;
            }
        }
        double last = curve.getLast().kelvin().get(part);
        double rise = last - curve.getFirst().kelvin().get(part);
        return last - before.kelvin().get(part) > SETTLED_SHARE * Math.abs(rise);
    }
}
