package liftwright.review.stand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import liftwright.numerics.Gaussian;
import liftwright.numerics.StudentT;
import liftwright.quantity.Tolerance;
import liftwright.review.stand.Contribution.Distribution;
import liftwright.rig.stand.Stand;

/**
 * The uncertainty of one thrust as a stand will tell it, by the law of propagation (JCGM 100:2008,
 * 5.1.2, for inputs that do not hang together): thrust = load on the cell · cell arm / fan arm /
 * cos(alignment) / (1 − loss by the jet), referred to standard air. Rectangles for bounds (4.3.7).
 * The few repeats are widened by Student's t over 2, so that k = 2 holds for them too (G.3).
 *
 * @param thrustN thrust, N
 * @param loadN load on the cell, N
 * @param jetLossShare share of the thrust that the reading misses by the jet, in the middle
 * @param tiltShare share that it misses by the alignment, on average
 * @param contributions in the order of {@link StandItem}
 */
record StandBudget(
        double thrustN,
        double loadN,
        double jetLossShare,
        double tiltShare,
        List<Contribution> contributions) {

    /** Expanded uncertainties are twice the standard ones. */
    static final double K = 2;

    StandBudget {
        contributions = List.copyOf(contributions);
    }

    /**
     * Budget of a thrust.
     *
     * @param thrustN N, &gt; 0
     */
    static StandBudget of(Stand stand, double thrustN) {
        return new Reckoning(stand, thrustN).budget();
    }

    /** Combined standard uncertainty, N. */
    double combinedN() {
        return Math.sqrt(varianceN2());
    }

    /** Expanded uncertainty, k = 2, N. */
    double expandedN() {
        return K * combinedN();
    }

    /** What share of the variance an item is. */
    double share(Contribution one) {
        return one.standardN() * one.standardN() / varianceN2();
    }

    /** Expanded uncertainty with one item halved, N. */
    double halvedN(Contribution one) {
        return K * Math.sqrt(varianceN2() - 0.75 * one.standardN() * one.standardN());
    }

    /** The item whose halving gives most. */
    Contribution first() {
        return contributions.stream()
                .max(Comparator.comparingDouble(Contribution::standardN))
                .orElseThrow();
    }

    private double varianceN2() {
        double sum = 0;
        for (Contribution one : contributions) {
            sum += one.standardN() * one.standardN();
        }
        return sum;
    }

    /** Works a budget out, item by item. */
    private static final class Reckoning {

        private static final double AIR_K = 288.15;
        private static final double AIR_PA = 101_325;

        private final Stand stand;
        private final double thrustN;
        private final double jetLoss;
        private final double tilt;
        private final double loadN;

        /** Thrust for one newton at the cell. */
        private final double gain;

        private final List<Contribution> out = new ArrayList<>();

        Reckoning(Stand stand, double thrustN) {
            this.stand = stand;
            this.thrustN = thrustN;
            jetLoss = stand.jet().map(Guesses::jetLoss).orElse(0.0);
            double ratio =
                    stand.lever()
                            .map(lever -> lever.fanArm().si() / lever.cellArm().si())
                            .orElse(1.0);
            double angle = stand.alignment().map(Stand.Doubted::si).orElse(0.0);
            double reading = ratio * Math.cos(angle) * (1 - jetLoss);
            double shift =
                    stand.alignment()
                            .map(a -> curvature(a.si()) / 2 * variance(a.doubt()))
                            .orElse(0.0);
            // What stands beside the cosine is how much the doubt of the angle lowers it on
            // average.
            gain = (1 + shift) / reading;
            tilt = 1 - Math.cos(angle) / (1 + shift);
            loadN = thrustN / gain;
        }

        StandBudget budget() {
            cell();
            lever();
            stand.alignment().ifPresent(this::alignment);
            stand.jet().ifPresent(this::jet);
            clearance();
            stand.air().ifPresent(this::air);
            repeats();
            return new StandBudget(thrustN, loadN, jetLoss, tilt, out);
        }

        private void cell() {
            Stand.Cell cell = stand.cell();
            bound(StandItem.CELL_CLASS, cell.classShare() * cell.ratingN() * gain);
            cell.creepShare().ifPresent(share -> bound(StandItem.CREEP, share * thrustN));
            cell.perKelvin()
                    .flatMap(perK -> cell.warmingK().map(k -> perK * k))
                    .ifPresent(
                            share ->
                                    bound(
                                            StandItem.CELL_TEMPERATURE,
                                            share * cell.ratingN() * gain));
            cell.zeroDriftN().ifPresent(n -> bound(StandItem.ZERO_DRIFT, n * gain));
            // Half a step at the tare and half a step at the reading.
            cell.stepN()
                    .ifPresent(
                            n ->
                                    add(
                                            StandItem.STEP,
                                            Distribution.TRIANGLE,
                                            n * gain / Math.sqrt(6),
                                            false));
            cell.calibration().ifPresent(doubt -> doubt(StandItem.CALIBRATION, doubt, thrustN));
        }

        private void lever() {
            stand.lever()
                    .ifPresent(
                            lever -> {
                                arm(StandItem.FAN_ARM, lever.fanArm());
                                arm(StandItem.CELL_ARM, lever.cellArm());
                            });
        }

        private void arm(StandItem item, Stand.Doubted arm) {
            doubt(item, arm.doubt(), thrustN / arm.si());
        }

        /**
         * 1/cos is flat where a stand is well aligned, so the second term counts too (JCGM 100,
         * note to 5.1.2): slope² σ² + ¼ curvature² Var(δ²), with Var(δ²) = 2 σ⁴ of a normal δ and
         * 0.8 σ⁴ of a rectangle.
         */
        private void alignment(Stand.Doubted angle) {
            double slope = Math.tan(angle.si());
            double variance = variance(angle.doubt());
            double squares = angle.doubt().form() == Tolerance.Form.NORMAL ? 2 : 0.8;
            double curvature = curvature(angle.si());
            add(
                    StandItem.ALIGNMENT,
                    distribution(angle.doubt()),
                    thrustN
                            * Math.sqrt(
                                    slope * slope * variance
                                            + curvature * curvature * squares * variance * variance
                                                    / 4),
                    false);
        }

        /** Second derivative of 1/cos over 1/cos. */
        private static double curvature(double angleRad) {
            double tan = Math.tan(angleRad);
            return 1 + 2 * tan * tan;
        }

        private void jet(Stand.Jet jet) {
            double perLoss = thrustN / (1 - jetLoss);
            switch (jet) {
                case Stand.Jet.Placed placed ->
                        guess(StandItem.JET, Guesses.jetHalfWidth(placed) * perLoss);
                case Stand.Jet.Measured(var loss) -> doubt(StandItem.JET, loss.doubt(), perLoss);
            }
        }

        private void clearance() {
            switch (stand.clearance()) {
                case Stand.Clearance.Placed(var behind, var front) -> {
                    guess(StandItem.BEHIND, Guesses.behind(behind) * thrustN);
                    guess(StandItem.IN_FRONT, Guesses.inFront(front) * thrustN);
                }
                case Stand.Clearance.Measured(var doubt) -> doubt(StandItem.WALLS, doubt, thrustN);
            }
        }

        /** Thrust goes with density, p/(R T). */
        private void air(Stand.Air air) {
            doubt(StandItem.AIR_TEMPERATURE, air.kelvin(), thrustN / AIR_K);
            doubt(StandItem.AIR_PRESSURE, air.pascal(), thrustN / AIR_PA);
        }

        private void repeats() {
            Stand.Repeats repeats = stand.repeats();
            double few = StudentT.within(Gaussian.COVERAGE_K2, repeats.runs() - 1) / K;
            add(
                    StandItem.REPEATS,
                    Distribution.STUDENT,
                    few * repeats.scatterShare() * thrustN / Math.sqrt(repeats.runs()),
                    false);
        }

        private void bound(StandItem item, double halfWidthN) {
            add(item, Distribution.RECTANGLE, halfWidthN / Math.sqrt(3), false);
        }

        private void guess(StandItem item, double halfWidthN) {
            add(item, Distribution.RECTANGLE, halfWidthN / Math.sqrt(3), true);
        }

        private void doubt(StandItem item, Stand.Doubt doubt, double sensitivity) {
            add(item, distribution(doubt), Math.sqrt(variance(doubt)) * sensitivity, false);
        }

        private void add(StandItem item, Distribution how, double standardN, boolean guessed) {
            out.add(new Contribution(item, how, standardN, guessed));
        }

        private static Distribution distribution(Stand.Doubt doubt) {
            return switch (doubt.form()) {
                case NORMAL -> Distribution.NORMAL;
                case BOUND -> Distribution.RECTANGLE;
            };
        }

        private static double variance(Stand.Doubt doubt) {
            double half = doubt.halfWidth();
            return switch (doubt.form()) {
                case NORMAL -> half * half / (K * K);
                case BOUND -> half * half / 3;
            };
        }
    }
}
