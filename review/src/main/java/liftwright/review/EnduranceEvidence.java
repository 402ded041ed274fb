package liftwright.review;

import java.util.List;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;

/** What an endurance answer rests on. */
final class EnduranceEvidence {

    private static final double COLDEST_K = 273.15;
    private static final double HOTTEST_K = 333.15;

    private EnduranceEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            Task task,
            Settings settings,
            EnduranceJudgement judgement,
            EnduranceRun run) {
        double airK = plant.siteTemperatureK(plant.parameters().nominal());
        boolean within =
                rig.packs().stream()
                        .mapToDouble(pack -> pack.temperature().map(t -> t.si()).orElse(airK))
                        .allMatch(kelvin -> kelvin >= COLDEST_K && kelvin <= HOTTEST_K);
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        judgement.draws(),
                        Sentence.words(
                                        task.words()
                                                + " from the declared charge with rested packs, cells at"
                                                + " their starting temperature throughout, air of ")
                                .then(
                                        Measure.DENSITY,
                                        plant.siteDensityKgpm3(plant.parameters().nominal()))
                                .then(", motors cold (20 °C), wires 30 K above the air"),
                        List.of(
                                new Evidence.Law(
                                        "cell as a source behind a resistance and slow pairs",
                                        "Plett, Battery Management Systems vol. 1, 2015, chapter 2",
                                        "cells between 0 and 60 °C that stay at their starting temperature",
                                        within),
                                new Evidence.Law(
                                        "unlike cells",
                                        "normal samples about their mean (JCGM 100, 4.2)",
                                        "cells of one lot, balanced when charged",
                                        true),
                                new Evidence.Law(
                                        "fans as in the question of lift",
                                        "see there",
                                        "the range named there",
                                        true)),
                        LiftEvidence.assumptionsApartFromHeat(rig),
                        List.of(
                                new Evidence.Check(
                                        "power closes at every step",
                                        run.worstClosure(),
                                        LiftChecks.POWER_CLOSURE),
                                new Evidence.Check(
                                        "draws without an operating point",
                                        judgement.failedDraws(),
                                        0)),
                        MeasuredEvidence.of(rig)));
    }
}
