package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes loops, or finds why not. */
final class LoopMaking {

    private LoopMaking() {}

    static LoopDesign design(Craft craft, Asked asked) {
        LoopDesign.Authority authority = authority(craft);
        var refusing = new Refusing(craft, asked, authority);
        Optional<LoopDesign.Refused> against =
                refusing.ofAuthority(new Reserves(craft).trims()).or(refusing::ofIntegral);
        if (against.isPresent()) {
            return against.get();
        }
        Attempt attempt = Attempt.of(craft, asked, authority);
        against = refusing.ofDeclared(attempt);
        if (against.isPresent()) {
            return against.get();
        }
        if (attempt.slow().isPresent()) {
            return refusing.ofSlowness(attempt.slow().get());
        }
        against = refusing.ofAliasing(attempt);
        if (against.isPresent()) {
            return against.get();
        }
        return new LoopDesign.Granted(craft, loops(attempt), authority);
    }

    static LoopDesign.Authority authority(Craft craft) {
        var reserves = new Reserves(craft);
        return new LoopDesign.Authority(
                turning(reserves.momentNm(1), craft.inertia().xx()),
                turning(reserves.momentNm(2), craft.inertia().yy()),
                turning(reserves.momentNm(3), craft.inertia().zz()),
                reserves.liftShare().orElse(0));
    }

    private static double turning(OptionalDouble momentNm, double inertiaKgm2) {
        return momentNm.orElse(0) / inertiaKgm2;
    }

    private static List<Loop> loops(Attempt attempt) {
        List<Loop> loops = new ArrayList<>();
        for (Shaped shaped : attempt.shaped()) {
            int first = shaped.cascade().stages().size() - shaped.levels().size();
            // Velocity over the ground stands on a tilt loop that is told already.
            for (int k = shaped.axis() == Axis.ACROSS ? 1 : 0; k < shaped.levels().size(); k++) {
                loops.add(loop(shaped, k, first + k));
            }
        }
        return loops;
    }

    private static Loop loop(Shaped shaped, int at, int stage) {
        double radps = shaped.radps().get(at);
        Cascade whole = shaped.cascade();
        Cascade upTo = new Cascade(whole.actuation(), whole.stages().subList(0, stage + 1));
        Cascade.Stage gains = whole.stages().get(stage);
        Margins margins = Shaper.margins(whole, stage, radps, 1, 1);
        return new Loop(
                shaped.axis(),
                shaped.levels().get(at),
                gains.gainPerS(),
                gains.gainPerS() * gains.cornerRadps(),
                margins.crossoverRadps(),
                margins.phaseMarginRad(),
                margins.gainMargin(),
                Bandwidths.of(whole.closed(stage, 1, 1), radps / 100, radps * 1000),
                new StepAnswer(upTo, radps, 1, 1).figures(),
                RobustLoops.worst(whole, stage, radps),
                HarnessCheck.nearest(whole, stage, radps, shaped.modes(), 1, 1),
                upTo,
                shaped.bound().get(at).words);
    }
}
