package liftwright.plant.identify;

import java.util.List;
import java.util.Locale;
import liftwright.plant.identify.FanUnknown.Channel;

/** What the reader of a fit must know, in sentences. */
final class FanNotes {

    /** Below this share of the voltage the resistance is hardly felt. */
    private static final double FELT = 0.02;

    private final List<BenchPoint> points;
    private final FanStart start;
    private final Fitted out;

    FanNotes(List<BenchPoint> points, FanStart start, Fitted out) {
        this.points = points;
        this.start = start;
        this.out = out;
    }

    void add(List<FanUnknown> unknowns) {
        boolean still = points.stream().allMatch(point -> point.airspeedMps() == 0);
        for (FanFit.Coefficient one : out.coefficients) {
            if (one.assumed() && one.unknown().positive()) {
                say(
                        "the "
                                + one.unknown().words()
                                + " cannot be told from these rows: "
                                + String.format(Locale.ROOT, "%.4g", one.value())
                                + " (SI) is a default, known to a factor of "
                                + String.format(
                                        Locale.ROOT, "%.2g", Math.exp(1.96 * one.deviation()))
                                + "; declare it");
            }
        }
        start.priors.forEach(
                (unknown, prior) -> {
                    if (prior.declared() && prior.deviation() == 0) {
                        say("the " + unknown.words() + " is declared without ±: taken as exact");
                    }
                });
        if (!start.isElectric()) {
            say("no row tells a current: nothing of the motor is known");
        } else {
            resistance(unknowns);
            if (!out.greatest.containsKey(Channel.VOLTAGE)) {
                say(
                        "no row tells both duty and speed: the speed constant rests on what is"
                                + " declared or assumed, and not on these rows");
            }
            if (points.stream()
                    .anyMatch(point -> point.duty().isEmpty() && point.speedRadps().isEmpty())) {
                say("rows that tell neither duty nor speed are taken as full throttle");
            }
        }
        drift(unknowns, FanUnknown.THRUST_DRIFT, "thrust");
        drift(unknowns, FanUnknown.TORQUE_DRIFT, "torque");
        if (!still
                && points.stream().mapToDouble(BenchPoint::airspeedMps).distinct().count() == 1) {
            say(
                    "all rows have one airspeed: there the advance ratio falls as speed rises, so its"
                            + " effect cannot be told from drift over speed; the coefficients say"
                            + " nothing about another airspeed");
        }
        if (!still) {
            say(
                    "rows in a stream of air: the coefficients are those of no stream, beyond the rows");
        }
        if (out.scatter.values().stream().anyMatch(s -> s <= WeighedFit.LEAST_SCATTER)) {
            say("readings that fit better than 0.1 % are taken to scatter by 0.1 %");
        }
    }

    private void resistance(List<FanUnknown> unknowns) {
        if (!unknowns.contains(FanUnknown.WINDING)) {
            return;
        }
        double share = 0;
        for (BenchPoint point : points) {
            double ohm =
                    out.values.getOrDefault(FanUnknown.WINDING, 0.0) + out.priors.onResistance();
            share =
                    Math.max(
                            share,
                            ohm
                                    * point.currentA().orElse(0)
                                    / (point.voltageV() * point.duty().orElse(1)));
        }
        if (share < FELT) {
            say(
                    "resistance takes "
                            + percent(share)
                            + " of the voltage at most: resistance and no-load current are barely"
                            + " to be told from these rows");
        }
    }

    private void drift(List<FanUnknown> unknowns, FanUnknown unknown, String what) {
        int index = unknowns.indexOf(unknown);
        if (index < 0) {
            return;
        }
        FanFit.Coefficient own = out.coefficients.get(index);
        if (own.low() <= 0 && own.high() >= 0) {
            say(
                    "whether the "
                            + what
                            + " coefficient drifts over speed cannot be told from these rows: speed"
                            + " to the power "
                            + String.format(
                                    Locale.ROOT,
                                    "%.3f (%.3f to %.3f)",
                                    own.value(),
                                    own.low(),
                                    own.high())
                            + " is carried as doubt");
        } else {
            say(
                    "the "
                            + what
                            + " coefficient drifts as speed to the power "
                            + String.format(
                                    Locale.ROOT,
                                    "%.3f (supported at 1 %%); it holds from %.0f to %.0f rad/s",
                                    out.values.getOrDefault(unknown, 0.0),
                                    out.leastRadps,
                                    out.greatestRadps));
        }
    }

    private void say(String words) {
        out.notes.add(words);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.1f %%", 100 * share);
    }
}
