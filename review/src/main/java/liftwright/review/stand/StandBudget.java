package liftwright.review.stand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import liftwright.rig.stand.Stand;

/**
 * The uncertainty of one thrust as a stand will tell it: thrust = load on the cell · cell arm / fan
 * arm / cos(alignment) / (1 − loss by the jet), referred to standard air. Standard uncertainties by
 * the law of propagation (JCGM 100:2008, 5.1.2, for inputs that do not hang together; bounds are
 * rectangles, 4.3.7). The expanded one is half of the 95.45 % interval of all errors together, each
 * with its own distribution ({@link ErrorSum}); twice the combined standard uncertainty would be a
 * fifth too wide where a single rectangle rules.
 *
 * @param thrustN thrust, N
 * @param loadN load on the cell, N
 * @param jetLossShare share of the thrust that the reading misses by the jet, in the middle
 * @param tiltShare share that it misses by the alignment, on average
 * @param contributions those that would help most first
 * @param expandedN expanded uncertainty, 95.45 %, N
 */
record StandBudget(
        double thrustN,
        double loadN,
        double jetLossShare,
        double tiltShare,
        List<Halved> contributions,
        double expandedN) {

    /** A ± is twice a standard uncertainty. */
    static final double K = 2;

    /**
     * A contribution, and what it is good for to work on it.
     *
     * @param halvedN expanded uncertainty with this item half as large, N
     */
    record Halved(Contribution one, double halvedN) {}

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

    /** What share of the variance an item is. */
    double share(Contribution one) {
        return one.standardN() * one.standardN() / varianceN2();
    }

    /** The item whose halving gives most. */
    Halved first() {
        return contributions.getFirst();
    }

    /** Expanded uncertainty with an item gone, N. */
    double withoutN(Contribution gone) {
        return ErrorSum.expandedN(
                contributions.stream()
                        .map(Halved::one)
                        .filter(one -> !one.equals(gone))
                        .map(Contribution::distribution)
                        .toList());
    }

    private double varianceN2() {
        double sum = 0;
        for (Halved each : contributions) {
            double standardN = each.one().standardN();
            sum += standardN * standardN;
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
            // How much the doubtful angle stretches the thrust on average.
            double stretch = stand.alignment().map(Distribution.Tilt::stretch).orElse(1.0);
            gain = stretch / (ratio * (1 - jetLoss));
            tilt = 1 - 1 / stretch;
            loadN = thrustN / gain;
        }

        StandBudget budget() {
            cell();
            lever();
            stand.alignment()
                    .ifPresent(
                            angle ->
                                    add(
                                            StandItem.ALIGNMENT,
                                            Distribution.Tilt.of(angle, thrustN),
                                            false));
            stand.jet().ifPresent(this::jet);
            clearance();
            stand.air().ifPresent(this::air);
            repeats();
            List<Distribution> all = out.stream().map(Contribution::distribution).toList();
            List<Halved> ordered = new ArrayList<>();
            for (int i = 0; i < all.size(); i++) {
                List<Distribution> better = new ArrayList<>(all);
                better.set(i, all.get(i).times(0.5));
                ordered.add(new Halved(out.get(i), ErrorSum.expandedN(better)));
            }
            ordered.sort(Comparator.comparingDouble(Halved::halvedN));
            return new StandBudget(thrustN, loadN, jetLoss, tilt, ordered, ErrorSum.expandedN(all));
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
                            n -> add(StandItem.STEP, new Distribution.Triangle(n * gain), false));
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
            add(
                    StandItem.REPEATS,
                    new Distribution.Student(
                            repeats.scatterShare() * thrustN / Math.sqrt(repeats.runs()),
                            repeats.runs() - 1),
                    false);
        }

        private void bound(StandItem item, double halfWidthN) {
            add(item, new Distribution.Rectangle(halfWidthN), false);
        }

        private void guess(StandItem item, double halfWidthN) {
            add(item, new Distribution.Rectangle(halfWidthN), true);
        }

        private void doubt(StandItem item, Stand.Doubt doubt, double sensitivity) {
            add(item, Distribution.of(doubt, sensitivity), false);
        }

        private void add(StandItem item, Distribution how, boolean guessed) {
            out.add(new Contribution(item, how, guessed));
        }
    }
}
