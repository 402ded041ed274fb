package liftwright.plant.identify;

import java.util.Arrays;
import java.util.List;
import liftwright.physics.CellLaw;
import liftwright.rig.CellType;

/**
 * One cell in numbers: rest voltage over charge behind a resistance and slow pairs; every
 * resistance grows with the same factors of charge and temperature, capacitances stay.
 */
final class CellModel {

    /** Slow pairs that a cell has at most. */
    static final int PAIRS = 2;

    private static final double ROUNDED = 0.005;

    double capacityAs;

    /** R0 at 25 °C and half charge, Ω. */
    double instantOhm;

    /** Of each slow pair at 25 °C and half charge, Ω; 0 where there is none. */
    final double[] slowOhm = new double[PAIRS];

    /** Time constant of each, s. */
    final double[] slowS = {1, 1};

    /** B of R = R25 · exp(B (1/T − 1/298.15 K)), K. */
    double temperatureCoefficientK;

    final double[] openCharge;
    final double[] openVolt;
    final double[] shapeCharge;
    final double[] shapeFactor;

    CellModel(List<Double> openCharge, List<Double> shapeCharge) {
        this.openCharge = doubles(openCharge);
        openVolt = new double[openCharge.size()];
        this.shapeCharge = doubles(shapeCharge);
        shapeFactor = new double[shapeCharge.size()];
    }

    static double[] doubles(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    CellType.Curve openCircuit() {
        return new CellType.Curve(list(openCharge), list(openVolt));
    }

    CellType.Shape shape() {
        return new CellType.Shape(list(shapeCharge), list(shapeFactor));
    }

    double openV(double charge) {
        return mean(openCharge, openVolt, charge);
    }

    double factor(double charge, double kelvin) {
        return mean(shapeCharge, shapeFactor, charge)
                * CellLaw.temperatureFactor(temperatureCoefficientK, kelvin);
    }

    /**
     * Mean of a curve within half a percent of charge to either side: a fit needs a curve without
     * corners. Away from its points it is the curve; at a corner of 1 V per full charge it lies 1.3
     * mV inside.
     */
    private static double mean(double[] points, double[] values, double at) {
        if (points.length == 1) {
            return values[0];
        }
        return (area(points, values, at + ROUNDED) - area(points, values, at - ROUNDED))
                / (2 * ROUNDED);
    }

    /** Area under a curve from its first point on; the end values hold beyond the ends. */
    private static double area(double[] points, double[] values, double to) {
        if (to <= points[0]) {
            return (to - points[0]) * values[0];
        }
        double sum = 0;
        int k = 1;
        while (k < points.length && points[k] < to) {
            sum += (points[k] - points[k - 1]) * (values[k] + values[k - 1]) / 2;
            k++;
        }
        if (k == points.length) {
            return sum + (to - points[k - 1]) * values[k - 1];
        }
        double share = (to - points[k - 1]) / (points[k] - points[k - 1]);
        double value = values[k - 1] + share * (values[k] - values[k - 1]);
        return sum + (to - points[k - 1]) * (values[k - 1] + value) / 2;
    }

    /** Share of charge left after a cell gave so much. */
    double chargeLeft(double start, double passedAs) {
        return start - passedAs / capacityAs;
    }
}
