package liftwright.review.stand;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.random.RandomGenerator;
import liftwright.quantity.Tolerance;
import liftwright.rig.stand.Stand;

/**
 * The referee of budgets: the thrust of a stand by sampling (JCGM 101:2008), with the whole
 * measurement equation and no sensitivities. Knows of the budget only what the stand file says and
 * the documented bounds of common practice, written down here once more.
 */
final class SampledStand {

    static final Map<Double, Double> BEHIND = Map.of(2.0, 0.02, 3.0, 0.01, 5.0, 0.005, 10.0, 0.002);
    static final Map<Double, Double> IN_FRONT = Map.of(1.0, 0.02, 2.0, 0.005, 4.0, 0.002);

    private final Stand stand;
    private final RandomGenerator random;

    SampledStand(Stand stand, RandomGenerator random) {
        this.stand = stand;
        this.random = random;
    }

    /**
     * Half the distance between the ends of the probabilistically symmetric 95.45 % interval, N;
     * and the standard deviation, N.
     */
    record Spread(double halfN, double deviationN) {}

    Spread spread(int draws) {
        double loadN = meanLoadN();
        double[] thrust = new double[draws];
        double mean = 0;
        for (int i = 0; i < draws; i++) {
            thrust[i] = draw(loadN);
            mean += thrust[i] / draws;
        }
        double squares = 0;
        for (double one : thrust) {
            squares += (one - mean) * (one - mean);
        }
        Arrays.sort(thrust);
        int tail = (int) Math.round(0.02275 * draws);
        return new Spread(
                (thrust[draws - 1 - tail] - thrust[tail]) / 2, Math.sqrt(squares / (draws - 1)));
    }

    /** What the cell reads when the thrust is the greatest, every error in its middle. */
    private double meanLoadN() {
        double ratio = stand.lever().map(l -> l.fanArm().si() / l.cellArm().si()).orElse(1.0);
        double angle = stand.alignment().map(a -> a.si()).orElse(0.0);
        double loss =
                stand.jet()
                        .map(
                                jet ->
                                        switch (jet) {
                                            case Stand.Jet.Placed placed -> 0.75 * met(placed);
                                            case Stand.Jet.Measured measured ->
                                                    measured.lossShare().si();
                                        })
                        .orElse(0.0);
        return stand.thrustN() * ratio * Math.cos(angle) * (1 - loss);
    }

    private double draw(double readN) {
        Stand.Cell cell = stand.cell();
        double load = readN;
        load += even(cell.classShare() * cell.ratingN());
        load += even(cell.creepShare().orElse(0.0) * readN);
        load += even(cell.perKelvin().orElse(0.0) * cell.warmingK().orElse(0.0) * cell.ratingN());
        load += even(cell.zeroDriftN().orElse(0.0));
        double step = cell.stepN().orElse(0.0);
        load += even(step / 2); // at the reading
        load += even(step / 2); // at the tare
        load /= 1 + cell.calibration().map(this::off).orElse(0.0);
        double thrust = load;
        if (stand.lever().isPresent()) {
            Stand.Lever lever = stand.lever().get();
            thrust *= (lever.cellArm().si() + off(lever.cellArm().doubt()));
            thrust /= (lever.fanArm().si() + off(lever.fanArm().doubt()));
        }
        if (stand.alignment().isPresent()) {
            Stand.Doubted angle = stand.alignment().get();
            thrust /= Math.cos(angle.si() + off(angle.doubt()));
        }
        if (stand.jet().isPresent()) {
            thrust /=
                    switch (stand.jet().get()) {
                        case Stand.Jet.Placed placed -> 1 - met(placed) * random.nextDouble(0.5, 1);
                        case Stand.Jet.Measured(var loss) -> 1 - loss.si() - off(loss.doubt());
                    };
        }
        thrust *=
                switch (stand.clearance()) {
                    case Stand.Clearance.Placed(var behind, var front) ->
                            (1 + even(bound(BEHIND, behind))) * (1 + even(bound(IN_FRONT, front)));
                    case Stand.Clearance.Measured(var doubt) -> 1 + off(doubt);
                };
        if (stand.air().isPresent()) {
            Stand.Air air = stand.air().get();
            double density = (101_325 + off(air.pascal())) / (288.15 + off(air.kelvin()));
            thrust *= (101_325 / 288.15) / density;
        }
        Stand.Repeats repeats = stand.repeats();
        double chi = 0;
        for (int i = 1; i < repeats.runs(); i++) {
            double z = random.nextGaussian();
            chi += z * z;
        }
        double t = random.nextGaussian() / Math.sqrt(chi / (repeats.runs() - 1));
        return thrust * (1 + repeats.scatterShare() / Math.sqrt(repeats.runs()) * t);
    }

    /** Gaussian jet of half-velocity radius 0.096 x behind a core of 6.1 diameters. */
    static double met(Stand.Jet.Placed jet) {
        double diameter = 2 * Math.sqrt(jet.exitAreaM2() / Math.PI);
        if (jet.distanceM() < 6.1 * diameter) {
            return Math.min(1, jet.areaM2() / jet.exitAreaM2());
        }
        double half = 0.096 * jet.distanceM();
        return 1 - Math.pow(0.25, jet.areaM2() / Math.PI / (half * half));
    }

    private static double bound(Map<Double, Double> table, double diameters) {
        return Objects.requireNonNull(table.get(diameters));
    }

    private double even(double halfWidth) {
        return halfWidth * (2 * random.nextDouble() - 1);
    }

    private double off(Stand.Doubt doubt) {
        return doubt.form() == Tolerance.Form.NORMAL
                ? doubt.halfWidth() / 2 * random.nextGaussian()
                : even(doubt.halfWidth());
    }
}
