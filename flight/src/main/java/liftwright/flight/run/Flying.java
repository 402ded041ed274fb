package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.flight.loops.Standing;
import liftwright.flight.loops.Wanted;
import liftwright.flight.motion.BodyState;
import liftwright.flight.motion.Motion;
import liftwright.flight.profile.Course;
import liftwright.flight.profile.Profile;
import liftwright.physics.Gravity;
import liftwright.physics.Rotation;
import liftwright.plant.Drive;
import liftwright.rig.Rig;

/** One flight as it goes. Allocates nothing from tick to tick but where something happens. */
final class Flying {

    /** How long a held rig is held at its hover before it is let go, s. */
    private static final double HELD_S = 1.5;

    /** A rig on one foot is let go when its fans carry this share of its weight. */
    private static final double LIGHT = 0.9;

    private final FlightCase flight;
    private final Profile profile;
    private final Scene scene;
    private final Motion motion;
    private final Drive drive;
    private final Rates rates;
    private final Steersman steersman;
    private final Lookout lookout;
    private final CommandDelay line;
    private final Course course;
    private final Pilotage pilotage;
    private final List<FlightOutcome.Event> events = new ArrayList<>();
    private final Happenings happenings;
    private final Watching watching;
    private final Keeping keeping;
    private final BodyState state = new BodyState();
    private final BodyState hold = new BodyState();
    private final Wanted wanted = new Wanted();
    private final double[] felt = new double[BodyState.OWN];
    private final double[] force = new double[3];
    private final double[] turned = new double[9];
    private final double[] speeds;
    private final double[] fanV;
    private final double[] duty;
    private final double[] none;
    private final double weightN;
    private final int fans;
    private final int delayTicks;
    private long tick;
    private boolean letGo;
    private boolean converged = true;
    private boolean pulled;

    Flying(FlightCase flight, Scene scene, Drive drive, Crew crew, Rates rates) {
        this.flight = flight;
        this.scene = scene;
        this.drive = drive;
        this.rates = rates;
        profile = flight.profile();
        Rig rig = flight.plant().rig();
        motion = scene.motion();
        fans = rig.fans().size();
        speeds = new double[fans];
        fanV = new double[fans];
        duty = new double[fans];
        none = new double[fans];
        weightN = scene.frame().massKg() * Gravity.STANDARD_MPS2;
        steersman = crew.steersman();
        lookout = crew.lookout(flight, rates.tickS());
        delayTicks = rates.delayTicks(1 + Deviate.CONTROL_DELAY.of(flight.seed(), flight.number()));
        line = new CommandDelay(fans, delayTicks / rates.every() + 2);
        course = Course.of(profile);
        pilotage = new Pilotage(course, scene.soleM());
        happenings = new Happenings(rig, profile, drive, events);
        watching = new Watching(flight, drive, pilotage, events);
        keeping = new Keeping(course, scene, drive, pilotage, watching);
    }

    FlightOutcome fly() {
        begin();
        while (goesOn()) {
            go();
        }
        return outcome(timeS());
    }

    /** Whether there is more to fly. */
    boolean goesOn() {
        return watching.goesOn(timeS());
    }

    /** Flies a tick. */
    void go() {
        tick(timeS());
        tick++;
        after(timeS());
    }

    /** What came of it. */
    FlightOutcome outcome() {
        return outcome(timeS());
    }

    private double timeS() {
        return tick * rates.tickS() - heldS();
    }

    /** For how long it is held before its flight begins, s. */
    double heldS() {
        return heldS(profile);
    }

    /** For how long a rig is held before its flight begins, s. */
    static double heldS(Profile profile) {
        return profile.start().on() == Profile.Stand.HELD ? HELD_S : 0;
    }

    BodyState state() {
        return state;
    }

    Scene scene() {
        return scene;
    }

    double thrustN(int fan) {
        return drive.thrustN(fan);
    }

    double weightN() {
        return weightN;
    }

    /** Waits a tick for its beginning. */
    void rest() {
        motion.rest(rates.tickS(), state);
    }

    private boolean isHeld() {
        return profile.start().on() == Profile.Stand.HELD;
    }

    void begin() {
        letGo = profile.start().on() == Profile.Stand.GROUND;
        if (isHeld()) {
            state.rest(0, 0, profile.start().heightM() + scene.soleM(), 0);
            motion.begin(state);
        } else {
            motion.stand(state, 0, 0, 0);
        }
        hold.set(state);
        feelRest();
        lookout.begin(state, force);
        steersman.begin();
        line.begin();
    }

    private void tick(double timeS) {
        if (timeS >= happenings.nextS()) {
            happenings.go(timeS, steersman, lookout);
        }
        if (happenings.wantsLanding) {
            pilotage.land(timeS, x(), y(), heightM());
        }
        pilotage.go(timeS, watching.isFlying());
        if (tick % rates.every() == 0 && !happenings.isSilent()) {
            command();
        }
        line.arrive(tick, duty);
        boolean off =
                happenings.isZero() || pilotage.isDead() || pilotage.task() == Course.Task.DEAD;
        drive.duties(off ? none : duty);
        converged &= motion.step(rates.tickS(), drive, state);
        motion.specificForceMps2(force);
        holdStill(timeS);
        drive.speedsRadps(speeds);
        lookout.look(tick + 1, state, force, speeds);
    }

    /** A rig that is held does not move, whatever its fans do. */
    private void holdStill(double timeS) {
        if (letGo) {
            return;
        }
        letGo = isHeld() ? timeS + rates.tickS() >= 0 : scene.upN(drive) >= LIGHT * weightN;
        state.set(hold);
        feelRest();
        if (letGo) {
            motion.begin(state);
        }
    }

    /** What is felt at rest: one g upwards, as the rig is turned. */
    private void feelRest() {
        Rotation.matrix(state.y, BodyState.QW, turned);
        for (int k = 0; k < 3; k++) {
            force[k] = -Gravity.STANDARD_MPS2 * turned[6 + k];
        }
    }

    private void command() {
        lookout.felt(felt);
        pilotage.tell(wanted, watching.downS());
        drive.busesV(fanV);
        happenings.report(steersman);
        steersman.steer(
                rates.every() * rates.tickS(),
                felt,
                standing(),
                wanted,
                fanV,
                line.send(tick + delayTicks));
    }

    /** On one foot the computer does not know that it stands: its integrals are live. */
    private Standing standing() {
        if (!letGo) {
            return isHeld() ? Standing.TIED : Standing.FREE;
        }
        if (motion.greatestPullN() > 0) {
            return Standing.TIED;
        }
        int feet = scene.frame().feet().size();
        int down = motion.feetDown();
        if (down == 0 || profile.start().on() == Profile.Stand.ONE_FOOT) {
            return Standing.FREE;
        }
        return 2 * down > feet ? Standing.STANDS : Standing.ONE_FOOT;
    }

    private void after(double timeS) {
        boolean inAir = letGo && motion.feetDown() == 0;
        double tilt = state.tiltRad();
        watching.look(timeS, inAir, state, heightM(), motion.groundN() / weightN, tilt);
        if (watching.touched()) {
            keeping.touch(watching.sinkMps());
        }
        if (inAir && watching.isFlying() && timeS >= 0) {
            keeping.air(timeS, rates.tickS(), state, tilt, duty);
        }
        if (letGo && !pulled && motion.greatestPullN() > 0) {
            pulled = true;
            events.add(new FlightOutcome.Event(Math.max(0, timeS), "a line pulls", "tether"));
        }
        keeping.look(timeS, rates.tickS(), state, tilt);
    }

    private double x() {
        return state.y[BodyState.PX];
    }

    private double y() {
        return state.y[BodyState.PY];
    }

    private double heightM() {
        return state.heightM() - scene.soleM();
    }

    private FlightOutcome outcome(double timeS) {
        Optional<liftwright.plant.Discharge.End> first = drive.ended();
        boolean whole = converged && !drive.failed();
        FlightOutcome.Figures figures = keeping.figures();
        return new FlightOutcome(
                flight.number(),
                watching.end(profile.limits(), figures),
                timeS,
                figures,
                first,
                watching.aborts(),
                events,
                keeping.series(),
                keeping.path(),
                List.of(),
                List.of(),
                whole);
    }
}
