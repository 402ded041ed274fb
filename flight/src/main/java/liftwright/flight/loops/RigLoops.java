package liftwright.flight.loops;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.Balancing;
import liftwright.plant.motion.RotorInertia;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.Demands;
import liftwright.rig.Rig;

/**
 * Loops for a declared rig: its numbers, its lags, and what it declares of loops. What it does not
 * declare is taken as {@link Usual}.
 */
public final class RigLoops {

    final Balancing balancing;
    final RotorInertia rotors;

    /**
     * Lags where nothing is declared.
     *
     * @param controlHz how often commands are given
     * @param computerS from sensor to command
     * @param escS of a motor controller, from command to torque
     * @param gyroS how late a turn rate is
     * @param gyroHz how often it is read
     * @param filterHz corner of its filter
     * @param velocityS how late an estimated velocity is
     * @param positionS how late an estimated place is
     */
    public record Usual(
            double controlHz,
            double computerS,
            double escS,
            double gyroS,
            double gyroHz,
            double filterHz,
            double velocityS,
            double positionS) {

        /** Common practice, from memory. */
        public static final Usual COMMON = new Usual(500, 0.004, 0.004, 0.002, 1000, 60, 0.06, 0.1);
    }

    /** Of a rig whose numbers are assembled. */
    public RigLoops(Balancing balancing) {
        this.balancing = balancing;
        rotors = RotorInertia.of(balancing.rig());
    }

    /** Loops on the declared values. */
    public LoopDesign design() {
        return design(balancing.parameters().nominal(), rotors.table().nominal());
    }

    /**
     * Loops on other values.
     *
     * @param p of the plant's table
     * @param turning of {@link RotorInertia#table}
     */
    public LoopDesign design(double[] p, double[] turning) {
        if (balancing.rig().control().kind() == Control.Kind.SHARED_THROTTLE) {
            return new LoopDesign.Refused(
                    Reason.NO_FLIGHT_COMPUTER,
                    "one throttle is shared by all fans: nothing commands each of them; declare"
                            + " `control: {kind: flight computer}` where there is one",
                    List.of());
        }
        return craft(p, turning)
                .<LoopDesign>map(craft -> LoopDesign.of(craft, asked(balancing.rig())))
                .orElseGet(
                        () ->
                                new LoopDesign.Refused(
                                        Reason.NO_TRIM,
                                        "no operating point was found for a hover",
                                        List.of()));
    }

    /** Numbers at hover; empty where no operating point is found. */
    public Optional<Craft> craft(double[] p, double[] turning) {
        Rig rig = balancing.rig();
        double[] kgm2 = new double[rig.fans().size()];
        for (int f = 0; f < kgm2.length; f++) {
            kgm2[f] = rotors.kgm2(turning, f);
        }
        return new CraftReading(balancing, p, kgm2)
                .read(
                        lags(rig),
                        rig.wearer().isPresent() ? Flexible.WEARER : Flexible.RIGID,
                        rig.demands().yaw() == Demands.Yaw.HELD);
    }

    static Lags lags(Rig rig) {
        Control control = rig.control();
        Usual usual = Usual.COMMON;
        Optional<Control.Sensor> gyro = control.sensor(Control.Measures.TURN_RATE);
        return new Lags(
                si(control.rate(), usual.controlHz()),
                si(control.delay(), usual.computerS()),
                usual.escS(),
                si(gyro.flatMap(Control.Sensor::delay), usual.gyroS()),
                si(gyro.flatMap(Control.Sensor::rate), usual.gyroHz()),
                si(gyro.flatMap(Control.Sensor::filter), usual.filterHz()),
                si(
                        control.sensor(Control.Measures.VELOCITY).flatMap(Control.Sensor::delay),
                        usual.velocityS()),
                si(
                        control.sensor(Control.Measures.POSITION).flatMap(Control.Sensor::delay),
                        usual.positionS()));
    }

    private static double si(Optional<Quantity> declared, double usual) {
        return declared.map(Quantity::si).orElse(usual);
    }

    /** What the rig declares of its loops. */
    static Asked asked(Rig rig) {
        Map<Loop.Level, Asked.Declared> declared = new EnumMap<>(Loop.Level.class);
        rig.control().loops().forEach((name, loop) -> declared.put(level(name), declared(loop)));
        return new Asked(
                Asked.USUAL.marginRad(), Asked.USUAL.gainMargin(), Asked.USUAL.ratio(), declared);
    }

    private static Loop.Level level(Control.LoopName name) {
        return switch (name) {
            case RATE -> Loop.Level.RATE;
            case ATTITUDE -> Loop.Level.ATTITUDE;
            case VELOCITY -> Loop.Level.VELOCITY;
            case POSITION -> Loop.Level.POSITION;
        };
    }

    private static Asked.Declared declared(Control.Loop loop) {
        return new Asked.Declared(
                loop.crossover()
                        .map(hz -> OptionalDouble.of(2 * Math.PI * hz.si()))
                        .orElseGet(OptionalDouble::empty),
                loop.margin()
                        .map(margin -> OptionalDouble.of(margin.si()))
                        .orElseGet(OptionalDouble::empty),
                loop.integral());
    }
}
