package liftwright.trials.predict;

import java.util.List;
import java.util.Optional;
import liftwright.numerics.CounterStream;
import liftwright.physics.Gravity;
import liftwright.plant.Plant;
import liftwright.review.restraint.ScaleReading;
import liftwright.rig.LimitName;
import liftwright.rig.Restraint;
import liftwright.rig.Rig;
import liftwright.trials.Run;

/**
 * The scale under wearer or stand: what it carries with no thrust, and what jets push back onto it
 * ({@link ScaleReading}).
 */
final class Platform {

    /** A measurement of lift that is worse than this tells little; common practice. */
    private static final double WANTED = 0.05;

    private static final long STREAM = CounterStream.channel("card/jets on the scale");

    private final Rig rig;
    private final Run run;
    private final Optional<ScaleReading> reading;

    private Platform(Rig rig, Run run, Optional<ScaleReading> reading) {
        this.rig = rig;
        this.run = run;
        this.reading = reading;
    }

    /**
     * @param notes takes what a scale cannot resolve
     */
    static Platform of(Rig rig, Run run, List<String> notes) {
        if (run.held() != Run.Held.SCALE) {
            return new Platform(rig, run, Optional.empty());
        }
        if (rig.restraint().platform().isEmpty()) {
            notes.add(
                    "no platform is declared: jets that strike the scale are left out; declare it under restraint");
            return new Platform(rig, run, Optional.empty());
        }
        Plant plant = Plant.assembleHeld(rig);
        Optional<ScaleReading> found =
                plant.holding()
                        .at(plant.parameters().nominal(), false)
                        .flatMap(held -> ScaleReading.of(rig, held))
                        .filter(scale -> scale.liftN() > 0);
        found.ifPresent(scale -> resolve(scale, run, notes));
        return new Platform(rig, run, found);
    }

    private static void resolve(ScaleReading scale, Run run, List<String> notes) {
        double share = 0;
        for (Run.Step step : run.steps()) {
            share =
                    Math.max(
                            share,
                            switch (step.level()) {
                                case Run.Level.Throttle(double throttle) -> throttle * throttle;
                                case Run.Level.OfWeight(double ofWeight) ->
                                        ofWeight * scale.weightN() / scale.liftN();
                            });
        }
        double doubt = scale.doubt(Math.min(1, share));
        if (!(doubt <= WANTED)) {
            notes.add(
                    "the scale cannot resolve the lift to 5 %: jets push "
                            + Math.round(100 * scale.hidden())
                            + " % of it back onto the platform, which is known to 30 % of itself from memory; use the load cell of a tether, or a platform out of the jets");
        }
    }

    /**
     * @param weightN of what is lifted, as declared
     */
    Optional<Watch> watch(double weightN) {
        double carriedKg = weightN / Gravity.STANDARD_MPS2;
        double unloaded = run.worn() ? 1 - rig.limits().si(LimitName.DWELL_SHARE) : 0;
        return Optional.of(
                new Watch(
                        Gauge.SCALE,
                        onStand() ? "scale under the stand" : "scale under the rig",
                        new int[0],
                        onStand()
                                ? Optional.empty()
                                : Optional.of(
                                        new Watch.Limit(
                                                carriedKg * (1 - (1 - unloaded) * (1 - hidden())),
                                                run.worn()
                                                        ? "dwell share, "
                                                                + rig.limits()
                                                                        .origin(
                                                                                LimitName
                                                                                        .DWELL_SHARE)
                                                        : "the rig lifts off: by definition"))));
    }

    private boolean onStand() {
        return rig.restraint()
                .platform()
                .filter(of -> of.under() == Restraint.Under.STAND)
                .isPresent();
    }

    /**
     * What it carries with no thrust, N.
     *
     * @param weightN of what is lifted, in this draw
     */
    double scaleN(double weightN) {
        return onStand() ? reading.map(ScaleReading::weightN).orElse(weightN) : weightN;
    }

    /** Share of the lift that jets on the platform hide. */
    double hidden() {
        return reading.map(ScaleReading::hidden).orElse(0.0);
    }

    /** The same in a draw. */
    double hidden(long seed, int draw) {
        double off = ScaleReading.JET_DOUBT / 2 * CounterStream.normal(seed, STREAM, draw);
        return Math.clamp(hidden() * (1 + off), 0, 1);
    }
}
