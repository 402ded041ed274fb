package liftwright.flight.profile;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.fault.Fault;
import liftwright.rig.DefaultUsed;
import liftwright.rig.RigPath;

/**
 * A flight as it is wanted. Places are metres from the start: forward and right as the rig looked
 * there, height of its lowest part above the ground. Times count from the start of the profile.
 *
 * @param name as declared
 * @param start where and how it begins
 * @param steps in their order, at least one
 * @param limits within which a flight counts as well flown
 * @param aborts what ends it early, and how
 * @param kill when somebody presses a kill; empty where nobody does
 * @param faults what goes wrong on the way, in order of time
 * @param wind what blows; empty where the rig's site tells
 * @param together other modules in the scene; empty where it flies alone
 * @param defaults what the file leaves open: what stands in
 */
public record Profile(
        String name,
        Start start,
        List<Step> steps,
        Limits limits,
        List<Abort> aborts,
        Optional<Press> kill,
        List<Scripted> faults,
        Optional<Wind> wind,
        Optional<Together> together,
        List<DefaultUsed> defaults) {

    public Profile {
        steps = List.copyOf(steps);
        aborts = List.copyOf(aborts);
        faults = List.copyOf(faults);
        defaults = List.copyOf(defaults);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a profile has a step");
        }
    }

    /** One that flies alone. */
    public Profile(
            String name,
            Start start,
            List<Step> steps,
            Limits limits,
            List<Abort> aborts,
            Optional<Press> kill,
            List<Scripted> faults,
            Optional<Wind> wind,
            List<DefaultUsed> defaults) {
        this(name, start, steps, limits, aborts, kill, faults, wind, Optional.empty(), defaults);
    }

    /** What another module of the scene flies: nothing goes wrong with it by script. */
    public Profile of(Module module) {
        return new Profile(
                module.name(),
                start,
                module.steps().orElse(steps),
                limits,
                aborts,
                Optional.empty(),
                List.of(),
                wind,
                defaults);
    }

    /** Where no profile is at hand: up half a metre, ten seconds in one place, and down. */
    public static Profile usual() {
        return new Profile(
                "up, ten seconds in one place, down",
                new Start(Stand.GROUND, 0, OptionalDouble.empty()),
                List.of(
                        new Step.MakeLive(2),
                        new Step.Lift(0.5, 0.5),
                        new Step.Hold(10),
                        new Step.Land(0.3),
                        new Step.MakeDead(1)),
                new Limits(Math.PI / 4, 3, 1, 0.5, 1),
                List.of(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(
                        new DefaultUsed(
                                RigPath.of("profile"),
                                "up 0.5 m, 10 s, down",
                                "no profile was named")));
    }

    /** One thing after the other. */
    public sealed interface Step {

        /** Power comes on; the fans turn at idle for a time. */
        record MakeLive(double forS) implements Step {}

        /**
         * Straight up or down to a height.
         *
         * @param heightM of the lowest part above the ground, m, &gt; 0
         * @param climbMps how fast, m/s, &gt; 0
         */
        record Lift(double heightM, double climbMps) implements Step {}

        /** The set point stays for a time. */
        record Hold(double forS) implements Step {}

        /**
         * Straight to a point.
         *
         * @param forwardM from the start, m
         * @param rightM from the start, m
         * @param heightM of the lowest part, m; empty where the height stays
         * @param speedMps how fast the set point goes, m/s, &gt; 0
         */
        record Move(double forwardM, double rightM, OptionalDouble heightM, double speedMps)
                implements Step {}

        /**
         * Turns on the spot.
         *
         * @param byRad clockwise as seen from above, rad
         * @param rateRadps how fast, rad/s, &gt; 0
         */
        record Turn(double byRad, double rateRadps) implements Step {}

        /** Down to the ground where it is. */
        record Land(double sinkMps) implements Step {}

        /** Fans to zero, power off; then it stands for a time. */
        record MakeDead(double forS) implements Step {}
    }

    /** What it stands on before it is made live. */
    public enum Stand {
        GROUND,
        /** The weight on one foot, or on one edge of the frame. */
        ONE_FOOT,
        /** Held in the air at the height until it is let go, with the fans at their hover. */
        HELD
    }

    /**
     * @param on what it stands on
     * @param heightM of the lowest part where it is held, m
     * @param chargeShare of every pack; empty where it is as the rig declares
     * @param tethered whether the lines of the rig's tether hang over the start and hold it
     */
    public record Start(Stand on, double heightM, OptionalDouble chargeShare, boolean tethered) {

        /** One in no line. */
        public Start(Stand on, double heightM, OptionalDouble chargeShare) {
            this(on, heightM, chargeShare, false);
        }
    }

    /**
     * Within which a flight counts as well flown.
     *
     * @param tiltRad between the rig's upright and the plumb line
     * @param driftM level distance from the set point
     * @param heightLostM below the set point while it flies
     * @param missM distance from the last point that is held, at the end of the hold
     * @param landingMps sink at touch-down
     */
    public record Limits(
            double tiltRad, double driftM, double heightLostM, double missM, double landingMps) {}

    /** What an abort looks at. */
    public enum Watch {
        TILT,
        DRIFT,
        HEIGHT,
        SINK,
        CHARGE,
        CELL
    }

    /** What an abort does. */
    public enum Then {
        LAND,
        MAKE_DEAD
    }

    /**
     * @param watch what is looked at
     * @param level beyond which it acts (below which for charge and cell), SI
     * @param then what it does
     */
    public record Abort(Watch watch, double level, Then then) {}

    /**
     * Somebody presses a kill.
     *
     * @param atS when the button is pressed
     * @param id of the kill in the rig file
     */
    public record Press(double atS, String id) {}

    /**
     * Modules of the same rig in one scene.
     *
     * @param apartM least distance that shall be between any two of them
     * @param modules the others, at least one
     */
    public record Together(double apartM, List<Module> modules) {
        public Together {
            modules = List.copyOf(modules);
        }
    }

    /**
     * Another module: it flies by itself, in rough air, with tolerances and sensors of its own.
     *
     * @param name by which the answer calls it
     * @param forwardM of its start from that of the first
     * @param rightM of the same
     * @param afterS how long after the first it begins
     * @param steps its own; empty where it flies those of the first from its own start
     */
    public record Module(
            String name,
            double forwardM,
            double rightM,
            double afterS,
            Optional<List<Step>> steps) {}

    /** A fault at a time. */
    public record Scripted(double atS, Fault fault) {}

    /**
     * @param meanMps mean at 6 m height
     * @param fromRad where it comes from: 0 from ahead of the start, clockwise from above
     * @param gustMps what a single gust adds at its greatest
     * @param gustAtS when it begins
     * @param gustLengthM over which it builds up
     * @param turbulent whether it is rough besides
     */
    public record Wind(
            double meanMps,
            double fromRad,
            double gustMps,
            double gustAtS,
            double gustLengthM,
            boolean turbulent) {}
}
