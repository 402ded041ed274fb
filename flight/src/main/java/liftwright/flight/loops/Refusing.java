package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** Looks for what stands against loops, and for the number that would have to change. */
final class Refusing {

    private final Craft craft;
    private final Asked asked;

    /** At hover: no lag changes it. */
    private final LoopDesign.Authority authority;

    Refusing(Craft craft, Asked asked, LoopDesign.Authority authority) {
        this.craft = craft;
        this.asked = asked;
        this.authority = authority;
    }

    /** Too little lift, no trim, too little authority: before any loop is made. */
    Optional<LoopDesign.Refused> ofAuthority(boolean trims) {
        if (authority.liftShare() > 0 && authority.liftShare() < Asked.LEAST_LIFT_SHARE) {
            return refuse(
                    new LoopDesign.Would(
                            Reason.HOVER_THROTTLE_TOO_HIGH,
                            "greatest level lift over weight",
                            "1",
                            authority.liftShare(),
                            Asked.LEAST_LIFT_SHARE));
        }
        if (!trims) {
            return Optional.of(
                    new LoopDesign.Refused(
                            Reason.NO_TRIM,
                            "no sharing out of thrust holds the weight level: the centre of mass"
                                    + " lies outside of what the fans can balance",
                            List.of()));
        }
        double tilt = Asked.LEAST_TILT_RADPS * Asked.LEAST_TILT_RADPS * Asked.TILT_IN_REACH_RAD;
        if (authority.rollRadps2() < tilt) {
            return refuse(
                    new LoopDesign.Would(
                            Reason.ROLL_AUTHORITY_SHORT,
                            "angular acceleration left in roll at hover",
                            "rad/s²",
                            authority.rollRadps2(),
                            tilt));
        }
        if (authority.pitchRadps2() < tilt) {
            return refuse(
                    new LoopDesign.Would(
                            Reason.PITCH_AUTHORITY_SHORT,
                            "angular acceleration left in pitch at hover",
                            "rad/s²",
                            authority.pitchRadps2(),
                            tilt));
        }
        if (craft.yawHeld() && authority.yawRadps2() < Asked.LEAST_YAW_RADPS2) {
            return refuse(
                    new LoopDesign.Would(
                            Reason.NO_YAW_AUTHORITY,
                            "angular acceleration left in yaw at hover",
                            "rad/s²",
                            authority.yawRadps2(),
                            Asked.LEAST_YAW_RADPS2));
        }
        return Optional.empty();
    }

    /** A velocity loop that was told to go without its integral. */
    Optional<LoopDesign.Refused> ofIntegral() {
        return asked.declared(Loop.Level.VELOCITY).integral().orElse(true)
                ? Optional.empty()
                : Optional.of(
                        new LoopDesign.Refused(
                                Reason.DECLARED_WITHOUT_INTEGRAL,
                                "the velocity loop is declared without an integral: momentum drag"
                                        + " then pushes the rig downwind for as long as it blows;"
                                        + " declare `integral: yes`",
                                List.of(
                                        new LoopDesign.Would(
                                                Reason.DECLARED_WITHOUT_INTEGRAL,
                                                "integral of the velocity loop",
                                                "1",
                                                0,
                                                1))));
    }

    /** Declared crossovers that lack their margin, or lie too near their inner loop. */
    Optional<LoopDesign.Refused> ofDeclared(Attempt attempt) {
        for (Shaped shaped : attempt.shaped()) {
            int first = shaped.cascade().stages().size() - shaped.levels().size();
            for (int k = 0; k < shaped.levels().size(); k++) {
                if (shaped.bound().get(k) != Shaped.Bound.DECLARED) {
                    continue;
                }
                Loop.Level level = shaped.levels().get(k);
                Margins margins =
                        Shaper.margins(shaped.cascade(), first + k, shaped.radps().get(k), 1, 1);
                double margin = asked.marginRad(level);
                if (margins.phaseMarginRad() < margin - 1e-9
                        || margins.gainMargin() < asked.gainMargin()) {
                    return Optional.of(declared(shaped, k, margins));
                }
                Optional<Loop.Harness> harness =
                        HarnessCheck.nearest(
                                shaped.cascade(),
                                first + k,
                                shaped.radps().get(k),
                                shaped.modes(),
                                1,
                                1);
                if (harness.isPresent()
                        && harness.get().distance() < Asked.LEAST_HARNESS_DISTANCE) {
                    return Optional.of(declaredWorn(shaped, k, harness.get()));
                }
            }
        }
        return Optional.empty();
    }

    private LoopDesign.Refused declared(Shaped shaped, int at, Margins margins) {
        Loop.Level level = shaped.levels().get(at);
        List<LoopDesign.Would> would = new ArrayList<>();
        double now = shaped.radps().get(at);
        would.addAll(lower(Reason.DECLARED_CROSSOVER_TOO_HIGH, level, now));
        if (margins.stable()) {
            would.add(
                    new LoopDesign.Would(
                            Reason.DECLARED_MARGIN_NOT_REACHED,
                            "phase margin asked of the " + level.words() + " loop",
                            "rad",
                            asked.marginRad(level),
                            margins.phaseMarginRad()));
        }
        return new LoopDesign.Refused(
                Reason.DECLARED_CROSSOVER_TOO_HIGH,
                String.format(
                        Locale.ROOT,
                        "the %s loop in %s is declared to cross over at %.2f Hz, where %.0f° of phase"
                                + " margin and a gain margin of %.1f are left, and %.0f° and %.1f are"
                                + " asked",
                        level.words(),
                        shaped.axis().words(),
                        now / (2 * Math.PI),
                        Math.toDegrees(margins.phaseMarginRad()),
                        margins.gainMargin(),
                        Math.toDegrees(asked.marginRad(level)),
                        asked.gainMargin()),
                would);
    }

    /** Declared so fast that it would swing, or nearly, with the wearer in the harness. */
    private LoopDesign.Refused declaredWorn(Shaped shaped, int at, Loop.Harness harness) {
        Loop.Level level = shaped.levels().get(at);
        double now = shaped.radps().get(at);
        List<LoopDesign.Would> would = new ArrayList<>();
        would.addAll(lower(Reason.HARNESS_MODE_TOO_NEAR, level, now));
        return new LoopDesign.Refused(
                Reason.HARNESS_MODE_TOO_NEAR,
                String.format(
                        Locale.ROOT,
                        "the %s loop in %s is declared to cross over at %.2f Hz, where a wearer who"
                                + " gives at %.1f Hz in the harness leaves a distance of %.2f from"
                                + " swinging, and %.2f is asked",
                        level.words(),
                        shaped.axis().words(),
                        now / (2 * Math.PI),
                        harness.radps() / (2 * Math.PI),
                        harness.distance(),
                        Asked.LEAST_HARNESS_DISTANCE),
                would);
    }

    /** A declared crossover as high as the loop would be without it; none where none is. */
    private List<LoopDesign.Would> lower(Reason reason, Loop.Level level, double radps) {
        return highest(level).stream()
                .mapToObj(
                        to ->
                                new LoopDesign.Would(
                                        reason,
                                        "declared crossover of the " + level.words() + " loop",
                                        "Hz",
                                        radps / (2 * Math.PI),
                                        to / (2 * Math.PI)))
                .toList();
    }

    /** What the loop would be without its declared crossover, on the slowest axis it is for. */
    private OptionalDouble highest(Loop.Level level) {
        return Attempt.of(craft, asked.without(level), authority).shaped().stream()
                .filter(shaped -> shaped.axis() != Axis.YAW && shaped.axis() != Axis.CLIMB)
                .filter(shaped -> shaped.axis() != Axis.ACROSS || level != Loop.Level.ATTITUDE)
                .filter(shaped -> shaped.levels().contains(level))
                .mapToDouble(shaped -> shaped.radps().get(shaped.levels().indexOf(level)))
                .min();
    }

    /** One per revolution that shows as a turning the loops would follow. */
    Optional<LoopDesign.Refused> ofAliasing(Attempt attempt) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Lifter fan : craft.fans()) {
            double hz = fan.rotor().speedRadps() / (2 * Math.PI);
            if (hz > 0) {
                least = Math.min(least, hz * (1 - Asked.SPEED_SPAN));
                most = Math.max(most, hz * (1 + Asked.SPEED_SPAN));
            }
        }
        double fastest = 0;
        for (Shaped shaped : attempt.shaped()) {
            if (shaped.levels().getFirst() == Loop.Level.RATE) {
                fastest = Math.max(fastest, shaped.radps().getFirst());
            }
        }
        double band = Asked.ALIAS_ABOVE * fastest / (2 * Math.PI);
        double rate = craft.lags().gyroHz();
        if (most == 0 || Aliasing.lowestShownHz(least, most, rate) >= band) {
            return Optional.empty();
        }
        String words =
                String.format(
                        Locale.ROOT,
                        "one per revolution of the fans (%.0f to %.0f Hz) shows at %.0f Hz and above"
                                + " in a gyro that is read at %.0f Hz; the rate loop must see nothing"
                                + " below %.0f Hz",
                        least,
                        most,
                        Aliasing.lowestShownHz(least, most, rate),
                        rate,
                        band);
        List<LoopDesign.Would> would =
                Aliasing.rateHz(least, most, rate, band).stream()
                        .mapToObj(
                                to ->
                                        new LoopDesign.Would(
                                                Reason.GYRO_ALIASING,
                                                "rate at which the gyro is read",
                                                "Hz",
                                                rate,
                                                to))
                        .toList();
        return Optional.of(new LoopDesign.Refused(Reason.GYRO_ALIASING, words, would));
    }

    /** A loop that is slower than worth having: what would make it fast enough. */
    LoopDesign.Refused ofSlowness(Attempt.Slow slow) {
        List<LoopDesign.Would> would =
                Knob.of(craft).stream()
                        .filter(Knob::moves)
                        .flatMap(knob -> enough(knob).stream())
                        .sorted(Comparator.comparingDouble(Refusing::change))
                        .toList();
        List<LoopDesign.Would> all = would.isEmpty() ? together(slow) : would;
        Reason reason = all.isEmpty() ? lagging(slow) : all.getFirst().reason();
        return new LoopDesign.Refused(
                reason,
                String.format(
                        Locale.ROOT,
                        "the %s loop in %s can cross over at %.2f rad/s at most (bound by %s), and"
                                + " %.2f rad/s is the slowest worth having%s",
                        slow.level().words(),
                        slow.axis().words(),
                        slow.radps(),
                        slow.bound().words,
                        slow.leastRadps(),
                        all.isEmpty() ? "" : "; what would do: " + words(all.getFirst())),
                all);
    }

    /** Least change of one number that makes all loops fast enough. */
    private Optional<LoopDesign.Would> enough(Knob knob) {
        if (!fast(knob.craft().apply(knob.best()))) {
            return Optional.empty();
        }
        double low = knob.now();
        double high = knob.best();
        for (int k = 0; k < 40 && Math.abs(high - low) > 1e-4 * Math.max(low, high); k++) {
            // Between values of unlike size halfway is their geometric mean; towards none half.
            double middle = knob.best() == 0 ? 0.5 * (low + high) : Math.sqrt(low * high);
            if (fast(knob.craft().apply(middle))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Optional.of(
                new LoopDesign.Would(knob.reason(), knob.what(), knob.unit(), knob.now(), high));
    }

    private boolean fast(Craft other) {
        return Attempt.isFast(other, asked, authority);
    }

    private static double change(LoopDesign.Would would) {
        return would.to() == 0 || would.now() == 0
                ? Double.POSITIVE_INFINITY
                : Math.abs(Math.log(would.to() / would.now()));
    }

    /** Where no one number would do: all lags and delays together. */
    private List<LoopDesign.Would> together(Attempt.Slow slow) {
        double now = totalS(slow.axis());
        Knob all =
                new Knob(
                        lagging(slow),
                        "all lags and delays of the loop together",
                        "s",
                        now,
                        1e-6 * now,
                        to -> craft.with(to / now));
        return enough(all).stream().toList();
    }

    private double totalS(Axis axis) {
        return new Dynamics(craft).of(axis == Axis.ACROSS ? Axis.ROLL : axis).totalS();
    }

    /** What takes the most of the phase at the slowest crossover worth having. */
    private Reason lagging(Attempt.Slow slow) {
        Lags lags = craft.lags();
        Dynamics dynamics = new Dynamics(craft);
        record Part(Reason reason, double seconds) {}
        return Stream.of(
                        new Part(
                                Reason.SPOOL_LAG_TOO_LONG,
                                dynamics.of(slow.axis() == Axis.ACROSS ? Axis.ROLL : slow.axis())
                                        .spoolS()),
                        new Part(Reason.CONTROLLER_DELAY_TOO_LONG, lags.escS()),
                        new Part(Reason.COMPUTER_DELAY_TOO_LONG, lags.computerS()),
                        new Part(Reason.SENSOR_DELAY_TOO_LONG, lags.gyroS()),
                        new Part(Reason.FILTER_TOO_LOW, lags.filterS()),
                        new Part(Reason.RATE_TOO_LOW, 0.5 / lags.controlHz()),
                        new Part(
                                Reason.VELOCITY_ESTIMATE_TOO_LATE,
                                slow.axis() == Axis.ACROSS || slow.axis() == Axis.CLIMB
                                        ? lags.velocityS()
                                        : 0))
                .max(Comparator.comparingDouble(Part::seconds))
                .map(Part::reason)
                .orElseThrow();
    }

    private static Optional<LoopDesign.Refused> refuse(LoopDesign.Would would) {
        return Optional.of(new LoopDesign.Refused(would.reason(), words(would), List.of(would)));
    }

    private static String words(LoopDesign.Would would) {
        return String.format(
                Locale.ROOT,
                "%s is %.3g %s, and %.3g would do",
                would.what(),
                would.now(),
                would.unit(),
                would.to());
    }
}
