package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.physics.Cantilever;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.shape.words.LimitKeys;

/** What a balance answer rests on. */
final class BalanceEvidence {

    /** Sum of the ledger against the moment, over the sum of its magnitudes. */
    private static final double LEDGER = 1e-12;

    /** Lift against weight at lift-off, over weight. */
    private static final double LIFT = 1e-7;

    private BalanceEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            Settings settings,
            BalanceJudgement judgement,
            List<Evidence.Assumption> besides) {
        HoverPoint point = judgement.point();
        List<Evidence.Check> checks = new ArrayList<>();
        checks.add(new Evidence.Check("the ledger adds up", point.ledger().closure(), LEDGER));
        if (point.lifts()) {
            double weightN = point.mass().weightN();
            checks.add(
                    new Evidence.Check(
                            "lift is weight",
                            Math.abs(-point.ledger().force().z() / weightN - 1),
                            LIFT));
        }
        checks.add(
                new Evidence.Check("draws without an operating point", judgement.failedDraws(), 0));
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        judgement.draws(),
                        Sentence.words("lift-off on full packs, upright in still air of ")
                                .then(
                                        Measure.DENSITY,
                                        plant.siteDensityKgpm3(plant.parameters().nominal()))
                                .then(
                                        ", settled cells, motors cold (20 °C), wires 30 K above the air"),
                        laws(rig, point),
                        Stream.concat(
                                        assumptions(rig, judgement.steering(), point).stream(),
                                        besides.stream())
                                .toList(),
                        checks,
                        MeasuredEvidence.of(rig)));
    }

    /** Those that this rig needs. */
    private static List<Evidence.Law> laws(Rig rig, HoverPoint point) {
        List<Evidence.Law> laws = new ArrayList<>();
        if (rig.wearer().isPresent()) {
            laws.add(
                    new Evidence.Law(
                            "segments of the body",
                            "de Leva, J. Biomech. 29, 1996, table 4",
                            "young adults; yaw inertia of people is up to 40 % greater, which its band holds",
                            true));
        }
        laws.add(
                new Evidence.Law(
                        "wrench of a fan: thrust at its place, swirl about it",
                        "statics; the share of swirl is declared",
                        "still air",
                        true));
        if (!point.gives().isEmpty()) {
            laws.add(
                    new Evidence.Law(
                            "mounts on beams: slope F l²/(2 E I) + M l/(E I), twist T l/(G J)",
                            "Euler and Bernoulli; Saint-Venant",
                            "up to 10°, length at least ten diameters",
                            beyondBeams(point).isEmpty()));
        }
        if (jetsStrike(point)) {
            laws.add(
                    new Evidence.Law(
                            "free jet: full speed for 6.1 diameters, then 6.1 D/x; half of it at 0.096 x",
                            "round turbulent jets, from memory",
                            "still air, up to 2.5 m; within the core its width is a straight line of our own",
                            true));
        }
        laws.add(
                new Evidence.Law(
                        "momentum drag damps yaw",
                        "momentum theory",
                        "cross-flow below 0.15 of the exit speed, from memory",
                        true));
        laws.add(
                new Evidence.Law(
                        "fans as in the question of lift",
                        "see there",
                        "the range named there",
                        true));
        return laws;
    }

    private static boolean jetsStrike(HoverPoint point) {
        return point.ledger().fans().stream().anyMatch(fan -> !fan.strike().hits().isEmpty());
    }

    /** Mounts that give further than the law of beams reaches, in words. */
    static List<String> beyondBeams(HoverPoint point) {
        return point.gives().stream()
                .filter(
                        give ->
                                Math.max(Math.abs(give.twistRad()), give.slopeRad())
                                        > Cantilever.GREATEST_RAD)
                .map(
                        give ->
                                "the mount "
                                        + give.mount()
                                        + " gives by more than 10°, beyond the law of beams")
                .toList();
    }

    private static List<Evidence.Assumption> assumptions(
            Rig rig, Steering steering, HoverPoint point) {
        List<Evidence.Assumption> all = new ArrayList<>(LiftEvidence.assumptionsApartFromHeat(rig));
        for (LimitName limit : steering.limits()) {
            if (!rig.limits().declared().containsKey(limit)) {
                all.add(
                        new Evidence.Assumption(
                                "limits/" + limit.key(),
                                LimitKeys.show(limit),
                                limit.origin() + ": " + LimitKeys.meaning(limit)));
            }
        }
        if (jetsStrike(point)) {
            all.add(
                    new Evidence.Assumption(
                            "what bodies catch of a jet",
                            "limbs 0.6 of what strikes them, parts with edges all of it, ± 40 % in the table of"
                                    + " jets; a body of 1050 kg/m³ gives limbs their width",
                            "from memory"));
        }
        return all;
    }
}
