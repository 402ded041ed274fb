package liftwright.review;

import java.util.List;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.Discharge;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;

/** What an answer of heat rests on. */
final class HeatEvidence {

    private static final double COLDEST_K = 233.15;
    private static final double HOTTEST_K = 523.15;

    /**
     * Energy that no receiver accounts for, over the whole: the bound of the stepper's own sums.
     */
    private static final double ENERGY_CLOSURE = 1e-6;

    private HeatEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            HeatFlight flight,
            Settings settings,
            HeatJudgement judgement,
            HeatRun run) {
        double[] p = plant.parameters().nominal();
        double hottestK = 0;
        double coldestK = Double.POSITIVE_INFINITY;
        // The verdict rests on what happens until the first limit; what is hot after it is shown,
        // and no verdict.
        double untilS = run.first().map(Discharge.End::timeS).orElse(Double.POSITIVE_INFINITY);
        for (HeatMoments.Moment moment : run.curve()) {
            if (moment.timeS() > untilS) {
                break;
            }
            for (double kelvin : moment.kelvin()) {
                hottestK = Math.max(hottestK, kelvin);
                coldestK = Math.min(coldestK, kelvin);
            }
        }
        boolean within = hottestK <= HOTTEST_K && coldestK >= COLDEST_K;
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        judgement.draws(),
                        Sentence.words(flight.task().words() + from(flight) + ", air of ")
                                .then(Measure.TEMPERATURE, plant.siteTemperatureK(p))
                                .then(" and ")
                                .then(Measure.DENSITY, plant.siteDensityKgpm3(p))
                                .then(", a rest of ")
                                .then(Measure.TIME, HeatFlight.SOAK_S)
                                .then(" after it"),
                        List.of(
                                new Evidence.Law(
                                        "conductor and insulation in shells, cells along the wire",
                                        "heat equation by finite volumes; IEC 60949 as its fast limit",
                                        "copper wires between −40 and 250 °C",
                                        within),
                                new Evidence.Law(
                                        "air about a horizontal cylinder",
                                        "Churchill and Chu 1975; Churchill and Bernstein 1977",
                                        "still or crossing air, wires that hang free; a bundle of n gives off 1/√n of it each",
                                        true),
                                new Evidence.Law(
                                        "joint between wires as fins",
                                        "EIA-364-70 practice: 30 K at its rating with rated wire",
                                        "clean joints; damage raises resistance alone",
                                        true),
                                new Evidence.Law(
                                        "fuse that carries heat",
                                        "points of its curve, log–log; one time constant",
                                        "each point from cold; between them as drawn",
                                        true),
                                new Evidence.Law(
                                        "controllers and motors cooled by their own stream",
                                        "two bodies each; convection with the power 0.7 of the speed",
                                        "values that nobody measured are from memory, ± 40 to 50 %",
                                        true),
                                new Evidence.Law(
                                        "cells heated by their resistances",
                                        "Joule's law; heat of reaction is left out",
                                        "currents of 3C and more, where it is small",
                                        true),
                                new Evidence.Law(
                                        "fans, packs and network as in the question of endurance",
                                        "see there",
                                        "the range named there",
                                        true)),
                        LiftEvidence.assumptions(rig),
                        List.of(
                                new Evidence.Check(
                                        "power closes at every step",
                                        run.closure(),
                                        LiftChecks.POWER_CLOSURE),
                                new Evidence.Check(
                                        "energy closes over the flight",
                                        run.energy().closure(),
                                        ENERGY_CLOSURE),
                                new Evidence.Check(
                                        "draws without an operating point",
                                        judgement.failedDraws(),
                                        0)),
                        MeasuredEvidence.of(rig)));
    }

    private static String from(HeatFlight flight) {
        return flight.start()
                .map(start -> " from the temperatures and charge of " + start.file())
                .orElse(
                        " from the declared charge with rested packs, every part as warm as declared"
                                + " or as the air");
    }
}
