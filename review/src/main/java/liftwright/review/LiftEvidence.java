package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import liftwright.answer.Evidence;
import liftwright.answer.Sentence;
import liftwright.plant.Effects;
import liftwright.plant.OperatingLimit;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;
import liftwright.rig.DefaultUsed;
import liftwright.rig.DefaultUsed.Reader;
import liftwright.rig.Rig;

/** What a lift answer rests on: state, laws with their range, defaults that stood in. */
final class LiftEvidence {

    private LiftEvidence() {}

    static Evidence of(
            Rig rig,
            String rigDigest,
            Plant plant,
            Settings settings,
            LiftJudgement judgement,
            List<Evidence.Check> checks) {
        double[] p = plant.parameters().nominal();
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        return CorrectionWords.on(
                plant,
                new Evidence(
                        rigDigest,
                        "none",
                        settings.seed(),
                        judgement.draws(),
                        Sentence.words("full throttle at ")
                                .then(Measure.PERCENT, rig.demands().judgedAtCharge().si())
                                .then(" charge, settled cells, air of ")
                                .then(Measure.DENSITY, plant.siteDensityKgpm3(p))
                                .then(", motors cold (20 °C), wires 30 K above the air"),
                        laws(plant.limits(p, state)),
                        assumptionsApartFromHeat(rig),
                        checks,
                        MeasuredEvidence.of(rig)));
    }

    /** Where the value at a path comes from. */
    static String origin(Rig rig, String path) {
        return rig.defaults().stream()
                .filter(used -> used.at().toString().equals(path))
                .findFirst()
                .map(used -> "default, " + used.origin())
                .orElse("declared in the rig file");
    }

    private static List<Evidence.Law> laws(List<OperatingLimit> limits) {
        boolean machWithin = within(limits, Kind.TIP_MACH);
        boolean intakeWithin = within(limits, Kind.INTAKE_LOSS);
        return List.of(
                new Evidence.Law(
                        "air density",
                        "US Standard Atmosphere 1976; saturation pressure Buck 1981",
                        "up to 11 km, −40 to 50 °C",
                        true),
                new Evidence.Law(
                        "thrust and torque go with the square of speed and with density",
                        "momentum theory",
                        "tip Mach number up to the limit in force; coefficients drift by 3 to 10 % at low speed",
                        machWithin),
                new Evidence.Law(
                        "screen before the intake",
                        "Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 4-14; momentum theory",
                        "added loss K up to 0.3",
                        intakeWithin),
                new Evidence.Law(
                        "first-order motor",
                        "Drela, First-Order DC Electric Motor Model, 2007",
                        "steady running below magnetic saturation",
                        true),
                new Evidence.Law(
                        "strand resistance",
                        "FAA AC 43.13-1B, table 11-9",
                        "tin-plated aircraft copper strand, 24 to 4/0 AWG",
                        true));
    }

    private static boolean within(List<OperatingLimit> limits, Kind kind) {
        return limits.stream().noneMatch(limit -> limit.kind() == kind && limit.exceeded());
    }

    /** What stands in for what the file leaves open and heat or an earlier question reads. */
    static List<Evidence.Assumption> assumptions(Rig rig) {
        return assumptions(rig, Set.of(Reader.ANY, Reader.HEAT));
    }

    /** The same without what only heat and later questions read. */
    static List<Evidence.Assumption> assumptionsApartFromHeat(Rig rig) {
        return assumptions(rig, Set.of(Reader.ANY));
    }

    /** What stands in for what the file leaves open, as far as one of {@code readers} reads it. */
    static List<Evidence.Assumption> assumptions(Rig rig, Set<Reader> readers) {
        return told(
                rig.defaults().stream().filter(used -> readers.contains(used.reader())).toList());
    }

    private static List<Evidence.Assumption> told(List<DefaultUsed> defaults) {
        List<Evidence.Assumption> assumptions = new ArrayList<>();
        for (DefaultUsed used : defaults) {
            assumptions.add(
                    new Evidence.Assumption(used.at().toString(), used.value(), used.origin()));
        }
        return assumptions;
    }
}
