package liftwright.flight.loops;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.flight.sense.SensorNumbers;
import liftwright.flight.sense.Suite;
import liftwright.plant.Balancing;
import liftwright.plant.body.MassProperties;
import liftwright.plant.motion.RotorInertia;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.Demands;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Loops for a declared rig: its numbers, its lags, and what it declares of loops. What it does not
 * declare is taken as {@link Usual}.
 */
public final class RigLoops {

    private final Balancing balancing;
    private final RotorInertia rotors;

    /** Where nothing is declared; common practice, from memory, and what a flight goes by. */
    private static final double USUAL_HZ = 500;

    private static final double USUAL_DELAY_S = 0.004;

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
        Optional<String> blind = Suite.of(balancing.rig().control()).refusal();
        if (blind.isPresent()) {
            return new LoopDesign.Refused(Reason.NO_ESTIMATE, blind.get(), List.of());
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
                .read(lags(rig), flexible(p), rig.demands().yaw() == Demands.Yaw.HELD);
    }

    /**
     * The wearer as a mass that hangs in the rest, at the lowest frequency and damping of common
     * practice; how it is turned follows the frame, so that only its place counts.
     */
    private Flexible flexible(double[] p) {
        Optional<MassProperties> wearer = balancing.standingWearer(p);
        if (wearer.isEmpty()) {
            return Flexible.RIGID;
        }
        MassProperties whole = balancing.worker().liftOff(p).mass();
        double own = wearer.get().massKg();
        double rest = whole.massKg() - own;
        if (!(rest > 0)) {
            return Flexible.RIGID;
        }
        // From the middle of the rest to the wearer: whole and wearer tell it.
        Vec3 apart = wearer.get().centre().minus(whole.centre()).times(whole.massKg() / rest);
        double reduced = own * rest / whole.massKg();
        double roll = apart.y() * apart.y() + apart.z() * apart.z();
        double pitch = apart.x() * apart.x() + apart.z() * apart.z();
        double share =
                reduced * Math.max(roll / whole.inertia().xx(), pitch / whole.inertia().yy());
        return new Flexible(
                Flexible.LOWEST_HARNESS_HZ,
                Flexible.LEAST_DAMPING,
                Math.min(share, Flexible.MOST_SHARE),
                own / whole.massKg(),
                Flexible.LOWEST_LEGS_HZ);
    }

    /**
     * What stands between a turning and the fans. Velocity and place are estimated from the
     * accelerometer at the frequencies of the loops, so that its lateness counts, and not that of
     * the slower sensors to which the estimate is drawn back.
     */
    static Lags lags(Rig rig) {
        Control control = rig.control();
        Suite suite = Suite.of(control);
        SensorNumbers gyro = suite.of(Control.Measures.TURN_RATE);
        double moved = suite.of(Control.Measures.ACCELERATION).latenessS();
        return new Lags(
                si(control.rate(), USUAL_HZ),
                si(control.delay(), USUAL_DELAY_S),
                rig.fans().stream()
                        .mapToDouble(fan -> si(fan.type().controller().switching().delay(), 0))
                        .max()
                        .orElse(0),
                gyro.delayS() + 0.5 / gyro.rateHz(),
                gyro.rateHz(),
                gyro.filterHz(),
                moved,
                moved);
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
