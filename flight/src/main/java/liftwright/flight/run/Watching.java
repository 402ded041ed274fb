package liftwright.flight.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.flight.motion.BodyState;
import liftwright.flight.profile.Course;
import liftwright.flight.profile.Profile;
import liftwright.plant.Discharge;
import liftwright.plant.Drive;
import liftwright.rig.Rig;

/**
 * Looks on: what happens, what ends a flight early, how it ends. Allocates where something happens
 * and not else.
 */
final class Watching {

    /** How long a flight may last beyond its course: an abort near its end comes down. */
    static final double LONGER_S = 30;

    /** A blow beyond which nothing computed here holds: nothing lands so fast and flies on, m/s. */
    private static final double BLOW_MPS = 4;

    private static final double OVERTURNED_RAD = Math.toRadians(70);
    private static final double OUT_OF_SIGHT_M = 1000;

    /** In the air for so long it flies, and does not bounce. */
    private static final double AIR_S = 0.1;

    private static final double DOWN_S = 0.2;

    /** A landing has to stand for so long: until its lift has gone, and then for a second. */
    private static final double STANDS_S = Pilotage.SET_DOWN_S + 1;

    private static final double SUPPLY_EVERY_S = 0.01;

    private final FlightCase flight;
    private final Rig rig;
    private final Profile.Abort[] watched;
    private final List<Profile.Abort> acted = new ArrayList<>();
    private final Course course;
    private final Drive drive;
    private final Pilotage pilotage;
    private final List<FlightOutcome.Event> events;
    private boolean flying;
    private boolean touched;
    private boolean lost;
    private boolean spent;
    private boolean standsAfter;
    private double airS;
    private double groundS;
    private double downS;
    private double lastS;
    private double upMps;
    private double sinkMps;
    private double supplyS;
    private final boolean watchesCells;
    private double leastCellV;
    private double leastCharge = 1;
    private double greatestA;
    private int toldLeg = -1;

    Watching(FlightCase flight, Drive drive, Pilotage pilotage, List<FlightOutcome.Event> events) {
        this.flight = flight;
        this.drive = drive;
        this.pilotage = pilotage;
        this.events = events;
        rig = flight.plant().rig();
        watched = flight.profile().aborts().toArray(new Profile.Abort[0]);
        watchesCells =
                Arrays.stream(watched).anyMatch(abort -> abort.watch() == Profile.Watch.CELL);
        course = Course.of(flight.profile());
        flying = flight.profile().start().on() == Profile.Stand.HELD;
        supplyS = Double.NEGATIVE_INFINITY;
    }

    boolean goesOn(double timeS) {
        if (lost || drive.failed()) {
            return false;
        }
        if (pilotage.ended()) {
            return timeS < pilotage.landedByS() + STANDS_S && !(standsAfter && groundS > STANDS_S);
        }
        return pilotage.courseS(timeS) < course.endS();
    }

    boolean isFlying() {
        return flying;
    }

    /** How long ago a landing touched the ground, s; 0 before. */
    double downS() {
        return downS;
    }

    /** Whether it touched the ground in the last tick, after it had flown. */
    boolean touched() {
        return touched;
    }

    double sinkMps() {
        return sinkMps;
    }

    /** Lowest voltage of any cell at the network's last point, V. Dear: all cells are asked. */
    double leastCellV() {
        double least = Double.POSITIVE_INFINITY;
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            least = Math.min(least, drive.leastCellV(pack));
        }
        return least;
    }

    double leastCharge() {
        return leastCharge;
    }

    double greatestPackA() {
        return greatestA;
    }

    List<Profile.Abort> aborts() {
        return acted;
    }

    /**
     * A tick.
     *
     * @param carried share of the weight that the ground carries
     */
    void look(
            double timeS,
            boolean inAir,
            BodyState state,
            double heightM,
            double carried,
            double tilt) {
        double dtS = timeS - lastS;
        lastS = timeS;
        touched = false;
        tellLeg(timeS);
        ground(timeS, dtS, inAir, carried);
        if (timeS >= supplyS + SUPPLY_EVERY_S) {
            supplyS = timeS;
            supply(timeS, state, heightM);
        }
        upMps = state.upMps();
        if (flying) {
            aborts(timeS, state, heightM, tilt);
        }
        ends(timeS, state, heightM, tilt, inAir);
    }

    private void tellLeg(double timeS) {
        if (timeS >= 0 && pilotage.leg() != toldLeg && !pilotage.ended()) {
            toldLeg = pilotage.leg();
            tell(timeS, StepWords.of(course.step(toldLeg)), "");
        }
    }

    private void ground(double timeS, double dtS, boolean inAir, double carried) {
        downS += downS > 0 ? dtS : 0;
        if (inAir) {
            airS += dtS;
            groundS = 0;
            if (!flying && airS > AIR_S && pilotage.task() != Course.Task.LAND) {
                flying = true;
                downS = 0;
                tell(timeS, "it is in the air", "");
            }
            return;
        }
        airS = 0;
        if (flying && groundS == 0) {
            touched = true;
            sinkMps = Math.max(0, -upMps);
        }
        groundS += dtS;
        boolean wants = pilotage.task() == Course.Task.LAND || pilotage.isDead();
        if (flying && wants && (carried > 0.3 || groundS > DOWN_S)) {
            downS = dtS;
            flying = false;
            standsAfter = true;
            tell(timeS, "it touches the ground", "");
        }
    }

    private void supply(double timeS, BodyState state, double heightM) {
        leastCellV = watchesCells ? leastCellV() : Double.POSITIVE_INFINITY;
        greatestA = 0;
        leastCharge = 1;
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            greatestA = Math.max(greatestA, drive.packA(pack));
            leastCharge = Math.min(leastCharge, drive.chargeLeft(pack));
        }
        if (spent) {
            return;
        }
        Optional<Discharge.End> first = drive.ended();
        if (first.isPresent()) {
            spent = true;
            tell(timeS, LimitText.of(first.get().cause()), LimitText.part(flight, first.get()));
            if (flying && LimitText.grounds(first.get().cause())) {
                pilotage.land(timeS, state.y[BodyState.PX], state.y[BodyState.PY], heightM);
            }
        }
    }

    private void aborts(double timeS, BodyState state, double heightM, double tilt) {
        for (Profile.Abort abort : watched) {
            if (exceeds(abort, state, heightM, tilt) && !acted.contains(abort)) {
                acted.add(abort);
                tell(timeS, StepWords.of(abort), "");
                switch (abort.then()) {
                    case LAND ->
                            pilotage.land(
                                    timeS, state.y[BodyState.PX], state.y[BodyState.PY], heightM);
                    case MAKE_DEAD -> pilotage.makeDead();
                }
            }
        }
    }

    private boolean exceeds(Profile.Abort abort, BodyState state, double heightM, double tilt) {
        double[] point = pilotage.point;
        return switch (abort.watch()) {
            case TILT -> tilt > abort.level();
            case DRIFT ->
                    Math.hypot(state.y[BodyState.PX] - point[0], state.y[BodyState.PY] - point[1])
                            > abort.level();
            case HEIGHT -> heightM > abort.level();
            case SINK -> -state.upMps() > abort.level();
            case CHARGE -> leastCharge < abort.level();
            case CELL -> leastCellV < abort.level();
        };
    }

    private void ends(double timeS, BodyState state, double heightM, double tilt, boolean inAir) {
        double x = state.y[BodyState.PX];
        double y = state.y[BodyState.PY];
        double away = Math.sqrt(x * x + y * y);
        if (tilt > OVERTURNED_RAD) {
            lose(timeS, inAir ? "it turns over in the air" : "it tips over");
        } else if (touched && sinkMps > BLOW_MPS) {
            lose(timeS, "it strikes the ground");
        } else if (!(away < OUT_OF_SIGHT_M) || !(Math.abs(heightM) < OUT_OF_SIGHT_M)) {
            lose(timeS, "it is out of sight");
        }
    }

    private void lose(double timeS, String words) {
        if (!lost) {
            lost = true;
            tell(timeS, words, "");
        }
    }

    private void tell(double timeS, String words, String part) {
        events.add(new FlightOutcome.Event(Math.max(0, timeS), words, part));
    }

    FlightOutcome.End end(Profile.Limits limits, FlightOutcome.Figures figures) {
        if (lost || drive.failed()) {
            return FlightOutcome.End.LOST;
        }
        boolean hard = figures.landingMps() > limits.landingMps();
        if (pilotage.ended()) {
            if (hard || flying) {
                return FlightOutcome.End.LOST;
            }
            return spent && acted.isEmpty() ? FlightOutcome.End.SPENT : FlightOutcome.End.ABORTED;
        }
        boolean came = figures.airS() > 0;
        if (!came) {
            return FlightOutcome.End.LOST;
        }
        return flying ? FlightOutcome.End.REACHED : FlightOutcome.End.LANDED;
    }
}
