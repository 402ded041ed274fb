package liftwright.flight.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.flight.loops.Loop;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.profile.Profile;
import liftwright.flight.run.FlightOutcome;
import liftwright.flight.run.FlightSeries;
import liftwright.quantity.Band;

/** Loops, limits and events as tables. */
final class FlightTables {

    private FlightTables() {}

    static Section loops(LoopDesign.Granted granted) {
        List<List<Value>> rows = new ArrayList<>();
        for (Loop loop : granted.loops()) {
            rows.add(
                    List.of(
                            Value.words("loop-axis", loop.axis().words()),
                            Value.words("loop-level", loop.level().words()),
                            Value.of("loop-crossover", loop.crossoverRadps() / Math.TAU),
                            Value.of("loop-phase-margin", loop.phaseMarginRad()),
                            finite("loop-gain-margin", loop.gainMargin()),
                            Value.of("loop-worst-margin", loop.worst().phaseMarginRad()),
                            loop.harness()
                                    .map(told -> Value.of("loop-harness-distance", told.distance()))
                                    .orElseGet(() -> noHarness("loop-harness-distance")),
                            finite("loop-overshoot", loop.step().overshoot()),
                            finite("loop-settles", loop.step().settleS()),
                            Value.words("loop-bound", loop.bound())));
        }
        return new Section.Table(
                "loops",
                "Loops and their margins",
                List.of(
                        "loop-axis",
                        "loop-level",
                        "loop-crossover",
                        "loop-phase-margin",
                        "loop-gain-margin",
                        "loop-worst-margin",
                        "loop-harness-distance",
                        "loop-overshoot",
                        "loop-settles",
                        "loop-bound"),
                rows);
    }

    private static Value noHarness(String field) {
        return new Value(field, new Value.Figure.NotComputed("no harness matters to it"));
    }

    private static Value finite(String field, double value) {
        return Double.isFinite(value)
                ? Value.of(field, value)
                : new Value(field, new Value.Figure.NotComputed("no end to it"));
    }

    /**
     * A figure of a flight and its limit.
     *
     * @param words what it is
     * @param field of both
     * @param value of the flight shown
     * @param limit what it is held against
     * @param drawn the same of the drawn flights, rising
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Held(String words, String field, double value, double limit, double[] drawn) {

        boolean isKept() {
            return value <= limit;
        }

        /** Of the drawn flights, how many leave the limit. */
        int beyond() {
            int count = 0;
            for (double one : drawn) {
                count += one > limit ? 1 : 0;
            }
            return count;
        }

        Optional<Band> band() {
            return drawn.length < 2 ? Optional.empty() : Optional.of(NextFlight.of(drawn).band());
        }
    }

    static List<Held> held(FlightOutcome shown, List<FlightOutcome> drawn, Profile.Limits limits) {
        return List.of(
                new Held(
                        "tilt",
                        "flight-angle",
                        shown.figures().tiltRad(),
                        limits.tiltRad(),
                        rising(drawn, f -> f.tiltRad())),
                new Held(
                        "drift",
                        "flight-length",
                        shown.figures().driftM(),
                        limits.driftM(),
                        rising(drawn, f -> f.driftM())),
                new Held(
                        "height lost",
                        "flight-length",
                        shown.figures().heightLostM(),
                        limits.heightLostM(),
                        rising(drawn, f -> f.heightLostM())),
                new Held(
                        "miss",
                        "flight-length",
                        shown.figures().missM(),
                        limits.missM(),
                        rising(drawn, f -> f.missM())),
                new Held(
                        "landing",
                        "flight-speed",
                        shown.figures().landingMps(),
                        limits.landingMps(),
                        rising(drawn, f -> f.landingMps())));
    }

    private static double[] rising(
            List<FlightOutcome> drawn,
            java.util.function.ToDoubleFunction<FlightOutcome.Figures> figure) {
        return drawn.stream()
                .mapToDouble(one -> figure.applyAsDouble(one.figures()))
                .sorted()
                .toArray();
    }

    static Section limits(List<Held> held, FlightOutcome shown) {
        List<List<Value>> rows = new ArrayList<>();
        for (Held one : held) {
            rows.add(
                    List.of(
                            Value.words("flight-figure", one.words()),
                            Value.of(one.field(), one.value(), one.band()),
                            Value.of(one.field(), one.limit()),
                            Value.words("flight-standing", one.isKept() ? "kept" : "not kept")));
        }
        rows.add(told("time in the air", "flight-time", shown.figures().airS()));
        rows.add(told("a fan at its end", "flight-share", shown.figures().saturatedShare()));
        rows.add(told("energy", "flight-energy", shown.figures().energyJ()));
        rows.add(told("charge left", "flight-share", shown.figures().chargeLeft()));
        if (!shown.path().lines().isEmpty()) {
            double[] pulls = shown.series().of(FlightSeries.Kind.PULL);
            rows.add(
                    told(
                            "hardest pull of a line",
                            "flight-thrust",
                            Arrays.stream(pulls).max().orElse(0)));
        }
        return new Section.Table(
                "flight-limits",
                "The flight against its limits",
                List.of("flight-figure", "flight-length", "flight-length", "flight-standing"),
                rows);
    }

    private static List<Value> told(String words, String field, double value) {
        return List.of(
                Value.words("flight-figure", words),
                Value.of(field, value),
                new Value(field, new Value.Figure.NotComputed("no limit")),
                Value.words("flight-standing", "told"));
    }

    static Section events(FlightOutcome shown) {
        List<List<Value>> rows = new ArrayList<>();
        for (FlightOutcome.Event event : shown.events()) {
            rows.add(
                    List.of(
                            Value.of("flight-time", event.timeS()),
                            Value.words("flight-event", event.words()),
                            Value.words("part", event.part())));
        }
        return new Section.Table(
                "flight-events",
                "What happened",
                List.of("flight-time", "flight-event", "part"),
                rows);
    }
}
