package liftwright.learning.replay;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.physics.Gravity;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.review.restraint.ScaleReading;
import liftwright.rig.Restraint;
import liftwright.trials.predict.Gauge;

/**
 * What a scale or a tether carried before the fans woke: the rig with or without the one who wears
 * it, or something that is not known and stays. And full throttle at the declared values.
 */
final class Held {

    /** A weight further off than this is none of the rig's. */
    private static final double NEAR = 0.15;

    /** A tether that carries less of the weight than this is slack. */
    private static final double SLACK = 0.2;

    private final Plant plant;
    private final Recording recording;
    private final Throttles throttles;
    private final List<String> notes;
    private final SteadyState full;

    /**
     * @param notes takes what was taken for granted
     */
    Held(Plant plant, Recording recording, Throttles throttles, List<String> notes) {
        this.plant = plant;
        this.recording = recording;
        this.throttles = throttles;
        this.notes = notes;
        full = plant.state();
        plant.solve(plant.parameters().nominal(), Effects.ALL, plant.workspace(), full);
    }

    SteadyState full() {
        return full;
    }

    Optional<Channels.Found> scale() {
        Optional<Track> track = recording.track(Signal.SCALE, Track.ALL);
        if (track.isEmpty()) {
            return Optional.empty();
        }
        Optional<ScaleReading> jets = jets();
        double hidden = jets.map(ScaleReading::hidden).orElse(0.0);
        if (jets.isEmpty()) {
            notes.add(
                    "no platform is declared: what jets push back onto the scale is left out;"
                            + " declare it under restraint");
        }
        ToDoubleFunction<OfVector> carriedN =
                carried(track.get().samples().si(0) * Gravity.STANDARD_MPS2, "the scale");
        double jetsN = ScaleReading.JET_DOUBT * hidden * full.liftN() / Gravity.STANDARD_MPS2;
        return Optional.of(
                new Channels.Found(
                        (run, vector) ->
                                Math.max(
                                                0,
                                                carriedN.applyAsDouble(vector)
                                                        - (1 - hidden) * run.fans().liftN())
                                        / Gravity.STANDARD_MPS2,
                        Gauge.SCALE,
                        jetsN));
    }

    private Optional<ScaleReading> jets() {
        if (plant.rig().restraint().platform().isEmpty()) {
            return Optional.empty();
        }
        Plant held = Plant.assembleHeld(plant.rig());
        return held.holding()
                .at(held.parameters().nominal(), false)
                .flatMap(found -> ScaleReading.of(plant.rig(), found))
                .filter(scale -> scale.liftN() > 0);
    }

    /** What is carried with no thrust: what the rig weighs, else what was shown first. */
    private ToDoubleFunction<OfVector> carried(double firstN, String by) {
        boolean rested = throttles.wakesS() > throttles.fromS();
        OfVector declared = new OfVector(plant, false);
        declared.load(plant.parameters().nominal());
        double offWhole = Math.abs(firstN - declared.weightN());
        double offBare = Math.abs(firstN - declared.bareN());
        boolean stands =
                by.equals("the scale")
                        && plant.rig()
                                .restraint()
                                .platform()
                                .filter(of -> of.under() == Restraint.Under.STAND)
                                .isPresent();
        if (!rested) {
            return OfVector::weightN;
        }
        if (!stands && Math.min(offWhole, offBare) <= NEAR * declared.weightN()) {
            return offWhole <= offBare ? OfVector::weightN : OfVector::bareN;
        }
        notes.add(
                by
                        + " carried "
                        + Math.round(firstN)
                        + " N before the fans woke, which is not what the rig weighs: taken as it was");
        return vector -> firstN;
    }

    Optional<Channels.Found> tether() {
        Optional<Track> track = recording.track(Signal.TETHER_LOAD, Track.ALL);
        double firstN = track.map(of -> of.samples().si(0)).orElse(0.0);
        OfVector declared = new OfVector(plant, false);
        declared.load(plant.parameters().nominal());
        if (firstN < SLACK * declared.bareN()) {
            return Optional.empty();
        }
        ToDoubleFunction<OfVector> carriedN = carried(firstN, "the tether");
        return Optional.of(
                new Channels.Found(
                        (run, vector) ->
                                Math.max(0, carriedN.applyAsDouble(vector) - run.fans().liftN()),
                        Gauge.TETHER,
                        0));
    }
}
