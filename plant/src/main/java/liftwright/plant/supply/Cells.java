package liftwright.plant.supply;

import java.util.List;
import liftwright.physics.CellLaw;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.Range;
import liftwright.rig.Pack;

/**
 * All cells of a rig in numbers, in one thread: what a run needs of them, at one vector. Cells side
 * by side in a pack count as one group; groups count through the rig, pack by pack.
 */
public final class Cells {

    /** Slow pairs that a cell can have; unused ones have no resistance. */
    public static final int PAIRS = 2;

    final int[] series;
    final int[] parallel;

    /** First group of each pack, and one more. */
    final int[] start;

    final double[] startCharge;
    final double[] capacityAs;
    final double[] instantOhm;

    /** Part of a new cell's capacity that is left. */
    final double[] capacityLeft;

    /** Factor of temperature and age on all resistances. */
    final double[] warm;

    /** Temperature that these are taken at, and coefficient of it, K. */
    final double[] startK;

    final double[] temperatureCoefficientK;

    final double[] offsetV;
    final double[] interconnectOhm;
    final double[] slowOhm;
    final double[] slowS;
    final double[][] openCharge;
    final double[][] openVolt;

    /** Factor of charge on all resistances, at charges. */
    final double[][] shapeCharge;

    final double[][] shapeFactor;

    /** Deviations of single groups about their pack, and what they make: capacity, share of R0. */
    final double[] nominalCapacity;

    final double[] nominalResistance;
    final double[] capacityOff;
    final double[] resistanceOff;
    final double[] perAs;
    final double[] share;

    // Of each pack's groups: least, most and sum of what 1 A·s takes, sum of shares and of both.
    private final double[] leastPerAs;
    private final double[] mostPerAs;
    private final double[] sumPerAs;
    private final double[] sumShare;
    private final double[] sumSharePerAs;

    Cells(List<Pack> packs) {
        int count = packs.size();
        series = packs.stream().mapToInt(Pack::series).toArray();
        parallel = packs.stream().mapToInt(Pack::parallel).toArray();
        start = new int[count + 1];
        for (int k = 0; k < count; k++) {
            start[k + 1] = start[k] + series[k];
        }
        startCharge = new double[count];
        capacityAs = new double[count];
        instantOhm = new double[count];
        capacityLeft = new double[count];
        warm = new double[count];
        startK = new double[count];
        temperatureCoefficientK = new double[count];
        offsetV = new double[count];
        interconnectOhm = new double[count];
        slowOhm = new double[count * PAIRS];
        slowS = new double[count * PAIRS];
        openCharge = new double[count][];
        openVolt = new double[count][];
        shapeCharge = new double[count][];
        shapeFactor = new double[count][];
        int groups = start[count];
        nominalCapacity = new double[groups];
        nominalResistance = new double[groups];
        capacityOff = new double[groups];
        resistanceOff = new double[groups];
        perAs = new double[groups];
        share = new double[groups];
        leastPerAs = new double[count];
        mostPerAs = new double[count];
        sumPerAs = new double[count];
        sumShare = new double[count];
        sumSharePerAs = new double[count];
    }

    /** Turns deviations into what the cells are. */
    void scale() {
        for (int k = 0; k < series.length; k++) {
            for (int g = start[k]; g < start[k + 1]; g++) {
                double own = capacityAs[k] + capacityLeft[k] * capacityOff[g];
                if (!(own > 0)) {
                    throw new ImpossibleValueException("capacity of a cell", own, Range.POSITIVE);
                }
                perAs[g] = 1 / (parallel[k] * own);
                share[g] = 1 + warm[k] * resistanceOff[g] / instantOhm[k];
            }
            sum(k);
        }
    }

    private void sum(int k) {
        mostPerAs[k] = 0;
        leastPerAs[k] = Double.POSITIVE_INFINITY;
        sumPerAs[k] = 0;
        sumShare[k] = 0;
        sumSharePerAs[k] = 0;
        for (int g = start[k]; g < start[k + 1]; g++) {
            mostPerAs[k] = Math.max(mostPerAs[k], perAs[g]);
            leastPerAs[k] = Math.min(leastPerAs[k], perAs[g]);
            sumPerAs[k] += perAs[g];
            sumShare[k] += share[g];
            sumSharePerAs[k] += share[g] * perAs[g];
        }
    }

    public int packs() {
        return series.length;
    }

    /** Number of a pack's first group, counted through the rig. */
    public int firstGroup(int pack) {
        return start[pack];
    }

    /** Charge of a whole pack, A·s. */
    public double packCapacityAs(int pack) {
        return parallel[pack] * capacityAs[pack];
    }

    /** Share of charge left in a group after a pack gave so much, 1; may be negative. */
    double chargeLeft(int pack, int group, double passedAs) {
        return startCharge[pack] - passedAs * perAs[group];
    }

    /** Share of charge left in the group that has least, 1. */
    public double leastChargeLeft(int pack, double passedAs) {
        return startCharge[pack] - passedAs * (passedAs >= 0 ? mostPerAs : leastPerAs)[pack];
    }

    /** Share of charge left in the group that has most, 1. */
    private double mostChargeLeft(int pack, double passedAs) {
        return startCharge[pack] - passedAs * (passedAs >= 0 ? leastPerAs : mostPerAs)[pack];
    }

    /**
     * Upper end of the one segment of a table in which all groups of a pack are, so that their sum
     * is that of a straight line; 0 where they are in several, or beyond the ends.
     */
    private int common(int pack, double passedAs, double[] charge) {
        double least = leastChargeLeft(pack, passedAs);
        int k = segment(charge, least, 1);
        boolean within = least >= charge[k - 1] && mostChargeLeft(pack, passedAs) <= charge[k];
        return within ? k : 0;
    }

    /** Voltage of the pack behind its resistance R0: rest voltages less the slow ones, V. */
    double emfV(int pack, double passedAs, double[] slowV) {
        double sum = series[pack] * offsetV[pack];
        double[] charge = openCharge[pack];
        double[] volt = openVolt[pack];
        int k = common(pack, passedAs, charge);
        if (k > 0) {
            double slope = (volt[k] - volt[k - 1]) / (charge[k] - charge[k - 1]);
            double beyond = series[pack] * (startCharge[pack] - charge[k - 1]);
            sum += series[pack] * volt[k - 1] + slope * (beyond - passedAs * sumPerAs[pack]);
        } else {
            int hint = 1;
            for (int g = start[pack]; g < start[pack + 1]; g++) {
                double left = chargeLeft(pack, g, passedAs);
                hint = segment(charge, left, hint);
                sum += between(charge, volt, left, hint);
            }
        }
        for (int pair = 0; pair < PAIRS; pair++) {
            sum -= series[pack] * slowV[pack * PAIRS + pair];
        }
        return sum;
    }

    /** Rest voltage of a pack's mean cell at a share of charge, V. */
    public double restV(int pack, double charge) {
        double[] points = openCharge[pack];
        return between(points, openVolt[pack], charge, segment(points, charge, 1)) + offsetV[pack];
    }

    /** R0 of a pack's mean cell at a share of charge, as warm and as old as it starts, Ω. */
    public double instantOhm(int pack, double charge) {
        return instantOhm[pack] * shape(pack, charge);
    }

    /**
     * Slow resistance of a pack's mean cell, likewise, Ω; 0 of a pair that it lacks.
     *
     * @param pair 0 to {@link #PAIRS} − 1
     */
    public double slowOhm(int pack, int pair, double charge) {
        return slowOhm[pack * PAIRS + pair] * shape(pack, charge);
    }

    /** Time constant of such a pair at the start, s. */
    public double slowS(int pack, int pair) {
        return slowS[pack * PAIRS + pair];
    }

    /** Of links and leads inside a pack, Ω. */
    public double interconnectOhm(int pack) {
        return interconnectOhm[pack];
    }

    /** Factor that the temperature at the start has on all resistances of a pack's cells. */
    public double startWarmth(int pack) {
        return CellLaw.temperatureFactor(temperatureCoefficientK[pack], startK[pack]);
    }

    /** Factor on all resistances of a pack once its cells are so warm; 1 at their start. */
    double warmth(int pack, double cellK) {
        return CellLaw.temperatureFactor(temperatureCoefficientK[pack], cellK)
                / CellLaw.temperatureFactor(temperatureCoefficientK[pack], startK[pack]);
    }

    /** Temperature that the cells of a pack start at, K. */
    public double startK(int pack) {
        return startK[pack];
    }

    /** Share of charge that a pack starts with, 1. */
    public double startCharge(int pack) {
        return startCharge[pack];
    }

    /** Group of a pack with the greatest resistance, counted through the rig. */
    int mostResistance(int pack) {
        int most = start[pack];
        for (int g = start[pack]; g < start[pack + 1]; g++) {
            if (share[g] > share[most]) {
                most = g;
            }
        }
        return most;
    }

    /** Heat of the slow pairs of a pack's mean cell, W. */
    double slowW(int pack, double passedAs, double[] slowV, double warmth) {
        double sum = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            int at = pack * PAIRS + pair;
            if (slowOhm[at] != 0) {
                sum += slowV[at] * slowV[at] / (slowOhm[at] * meanShape(pack, passedAs) * warmth);
            }
        }
        return sum;
    }

    /**
     * Resistance that the pack shows at once, each cell at its own charge, Ω.
     *
     * @param warmth of {@link SupplyState}
     */
    double packOhm(int pack, double passedAs, double warmth) {
        double[] charge = shapeCharge[pack];
        double[] factor = shapeFactor[pack];
        double sum = 0;
        int k = charge.length < 2 ? 0 : common(pack, passedAs, charge);
        if (charge.length < 2) {
            sum = series[pack] * factor[0]; // shares have mean 1
        } else if (k > 0) {
            double slope = (factor[k] - factor[k - 1]) / (charge[k] - charge[k - 1]);
            double beyond = sumShare[pack] * (startCharge[pack] - charge[k - 1]);
            sum =
                    sumShare[pack] * factor[k - 1]
                            + slope * (beyond - passedAs * sumSharePerAs[pack]);
        } else {
            int hint = 1;
            for (int g = start[pack]; g < start[pack + 1]; g++) {
                double left = chargeLeft(pack, g, passedAs);
                hint = segment(charge, left, hint);
                sum += share[g] * between(charge, factor, left, hint);
            }
        }
        return sum * (instantOhm[pack] * warmth) / parallel[pack] + interconnectOhm[pack];
    }

    /** Factor of charge on the resistances of a pack's mean cell. */
    double meanShape(int pack, double passedAs) {
        return shape(pack, startCharge[pack] - passedAs / packCapacityAs(pack));
    }

    private double shape(int pack, double left) {
        double[] charge = shapeCharge[pack];
        double[] factor = shapeFactor[pack];
        return charge.length < 2
                ? factor[0]
                : between(charge, factor, left, segment(charge, left, 1));
    }

    /**
     * Number of the group with the least voltage under a current.
     *
     * @param warmth of {@link SupplyState}
     */
    int weakest(int pack, double passedAs, double[] slowV, double warmth, double packA) {
        int weakest = start[pack];
        double least = Double.POSITIVE_INFINITY;
        double drop = instantOhm[pack] * warmth * packA / parallel[pack];
        double[] charge = openCharge[pack];
        double[] open = openVolt[pack];
        double[] bend = shapeCharge[pack];
        double[] factor = shapeFactor[pack];
        // Cells of a pack are near each other on both curves: where the last one was is a good
        // guess.
        int onOpen = 1;
        int onShape = 1;
        for (int g = start[pack]; g < start[pack + 1]; g++) {
            double left = chargeLeft(pack, g, passedAs);
            onOpen = segment(charge, left, onOpen);
            double shape = factor[0];
            if (bend.length > 1) {
                onShape = segment(bend, left, onShape);
                shape = between(bend, factor, left, onShape);
            }
            double volt = between(charge, open, left, onOpen) - share[g] * shape * drop;
            if (volt < least) {
                least = volt;
                weakest = g;
            }
        }
        return weakest;
    }

    /** Least voltage of a cell under a current, V. */
    double leastCellV(int pack, double passedAs, double[] slowV, double warmth, double packA) {
        int weakest = weakest(pack, passedAs, slowV, warmth, packA);
        return groupV(pack, weakest, passedAs, slowV, warmth, packA);
    }

    private double groupV(
            int pack, int group, double passedAs, double[] slowV, double warmth, double packA) {
        double left = chargeLeft(pack, group, passedAs);
        double[] charge = openCharge[pack];
        double open = between(charge, openVolt[pack], left, segment(charge, left, 1));
        double volt =
                open
                        + offsetV[pack]
                        - share[group]
                                * shape(pack, left)
                                * (instantOhm[pack] * warmth)
                                * packA
                                / parallel[pack];
        for (int pair = 0; pair < PAIRS; pair++) {
            volt -= slowV[pack * PAIRS + pair];
        }
        return volt;
    }

    /** Upper end of the segment that holds {@code at}; a guess is tried first. */
    private static int segment(double[] points, double at, int hint) {
        int k = hint;
        while (k < points.length - 1 && at > points[k]) {
            k++;
        }
        while (k > 1 && at <= points[k - 1]) {
            k--;
        }
        return k;
    }

    /** Linear between points, the end values held beyond the ends. */
    private static double between(double[] points, double[] values, double at, int upper) {
        if (at <= points[upper - 1]) {
            return values[upper - 1];
        }
        if (at >= points[upper]) {
            return values[upper];
        }
        double share = (at - points[upper - 1]) / (points[upper] - points[upper - 1]);
        return values[upper - 1] + share * (values[upper] - values[upper - 1]);
    }
}
