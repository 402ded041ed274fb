package liftwright.flight.pilot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.flight.motion.Airframe;
import liftwright.flight.motion.Airframes;
import liftwright.flight.motion.Give;
import liftwright.flight.pilot.HoverMotion.Axis;
import liftwright.flight.pilot.Person.Holds;
import liftwright.physics.FanLaw;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.rig.Vec3;

/**
 * Whether the wearer of a rig can hold it by leaning and with the arms.
 *
 * @param modes of the rig left alone, the one that grows fastest first
 * @param level of the worst of them by what is published for aeroplanes
 * @param axes each axis by itself
 */
public record Steered(List<Mode> modes, Level level, List<AboutAxis> axes) {

    public Steered {
        modes = List.copyOf(modes);
        axes = List.copyOf(axes);
    }

    /**
     * One axis.
     *
     * @param modes of the rig left alone about this axis
     * @param means what the wearer turns it with; empty where nothing does
     * @param best of them, that which leaves the most phase
     * @param usualPhaseRad most phase left at a usual delay with the best, rad
     * @param practisedPhaseRad the same in practice
     */
    public record AboutAxis(
            Axis axis,
            List<Mode> modes,
            List<Means> means,
            Optional<Means> best,
            Holds holds,
            double usualPhaseRad,
            double practisedPhaseRad) {

        public AboutAxis {
            modes = List.copyOf(modes);
            means = List.copyOf(means);
        }

        /**
         * How long a push at full reach takes to reach the turn rate of a rotorcraft in hover
         * [ADS33], s.
         */
        public double toPublishedRateS() {
            double rate =
                    switch (axis) {
                        case PITCH -> Math.toRadians(13);
                        case ROLL -> Math.toRadians(50);
                        case YAW -> Math.toRadians(22);
                    };
            return best.map(b -> rate / b.mostRadps2()).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /** Whether a person can close all loops: the worst axis. */
    public Holds holds() {
        Holds worst = Holds.EASILY;
        for (AboutAxis one : axes) {
            worst = one.holds().compareTo(worst) > 0 ? one.holds() : worst;
        }
        return worst;
    }

    /** Of a rig at these values; empty where no hover was found. Allocates. */
    public static Optional<Steered> of(Plant plant, double[] p) {
        Balancing balancing = plant.balancing();
        Balancing.Worker worker = balancing.worker();
        HoverPoint hover = worker.liftOff(p);
        if (!hover.converged() || !hover.lifts()) {
            return Optional.empty();
        }
        HoverMotion motion = motion(plant, p, hover);
        BodyMeans body = new BodyMeans(balancing, worker, p, hover);
        List<AboutAxis> axes = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            axes.add(about(axis, motion.modes(axis), body.about(axis)));
        }
        List<Mode> modes = motion.modes();
        return Optional.of(new Steered(modes, Level.of(modes), axes));
    }

    private static HoverMotion motion(Plant plant, double[] p, HoverPoint hover) {
        Airframe frame = new Airframes(plant).of(p, Give.USUAL);
        List<HoverMotion.Intake> intakes = new ArrayList<>();
        for (int k = 0; k < frame.fans().size(); k++) {
            double flow =
                    FanLaw.massFlowKgps(
                            Math.max(0, hover.ledger().fans().get(k).thrustN()),
                            frame.densityKgpm3(),
                            plant.rig().fans().get(k).type().exitArea().si());
            intakes.add(new HoverMotion.Intake(frame.fans().get(k).intake(), flow));
        }
        // Pairs that turn against each other leave little; what is left is slower than all else.
        return new HoverMotion(hover.mass().massKg(), hover.mass().inertia(), Vec3.ZERO, intakes);
    }

    /** One axis from its motions and means. */
    static AboutAxis about(Axis axis, List<Mode> modes, List<Means> means) {
        Optional<Means> best = Optional.empty();
        double usual = Double.NEGATIVE_INFINITY;
        for (Means one : means) {
            double phase = Person.bestPhaseRad(Person.USUAL_S, one.inverseRadps(), modes);
            if (phase > usual) {
                usual = phase;
                best = Optional.of(one);
            }
        }
        return new AboutAxis(
                axis,
                modes,
                means,
                best,
                best.map(b -> Person.holds(b.inverseRadps(), modes)).orElse(Holds.NOT),
                usual,
                best.map(b -> Person.bestPhaseRad(Person.PRACTISED_S, b.inverseRadps(), modes))
                        .orElse(Double.NEGATIVE_INFINITY));
    }
}
