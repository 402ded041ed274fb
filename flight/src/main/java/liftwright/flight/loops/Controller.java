package liftwright.flight.loops;

import liftwright.flight.motion.BodyState;
import liftwright.physics.Gravity;

/**
 * The loops at work: position → velocity → attitude → rate → {@link Mixer}. For one run; steps
 * allocate nothing.
 *
 * <p>{@link TravelLoops} say where thrust has to point and how great it is, {@link TurnLoops} what
 * turns the body there. No integral grows unless the rig is free, nor against a bound: of tilt, of
 * lift, of what the fans give.
 */
public final class Controller {

    /** Numbers of a felt state: place, velocity (scene), quaternion, turn rates (body). */
    public static final int FELT = BodyState.OWN;

    /** Lift below this share of what was asked is short of it. */
    private static final double SHORT = 0.99;

    private final Mixer mixer;
    private final double massKg;
    private final Craft craft;
    private final Attitude attitude = new Attitude();
    private final TravelLoops travel;
    private final TurnLoops turn;
    private final double[] wrench = new double[FanMatrix.ROWS];
    private Limits limits = Limits.USUAL;

    public Controller(LoopDesign.Granted granted) {
        craft = granted.craft();
        mixer = new Mixer(craft);
        Gains gains = new Gains(granted);
        travel = new TravelLoops(gains, craft.hoverMps2());
        turn = new TurnLoops(gains, craft.inertia());
        massKg = craft.massKg();
    }

    public Mixer mixer() {
        return mixer;
    }

    public void limits(Limits to) {
        limits = to;
    }

    /** Forgets what integrals hold: the rig stands with fans at idle. */
    public void begin() {
        travel.begin();
        turn.begin();
    }

    /** Angular acceleration that integrals hold about an axis, 0 roll, 1 pitch, 2 yaw, rad/s². */
    public double rateIntegralRadps2(int axis) {
        return turn.rateIntegralRadps2(axis);
    }

    /** Acceleration upwards that the integral of climb holds, m/s². */
    public double climbIntegralMps2() {
        return travel.climbIntegralMps2();
    }

    /** Acceleration over the ground that integrals hold, 0 scene x, 1 scene y, m/s². */
    public double acrossIntegralMps2(int axis) {
        return travel.acrossIntegralMps2(axis);
    }

    /**
     * One step of the computer.
     *
     * @param dtS since the last
     * @param felt in: {@value #FELT} numbers as estimated, in the order of {@link BodyState}
     * @param standing what else holds the rig
     * @param wanted the set point
     * @param fanV in: voltage measured at each controller, V
     * @param duty out: 0 to 1 for each fan
     */
    public void step(
            double dtS,
            double[] felt,
            Standing standing,
            Wanted wanted,
            double[] fanV,
            double[] duty) {
        if (wanted.kind() == Wanted.Kind.IDLE) {
            begin();
            idle(fanV, duty);
            return;
        }
        attitude.take(felt);
        boolean free = standing == Standing.FREE;
        travel.step(dtS, felt, standing, wanted, limits, lacksLift());
        double upwards = Gravity.STANDARD_MPS2 + travel.upMps2();
        // Thrust wanted: upwards and over the ground; the body's downward axis lies against it.
        attitude.against(
                -travel.acrossMps2(0),
                -travel.acrossMps2(1),
                Math.max(upwards, 0.5 * Gravity.STANDARD_MPS2),
                wanted.headingRad());
        // Fans that hardly lift steer hardly: feet or a line carry the rest.
        double share = free ? 1 : Math.min(1, travel.ramp());
        turn.step(dtS, felt, attitude, limits.turnRadps(), share, wrench);
        wrench[0] = massKg * upwards / Math.max(attitude.upright(), 0.7);
        mixer.share(wrench, fanV, duty);
        if (free) {
            turn.unwind(dtS, wrench, mixer);
        }
    }

    /** Whether the fans gave less lift at the last step than was asked. */
    private boolean lacksLift() {
        return mixer.saturated() && mixer.got(0) < SHORT * wrench[0];
    }

    private void idle(double[] fanV, double[] duty) {
        for (int f = 0; f < duty.length; f++) {
            Lifter fan = craft.fans().get(f);
            duty[f] = fanV[f] > 0 ? Math.clamp(fan.volts().at(fan.idleN()) / fanV[f], 0, 1) : 0;
        }
    }
}
