package liftwright.review.referee;

import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * A random rig and what a hover needs besides: charge, age-old habits of its cells, limits.
 *
 * @param capacityAh of a cell
 * @param resistanceMilliohm of a cell at once
 * @param settlingS time constant of the settling resistance at 25 °C
 * @param coefficientK of the cells' resistance over temperature
 * @param celsius of the packs
 * @param charge share left at the start
 * @param reserve share kept for the landing
 * @param leastCellV limit under load
 * @param peakA most that a cell may give
 * @param cutOffV of the controllers
 * @param demandS hover asked for
 */
record RefereeHover(
        RefereeRig rig,
        Doubtful capacityAh,
        Doubtful resistanceMilliohm,
        double settlingS,
        double coefficientK,
        double celsius,
        double charge,
        double reserve,
        double leastCellV,
        Optional<Double> peakA,
        Optional<Double> cutOffV,
        double demandS) {

    /** Which cells of a drawn rig differ from each other. */
    enum Unlike {
        /** None, or one value of a single pack's: then the declared rig has one weakest cell. */
        IN_ONE_WAY,
        /** Both capacity and resistance, in all packs. */
        IN_BOTH
    }

    RefereeHover withDemand(double hoverS) {
        return new RefereeHover(
                rig,
                capacityAh,
                resistanceMilliohm,
                settlingS,
                coefficientK,
                celsius,
                charge,
                reserve,
                leastCellV,
                peakA,
                cutOffV,
                hoverS);
    }

    /** Rigs that mostly can hover, for one to six minutes. */
    static RefereeHover draw(RandomGenerator random, Unlike unlike) {
        RefereeRig rig = RefereeRandom.rig(random);
        double full = RefereeLift.ratio(rig.withJudgedAtCharge(1), RefereeDraw.nominal());
        while (!(full > 1.05) && random.nextInt(20) != 0) {
            rig = RefereeRandom.rig(random);
            full = RefereeLift.ratio(rig.withJudgedAtCharge(1), RefereeDraw.nominal());
        }
        double restV = rig.series() * 3.85;
        double hoverA =
                rig.fan().shaftPowerW().value()
                        / (0.75 * restV)
                        * Math.pow(1 / full, 1.5)
                        * rig.fans()
                        / rig.fansOfPack().size();
        double capacity = hoverA * random.nextDouble(60, 360) / 3600;
        boolean single = rig.fansOfPack().size() == 1;
        boolean byCapacity = unlike == Unlike.IN_BOTH || (single && random.nextBoolean());
        boolean byResistance = unlike == Unlike.IN_BOTH || (single && !byCapacity);
        double reserve = Math.round(random.nextDouble(0, random.nextBoolean() ? 10 : 40)) / 100.0;
        double cutOff = Math.round(restV * random.nextDouble(0.8, 0.93));
        return new RefereeHover(
                rig,
                cells(random, capacity, "Ah", 0.03, byCapacity),
                cells(
                        random,
                        rig.cell().resistanceMilliohm().value() * random.nextDouble(0.3, 1),
                        "mΩ",
                        0.12,
                        byResistance),
                Math.round(random.nextDouble(5, 60)),
                Math.round(random.nextDouble(1000, 3000)),
                Math.round(random.nextDouble(0, 45)),
                random.nextInt(3) == 0 ? Math.round(random.nextDouble(70, 100)) / 100.0 : 1,
                reserve,
                Math.round(random.nextDouble(310, 360)) / 100.0,
                random.nextInt(3) == 0
                        ? Optional.of((double) Math.round(hoverA * random.nextDouble(1.1, 1.8)))
                        : Optional.empty(),
                rig.fan().cutOffV().map(_ -> cutOff),
                60);
    }

    private static Doubtful cells(
            RandomGenerator random, double value, String unit, double most, boolean each) {
        Doubtful shared = Doubtful.of(random, value, unit, most);
        double half = Math.round(1000 * random.nextDouble(0.3 * most, most)) / 1000.0;
        return each ? new Doubtful(shared.value(), unit, half, half, false, true) : shared;
    }

    /** As a builder would write it. */
    String text() {
        String text = RefereeText.of(rig);
        text =
                with(
                        text,
                        "capacity: 8 Ah",
                        "capacity: "
                                + capacityAh.written()
                                + peakA.map(a -> ", peak current: " + Doubtful.plain(a) + " A")
                                        .orElse("")
                                + ", temperature coefficient: "
                                + Doubtful.plain(coefficientK)
                                + " K");
        text =
                with(
                        text,
                        "resistance: " + rig.cell().resistanceMilliohm().written() + ", settling",
                        "resistance: " + resistanceMilliohm.written() + ", settling");
        if (cutOffV.isPresent()) {
            text =
                    with(
                            text,
                            "cut-off: " + Doubtful.plain(rig.fan().cutOffV().orElseThrow()) + " V",
                            "cut-off: " + Doubtful.plain(cutOffV.get()) + " V");
        }
        text = with(text, "time: 25 s", "time: " + Doubtful.plain(settlingS) + " s");
        text =
                with(
                        text,
                        "temperature: 25 °C}",
                        "temperature: "
                                + Doubtful.plain(celsius)
                                + " °C, charge: "
                                + Doubtful.plain(100 * charge)
                                + " %}");
        text =
                with(
                        text,
                        "demands: {",
                        "limits: {cell under load: "
                                + Doubtful.plain(leastCellV)
                                + " V}\ndemands: {hover: "
                                + Doubtful.plain(demandS)
                                + " s, reserve: "
                                + Doubtful.plain(100 * reserve)
                                + " %, ");
        return text;
    }

    private static String with(String text, String old, String replacement) {
        if (!text.contains(old)) {
            throw new IllegalStateException("no “" + old + "” in\n" + text);
        }
        return text.replace(old, replacement);
    }
}
