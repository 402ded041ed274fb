package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.List;

/**
 * Loops of one axis, each round the one inside it. The innermost is round an integrator behind
 * {@link Actuation}; each outer one commands the one inside and is integrated once more. What an
 * outer loop is told is late by a delay of its own, except the angle, which is the integral of the
 * measured rate.
 */
public final class Cascade {

    /**
     * One loop.
     *
     * @param gainPerS proportional gain, 1/s
     * @param cornerRadps below which the integral is the greater, rad/s; 0 without one
     * @param lateS delay of what it is told, s
     * @param asInner whether it is told the integral of what the loop inside it is told
     */
    public record Stage(double gainPerS, double cornerRadps, double lateS, boolean asInner) {}

    private final Actuation actuation;
    private final List<Stage> stages;
    private final FlexMode mode;

    public Cascade(Actuation actuation, List<Stage> stages) {
        this(actuation, stages, FlexMode.RIGID);
    }

    private Cascade(Actuation actuation, List<Stage> stages, FlexMode mode) {
        this.actuation = actuation;
        this.stages = List.copyOf(stages);
        this.mode = mode;
    }

    /** The same round a body that gives. */
    Cascade giving(FlexMode how) {
        return new Cascade(actuation, stages, how);
    }

    /** The same with another loop outside. */
    public Cascade with(Stage stage) {
        List<Stage> more = new ArrayList<>(stages);
        more.add(stage);
        return new Cascade(actuation, more, mode);
    }

    public Actuation actuation() {
        return actuation;
    }

    public List<Stage> stages() {
        return stages;
    }

    /** The open loop of a stage, the inner ones closed, on the numbers as declared. */
    public Transfer open(int stage) {
        return open(stage, 1, 1);
    }

    /**
     * The same on other numbers.
     *
     * @param inertia over the declared one: gains stay as designed
     * @param lags spool lag, delays and filter over those declared
     */
    public Transfer open(int stage, double inertia, double lags) {
        return radps -> openAndClosed(stage, radps, inertia, lags, false);
    }

    /** From the command of a stage to what truly happens. */
    public Transfer closed(int stage, double inertia, double lags) {
        return radps -> openAndClosed(stage, radps, inertia, lags, true);
    }

    private Complex openAndClosed(
            int last, double radps, double inertia, double lags, boolean close) {
        Complex inside = actuation.forward(radps, lags).times(1 / inertia);
        if (mode.share() > 0) {
            inside = inside.times(mode.at(radps));
        }
        Complex measure = actuation.measure(radps, lags);
        Complex told = measure;
        for (int k = 0; ; k++) {
            Stage stage = stages.get(k);
            if (!stage.asInner()) {
                told = k == 0 ? measure : Complex.delay(radps, lags * stage.lateS());
            }
            Complex forward = inside.times(gain(stage, radps));
            Complex open = forward.times(told);
            if (k == last && !close) {
                return open;
            }
            Complex closed = forward.over(Complex.ONE.plus(open));
            if (k == last) {
                return closed;
            }
            inside = closed;
        }
    }

    /** k (1 + ω_i/jω)/jω. */
    private static Complex gain(Stage stage, double radps) {
        return new Complex(0, -stage.gainPerS() / radps)
                .times(new Complex(1, -stage.cornerRadps() / radps));
    }
}
