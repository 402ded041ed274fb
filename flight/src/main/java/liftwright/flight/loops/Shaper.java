package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds crossovers and gains of the loops of one axis, from the inside out: as fast as margin,
 * inner loop and everything else that bounds them let them be.
 */
final class Shaper {

    private static final double SLOWER = 0.93;
    private static final double FAR = 1e4;

    /** Range of a sweep below and above a crossover. */
    private static final double BELOW = 300;

    private static final double ABOVE = 200;

    private final Asked asked;
    private final Axis axis;

    /** Factor on all crossovers that were not declared, for the sake of robustness. */
    private final double slowed;

    /** How the body may give. */
    private final List<FlexMode> modes;

    private Cascade cascade;
    private final List<Loop.Level> levels = new ArrayList<>();
    private final List<Double> radps = new ArrayList<>();
    private final List<Shaped.Bound> bounds = new ArrayList<>();

    Shaper(Asked asked, Axis axis, Actuation actuation, double slowed, List<FlexMode> modes) {
        this.asked = asked;
        this.axis = axis;
        this.slowed = slowed;
        this.modes = modes;
        cascade = new Cascade(actuation, List.of());
    }

    /** An axis whose inner loops are shaped already, the first of its own so much slower. */
    Shaper(Asked asked, Axis axis, Shaped inner, double innerSlowed) {
        this(asked, axis, inner.cascade().actuation(), 1, inner.modes());
        cascade = inner.cascade();
        radps.add(inner.outermostRadps() * innerSlowed);
        levels.add(Loop.Level.ATTITUDE);
        bounds.add(Shaped.Bound.INNER);
    }

    /** An upper end of a crossover. */
    record Cap(Shaped.Bound bound, double radps) {}

    /** Adds a loop outside. */
    Shaper loop(Loop.Level level, double lateS, Cap... caps) {
        boolean ownDeclared = axis != Axis.YAW && axis != Axis.CLIMB;
        double corner = asked.corner(axis, level);
        double top = FAR;
        Shaped.Bound bound = Shaped.Bound.MARGIN;
        if (ownDeclared && asked.declared(level).crossoverRadps().isPresent()) {
            add(
                    level,
                    lateS,
                    corner,
                    asked.declared(level).crossoverRadps().getAsDouble(),
                    Shaped.Bound.DECLARED);
            return this;
        }
        if (radps.isEmpty()) {
            top = marginRadps(corner);
        } else {
            top = radps.getLast() / asked.ratio();
            bound = Shaped.Bound.INNER;
        }
        for (Cap cap : caps) {
            if (cap.radps() < top) {
                top = cap.radps();
                bound = cap.bound();
            }
        }
        if (slowed < 1) {
            top *= radps.isEmpty() ? slowed : 1;
            bound = radps.isEmpty() ? Shaped.Bound.ROBUST : bound;
        }
        settle(level, lateS, corner, top, bound);
        return this;
    }

    Shaped done() {
        return new Shaped(axis, cascade, levels, radps, bounds, modes);
    }

    /** Slows a loop until it has the margins asked. */
    private void settle(
            Loop.Level level, double lateS, double corner, double top, Shaped.Bound first) {
        double margin = ownMargin(level);
        double at = top;
        Shaped.Bound bound = first;
        for (int k = 0; k < 80; k++) {
            Cascade tried = cascade.with(stage(level, lateS, corner, at));
            Margins margins = margins(tried, tried.stages().size() - 1, at, 1, 1);
            // Rounding must not slow a loop that was placed exactly at its margin.
            boolean phase = margins.phaseMarginRad() >= margin - 1e-6;
            boolean gain = margins.gainMargin() >= asked.gainMargin();
            if (phase && gain && keepsApart(tried, at)) {
                break;
            }
            at *= SLOWER;
            bound =
                    !phase
                            ? Shaped.Bound.MARGIN
                            : gain ? Shaped.Bound.HARNESS : Shaped.Bound.GAIN_MARGIN;
        }
        add(level, lateS, corner, at, bound);
    }

    /** Whether the loop stays away from swinging with whatever gives in the harness. */
    private boolean keepsApart(Cascade tried, double at) {
        return HarnessCheck.keeps(
                tried, tried.stages().size() - 1, at, modes, 1, 1, Asked.LEAST_HARNESS_DISTANCE);
    }

    private double ownMargin(Loop.Level level) {
        return axis == Axis.YAW || axis == Axis.CLIMB ? asked.marginRad() : asked.marginRad(level);
    }

    private void add(Loop.Level level, double lateS, double corner, double at, Shaped.Bound bound) {
        cascade = cascade.with(stage(level, lateS, corner, at));
        levels.add(level);
        radps.add(at);
        bounds.add(bound);
    }

    /** A loop whose gain is one at a frequency. */
    private Cascade.Stage stage(Loop.Level level, double lateS, double corner, double at) {
        boolean asInner = level == Loop.Level.ATTITUDE;
        Cascade unit = cascade.with(new Cascade.Stage(1, corner * at, lateS, asInner));
        double gain = unit.open(unit.stages().size() - 1).at(at).gain();
        return new Cascade.Stage(1 / gain, corner * at, lateS, asInner);
    }

    /** Where 90° less all that is lost equals the margin, rad/s. */
    private double marginRadps(double corner) {
        Actuation act = cascade.actuation();
        Loop.Level level = axis == Axis.CLIMB ? Loop.Level.VELOCITY : Loop.Level.RATE;
        double left = Math.PI / 2 - Math.atan(corner) - ownMargin(level);
        double low = 1e-3;
        while (low < FAR && act.lostRad(low * 1.05) < left) {
            low *= 1.05;
        }
        return low >= FAR ? FAR : bisect(w -> act.lostRad(w) - left, low, low * 1.05);
    }

    private static double bisect(DoubleUnaryOperator f, double from, double to) {
        double low = from;
        double high = to;
        boolean rising = f.applyAsDouble(high) > 0;
        for (int k = 0; k < 80 && high - low > 1e-13 * high; k++) {
            double middle = 0.5 * (low + high);
            if (f.applyAsDouble(middle) < 0 == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Margins of a stage on other numbers. */
    static Margins margins(Cascade cascade, int stage, double radps, double inertia, double lags) {
        return Margins.of(
                cascade.open(stage, inertia, lags), radps / BELOW, Math.max(radps * ABOVE, 200));
    }
}
