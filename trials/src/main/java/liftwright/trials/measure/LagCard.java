package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FanUnit;
import liftwright.physics.SpoolDown;
import liftwright.quantity.Measure;
import liftwright.rig.FanType;
import liftwright.rig.RigPath;

/** How fast thrust follows throttle, up by {@link Spool} and down by {@link SpoolDown}. */
final class LagCard {

    /** Readings within one time constant that a fit needs; common practice. */
    private static final int SAMPLES = 10;

    /** A smaller change of thrust than this is no step. */
    private static final double LEAST_CHANGE = 0.02;

    private static final Doubts.LeftOut UP =
            new Doubts.LeftOut(
                    0.05,
                    0.10,
                    "the motor’s inductance, air that has to be set in motion; common practice. The"
                            + " controller’s own delay or ramp is not in it and comes on top");
    private static final Doubts.LeftOut DOWN =
            Doubts.LeftOut.even(
                    0.10, "air that keeps the rotor turning, bearings; common practice");

    /** What is timed of one fan: a step up, or the way down to half of the speed. */
    private sealed interface Timed {
        record Up(double from, double to) implements Timed {}

        record Down(double from) implements Timed {}
    }

    private record Timing(int fan, Timed what) {}

    private final Asked asked;
    private final Doubts doubts = new Doubts("lag");
    private final Sheet sheet;
    private final List<OneFan> fans = new ArrayList<>();
    private final List<Timing> timings = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();
    private final List<List<Value>> rows = new ArrayList<>();

    LagCard(Asked asked) {
        this.asked = asked;
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        for (FanType type : asked.fanTypes()) {
            OneFan.declare(asked, type, doubts)
                    .ifPresentOrElse(
                            this::fan,
                            () -> sheet.note("no pack feeds a fan of type " + type.name()));
        }
        sheet.table(
                "constants",
                "Time constant of a small change, and how fast to sample",
                List.of("measuring-what", "lag-speed", "lag-constant", "lag-sampling", "lag-stand"),
                rows);
        words();
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, this::model).map(sheet::done);
    }

    private Predicted.Model model() {
        List<OneFan.Bench> benches = fans.stream().map(OneFan::bench).toList();
        return (p, out) -> {
            benches.forEach(bench -> bench.load(p));
            for (int k = 0; k < out.length; k++) {
                Timing timing = timings.get(k);
                out[k] = timeS(benches.get(timing.fan), timing.what);
            }
        };
    }

    private static double timeS(OneFan.Bench bench, Timed what) {
        return switch (what) {
            case Timed.Up(double from, double to) -> upS(bench, from, to);
            case Timed.Down(double from) -> downS(bench, from);
        };
    }

    /** Time to {@link Spool#ONE_TIME} of the change of thrust after the throttle is stepped up. */
    static double upS(OneFan.Bench bench, double from, double to) {
        bench.operate(to);
        double above = bench.thrustN();
        bench.operate(from);
        double below = bench.thrustN();
        double start = bench.speedRadps();
        double reached = below + Spool.ONE_TIME * (above - below);
        return Spool.of(bench, to).timeS(start, FanUnit.speedAtThrustRadps(bench.unit, 0, reached));
    }

    /** Time to half of the speed after the throttle is let go, coasting or shorted. */
    private static double downS(OneFan.Bench bench, double from) {
        bench.operate(from);
        double radps = bench.speedRadps();
        double kv = bench.unit[FanUnit.KV];
        double shorted =
                bench.isShorting()
                        ? SpoolDown.shortedNms(1 / kv, bench.unit[FanUnit.RESISTANCE])
                        : 0;
        return SpoolDown.timeS(
                radps,
                radps / 2,
                bench.inertiaKgm2(),
                bench.unit[FanUnit.TORQUE],
                shorted,
                bench.unit[FanUnit.NO_LOAD] / kv);
    }

    private void fan(OneFan fan) {
        fans.add(fan);
        OneFan.Bench bench = fan.bench();
        bench.load(doubts.rows().table().nominal());
        List<Double> throttles = asked.throttles();
        String name = fan.type().name();
        for (int k = 1; k < throttles.size(); k++) {
            step(fan, bench, throttles.get(k - 1), throttles.get(k));
        }
        double top = throttles.getLast();
        bench.operate(top);
        if (bench.speedRadps() > 0) {
            switch (fan.type().controller().switching().braking().orElse(FanType.Braking.COAST)) {
                case COAST, SHORT -> {
                    timings.add(new Timing(fans.size() - 1, new Timed.Down(top)));
                    wanted.add(
                            Wanted.of(
                                    name
                                            + ", let go from "
                                            + ThrustCard.percent(top)
                                            + ": to half of the speed",
                                    Measure.TIME,
                                    Instruments.LOGGER,
                                    DOWN));
                }
                case FREEWHEEL ->
                        sheet.note(
                                name
                                        + " brakes into the supply when it is let go: how fast depends"
                                        + " on what takes its current; not predicted");
            }
        }
        told(fan);
    }

    private void step(OneFan fan, OneFan.Bench bench, double from, double to) {
        bench.operate(from);
        double below = bench.thrustN();
        bench.operate(to);
        double above = bench.thrustN();
        String words =
                fan.type().name()
                        + ", throttle from "
                        + ThrustCard.percent(from)
                        + " to "
                        + ThrustCard.percent(to);
        if (!(above > (1 + LEAST_CHANGE) * below) || !Double.isFinite(upS(bench, from, to))) {
            sheet.note(words + ": thrust does not change enough to be timed");
            return;
        }
        timings.add(new Timing(fans.size() - 1, new Timed.Up(from, to)));
        wanted.add(
                Wanted.of(
                        words + ": to 63 % of the change of thrust",
                        Measure.TIME,
                        Instruments.LOGGER,
                        UP));
        bench.operate(from);
        if (Spool.of(bench, to).isHeldByLimit(bench.speedRadps())) {
            sheet.note(
                    words
                            + ": the controller’s current limit holds it at first, so that it takes"
                            + " longer than a small change");
        }
        bench.operate(to);
        double radps = bench.speedRadps();
        double constantS = Spool.of(bench, to).timeConstantS(radps);
        rows.add(
                List.of(
                        Value.words(
                                "measuring-what",
                                fan.type().name() + " at " + ThrustCard.percent(to)),
                        Value.of("lag-speed", radps),
                        Value.of("lag-constant", constantS),
                        Value.of("lag-sampling", SAMPLES / constantS),
                        Value.of("lag-stand", 5 / (2 * Math.PI * constantS))));
    }

    private void told(OneFan fan) {
        FanType type = fan.type();
        RigPath inertia = RigPath.of("fan types", type.name(), "rotor", "inertia");
        if (type.rotor().inertia().isEmpty()) {
            sheet.note(
                    "inertia of the rotor of "
                            + type.name()
                            + " is an estimate from mass and diameter, ± 50 %; from memory");
        }
        if (type.controller().switching().braking().isEmpty()) {
            sheet.note(
                    "what the controller of "
                            + type.name()
                            + " does when let go is not declared; taken as coasting");
            sheet.write(
                    RigPath.of("fan types", type.name(), "controller", "braking"),
                    "braking: ________ (coast, short, freewheel)");
        }
        sheet.write(inertia, "inertia: ________ kg·mm² ± 10 %");
        sheet.write(
                RigPath.of("fan types", type.name(), "controller", "delay"), "delay: ________ ms");
    }

    private void words() {
        sheet.step(
                "On the proved stand, pack full. Log command, speed and thrust on one clock, no"
                        + " slower than the table says; the stand’s own ringing above what it says.");
        sheet.step(
                "Step the command as fast as the controller allows, with its ramp off. Each step of"
                        + " the table five times up, and let go five times from the top.");
        sheet.step(
                "Up: the time from the command to the first change is the controller’s delay; from"
                        + " there to 63 % of the change is the lag.");
        sheet.step(
                "Down, coasting: the time to half of the speed. Inertia = that time × torque of the"
                        + " fan / speed, at the moment of letting go: no ramp can spoil it.");
        sheet.good(
                "inertia by the way down and by the way up agree within 20 %; where up gives more,"
                        + " the controller ramps: declare the ramp, not a heavier rotor");
        sheet.good(
                Sentence.words("at least ")
                        .then(SAMPLES + " readings within one time constant (common practice)"));
        sheet.note(
                "Small changes: J over the sum of the motor’s stiffness 1/(K_v² R) and the blades’ 2 κ"
                        + " Ω, with the pack’s resistance in R. Larger steps are summed over speed.");
    }
}
