package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FanLaw;
import liftwright.quantity.Measure;
import liftwright.rig.FanType;
import liftwright.rig.FanType.Performance;
import liftwright.rig.Rig;

/**
 * Whether what is declared of a fan can be: no rotor gives more thrust than momentum theory allows
 * for its exit area and shaft power, and none of this size comes near.
 */
final class FanClaims {

    /** Share of ideal power that no small fan's shaft has been seen to reach. Common practice. */
    static final double DOUBTFUL = 0.85;

    private static final double RHO_0 = 1.225;

    private FanClaims() {}

    static List<Finding> findings(Rig rig) {
        List<Finding> findings = new ArrayList<>();
        for (FanType type : rig.fanTypes()) {
            plausibility(type).ifPresent(findings::add);
            if (type.lot().isPresent()) {
                Lots.finding(type).ifPresent(findings::add);
            } else if (type.data() == FanType.Data.SELLER) {
                findings.add(seller(type));
            }
        }
        return findings;
    }

    /** Types whose declared performance is impossible: no verdict can rest on them. */
    static List<String> impossible(Rig rig) {
        return rig.fanTypes().stream()
                .filter(type -> efficiency(type) > 1)
                .map(
                        type ->
                                "the declared thrust of "
                                        + type.name()
                                        + " is more than momentum theory allows")
                .toList();
    }

    /** Ideal over declared shaft power at any speed: both go with its cube. */
    static double efficiency(FanType type) {
        return efficiency(type, type.performance());
    }

    private static double efficiency(FanType type, Performance performance) {
        double exitArea = type.exitArea().si();
        return switch (performance) {
            case Performance.AtSpeed(var _, var thrust, var shaftPower) ->
                    FanLaw.idealPowerW(thrust.si(), RHO_0, exitArea) / shaftPower.si();
            case Performance.Coefficients(var thrust, var torque) ->
                    FanLaw.idealPowerW(thrust.si(), RHO_0, exitArea) / torque.si();
            case Performance.Measured(var _, var claimed) ->
                    // without a claim there is nothing to doubt here
                    claimed.map(claim -> efficiency(type, claim)).orElse(0.0);
        };
    }

    private static Optional<Finding> plausibility(FanType type) {
        double efficiency = efficiency(type);
        if (efficiency <= DOUBTFUL) {
            return Optional.empty();
        }
        boolean impossible = efficiency > 1;
        return Optional.of(
                Finding.of(
                                impossible ? Severity.STOPS : Severity.WARNS,
                                impossible ? "fan-impossible" : "fan-doubtful",
                                Sentence.words(type.name() + " is declared to turn ")
                                        .then(Measure.PERCENT, efficiency)
                                        .then(
                                                impossible
                                                        ? " of its shaft power into jet power, which no fan can"
                                                        : " of its shaft power into jet power, beyond anything of this size"),
                                "thrust, exit area and shaft power do not go together: measure the fan on a scale, or its exit")
                        .about(type.name())
                        .at("fan types/" + type.name())
                        .against(
                                Value.of("fan-efficiency", efficiency),
                                new Finding.Limit(
                                        Value.of("fan-efficiency", impossible ? 1 : DOUBTFUL),
                                        impossible
                                                ? "momentum theory, Rankine–Froude"
                                                : "common practice")));
    }

    private static Finding seller(FanType type) {
        return Finding.of(
                        Severity.WARNS,
                        "seller-figures",
                        Sentence.words(
                                        "the figures of "
                                                + type.name()
                                                + " are its seller's, taken for ")
                                .then(Measure.PERCENT, 0.90)
                                .then(" (+5/−15 points) of themselves until measured"),
                        "sellers test one fan with a free intake on a stiff supply")
                .about(type.name())
                .at("fan types/" + type.name() + "/data");
    }
}
