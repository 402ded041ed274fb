package liftwright.plant.heat;

import java.util.Arrays;
import java.util.List;

/**
 * The equations of a {@link HeatLine} within a state of more: slopes, and the linear system of a
 * linearly implicit method, shells eliminated onto the copper, the copper along the line.
 */
final class HeatLineModel {

    private static final double ROOM_K = 293.15;

    private final List<HeatLine.Place> places;

    /** First component of each place: its copper or the lump, then its shells from within. */
    private final int[] at;

    private final double[] surfaceK;
    private double ampere;

    private final double[] diagonal;
    private final double[] shellPivot;
    private final double[] copperPivot;
    private double factoredS;

    /** Factors on the resistance of places. */
    private final double[] worn;

    HeatLineModel(HeatLine line, int first) {
        places = line.places();
        at = new int[places.size() + 1];
        at[0] = first;
        for (int k = 0; k < places.size(); k++) {
            at[k + 1] = at[k] + 1 + places.get(k).shellCapacity.length;
        }
        surfaceK = new double[places.size()];
        Arrays.fill(surfaceK, line.airK());
        diagonal = new double[at[places.size()]];
        shellPivot = new double[at[places.size()]];
        copperPivot = new double[places.size()];
        worn = new double[places.size()];
        Arrays.fill(worn, 1);
    }

    void ampere(double a) {
        ampere = a;
    }

    void worn(int place, double factor) {
        worn[place] = factor;
    }

    /** Component of the copper of a piece or of a lump. */
    int of(int place) {
        return at[place];
    }

    /** First component behind it. */
    int end() {
        return at[places.size()];
    }

    /** Resistance of a place as warm as it is, Ω. */
    double ohm(double[] y, int place) {
        HeatLine.Place is = places.get(place);
        return is.ohm20 * worn[place] * (1 + is.perK * (y[at[place]] - ROOM_K));
    }

    /** Heat that leaves all surfaces, W. */
    double leavesW(double[] y) {
        double sum = 0;
        for (int k = 0; k < places.size(); k++) {
            sum += places.get(k).surfaceW.applyAsDouble(surface(k, y[at[k + 1] - 1]));
        }
        return sum;
    }

    /** dT/dt of everything, K/s. */
    void slope(double[] y, double[] f) {
        Arrays.fill(f, at[0], at[places.size()], 0);
        for (int k = 0; k < places.size(); k++) {
            HeatLine.Place place = places.get(k);
            int i = at[k];
            int shells = place.shellCapacity.length;
            f[i] += ampere * ampere * ohm(y, k);
            for (int s = 0; s < shells; s++) {
                double flow = place.shellWpK[s] * (y[i + s] - y[i + s + 1]);
                f[i + s] -= flow;
                f[i + s + 1] += flow;
            }
            f[i + shells] -= place.surfaceW.applyAsDouble(surface(k, y[i + shells]));
            if (k + 1 < places.size()) {
                double flow = place.nextWpK * (y[i] - y[at[k + 1]]);
                f[i] -= flow;
                f[at[k + 1]] += flow;
            }
        }
        for (int k = 0; k < places.size(); k++) {
            HeatLine.Place place = places.get(k);
            f[at[k]] /= place.capacity;
            for (int s = 0; s < place.shellCapacity.length; s++) {
                f[at[k] + 1 + s] /= place.shellCapacity[s];
            }
        }
    }

    /** The surface temperature at which what comes from within leaves. */
    private double surface(int k, double innerK) {
        HeatLine.Place place = places.get(k);
        if (place.toSurfaceWpK == Double.POSITIVE_INFINITY) {
            surfaceK[k] = innerK;
            return innerK;
        }
        double t = surfaceK[k];
        for (int n = 0; n < 20; n++) {
            double error = place.toSurfaceWpK * (innerK - t) - place.surfaceW.applyAsDouble(t);
            double move = error / (place.toSurfaceWpK + leaving(place, t));
            t += move;
            if (Math.abs(move) < 1e-9) {
                break;
            }
        }
        surfaceK[k] = t;
        return t;
    }

    private static double leaving(HeatLine.Place place, double t) {
        return (place.surfaceW.applyAsDouble(t + 1e-3) - place.surfaceW.applyAsDouble(t - 1e-3))
                / 2e-3;
    }

    /** C / h − K, shells eliminated from outside in, then the copper along the line. */
    void factor(double[] y, double h) {
        factoredS = h;
        for (int k = 0; k < places.size(); k++) {
            HeatLine.Place place = places.get(k);
            int i = at[k];
            int shells = place.shellCapacity.length;
            double out = leaving(place, surface(k, y[i + shells]));
            if (place.toSurfaceWpK != Double.POSITIVE_INFINITY) {
                out = 1 / (1 / out + 1 / place.toSurfaceWpK);
            }
            diagonal[i] = place.capacity / h - ampere * ampere * place.ohm20 * worn[k] * place.perK;
            for (int s = 0; s < shells; s++) {
                diagonal[i + s] += place.shellWpK[s];
                diagonal[i + s + 1] = place.shellCapacity[s] / h + place.shellWpK[s];
            }
            diagonal[i + shells] += out;
            if (k + 1 < places.size()) {
                diagonal[i] += place.nextWpK;
            }
            if (k > 0) {
                diagonal[i] += places.get(k - 1).nextWpK;
            }
            for (int s = shells; s > 0; s--) {
                shellPivot[i + s] = diagonal[i + s];
                diagonal[i + s - 1] -=
                        place.shellWpK[s - 1] * place.shellWpK[s - 1] / shellPivot[i + s];
            }
            copperPivot[k] = diagonal[i];
            if (k > 0) {
                double g = places.get(k - 1).nextWpK;
                copperPivot[k] -= g * g / copperPivot[k - 1];
            }
        }
    }

    /** Slope in, its linearly implicit form out. */
    void solve(double[] f) {
        int count = places.size();
        for (int k = 0; k < count; k++) {
            HeatLine.Place place = places.get(k);
            int i = at[k];
            int shells = place.shellCapacity.length;
            f[i] *= place.capacity;
            for (int s = 0; s < shells; s++) {
                f[i + 1 + s] *= place.shellCapacity[s];
            }
            for (int s = shells; s > 0; s--) {
                f[i + s - 1] += place.shellWpK[s - 1] / shellPivot[i + s] * f[i + s];
            }
            if (k > 0) {
                f[i] += places.get(k - 1).nextWpK / copperPivot[k - 1] * f[at[k - 1]];
            }
        }
        for (int k = count - 1; k >= 0; k--) {
            HeatLine.Place place = places.get(k);
            int i = at[k];
            double right = k + 1 < count ? place.nextWpK * f[at[k + 1]] : 0;
            f[i] = (f[i] + right) / copperPivot[k];
            for (int s = 1; s <= place.shellCapacity.length; s++) {
                f[i + s] = (f[i + s] + place.shellWpK[s - 1] * f[i + s - 1]) / shellPivot[i + s];
            }
        }
        for (int i = at[0]; i < at[count]; i++) {
            f[i] /= factoredS;
        }
    }
}
