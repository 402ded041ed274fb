package liftwright.flight.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import liftwright.flight.loops.Controller;
import liftwright.flight.loops.Craft;
import liftwright.flight.loops.Lifter;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.Standing;
import liftwright.flight.loops.Wanted;
import liftwright.flight.motion.BodyState;
import liftwright.flight.sense.Estimator;
import liftwright.flight.sense.Sensors;
import liftwright.flight.sense.Suite;
import liftwright.flight.sense.Vibration;
import liftwright.rig.Control;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * The rig's flight computer: its loops as they were granted for the declared values, on what its
 * declared sensors tell.
 */
public final class ComputerCrew implements Crew {

    private final Rig rig;
    private final LoopDesign.Granted loops;
    private final Suite suite;
    private final List<Vec3> places = new ArrayList<>();
    private final List<Vec3> axes = new ArrayList<>();
    private final double[] unbalance;

    public ComputerCrew(Rig rig, LoopDesign.Granted loops) {
        this.rig = rig;
        this.loops = loops;
        suite = Suite.of(rig.control());
        Craft craft = loops.craft();
        unbalance = new double[craft.fans().size()];
        for (int f = 0; f < unbalance.length; f++) {
            Lifter fan = craft.fans().get(f);
            axes.add(fan.axis());
            places.add(fan.axis().cross(fan.moment()));
            unbalance[f] = unbalanceKgm(f);
        }
    }

    /** A rotor of the usual grade at its top speed: e = grade over Ω. */
    private double unbalanceKgm(int fan) {
        var rotor = rig.fans().get(fan).type().rotor();
        double top = rotor.topSpeed().map(speed -> speed.si()).orElse(0.0);
        double kg = rotor.mass().map(mass -> mass.si()).orElse(0.0);
        return top > 0 ? kg * Vibration.USUAL_GRADE_MPS / top : 0;
    }

    /** What it reads, and what stands in where nothing is declared. */
    public Suite suite() {
        return suite;
    }

    @Override
    public Steersman steersman() {
        Controller controller = new Controller(loops);
        return new Steersman() {
            @Override
            public void begin() {
                controller.begin();
            }

            @Override
            public void lost(BitSet fans) {
                controller.mixer().lost(fans);
            }

            @Override
            public void pushesOn(int fan, double thrustN) {
                controller.mixer().pushesOn(fan, thrustN);
            }

            @Override
            public void steer(
                    double dtS,
                    double[] felt,
                    Standing standing,
                    Wanted wanted,
                    double[] fanV,
                    double[] duty) {
                controller.step(dtS, felt, standing, wanted, fanV, duty);
            }
        };
    }

    @Override
    public Lookout lookout(FlightCase flight, double tickS) {
        Craft craft = loops.craft();
        Vibration shakes = new Vibration(craft.massKg(), craft.inertia(), places, axes, unbalance);
        Sensors sensors =
                new Sensors(
                        suite,
                        shakes,
                        (measures, axis) -> bias(flight, measures, axis),
                        flight.seed(),
                        flight.number(),
                        tickS);
        return new Looking(sensors, new Estimator(suite, tickS), rig.control());
    }

    private static double bias(FlightCase flight, Control.Measures measures, int axis) {
        Deviate[] rows =
                switch (measures) {
                    case TURN_RATE ->
                            new Deviate[] {
                                Deviate.GYRO_BIAS_ROLL,
                                Deviate.GYRO_BIAS_PITCH,
                                Deviate.GYRO_BIAS_YAW
                            };
                    case ACCELERATION ->
                            new Deviate[] {
                                Deviate.ACCELERATION_BIAS_FORWARD,
                                Deviate.ACCELERATION_BIAS_RIGHT,
                                Deviate.ACCELERATION_BIAS_DOWN
                            };
                    case HEIGHT -> new Deviate[] {Deviate.HEIGHT_BIAS};
                    case POSITION, VELOCITY, HEADING -> new Deviate[0];
                };
        return axis < rows.length ? rows[axis].of(flight.seed(), flight.number()) : 0;
    }

    private record Looking(Sensors sensors, Estimator estimator, Control control)
            implements Lookout {

        @Override
        public void begin(BodyState state, double[] specificForceMps2) {
            sensors.begin(state, specificForceMps2);
            estimator.begin(sensors);
        }

        @Override
        public void look(
                long tick, BodyState state, double[] specificForceMps2, double[] rotorRadps) {
            sensors.read(tick, state, specificForceMps2, rotorRadps);
            estimator.update(sensors);
        }

        @Override
        public void felt(double[] out) {
            System.arraycopy(estimator.estimate().felt, 0, out, 0, out.length);
        }

        @Override
        public void lose(String sensor) {
            control.sensors().stream()
                    .filter(one -> one.name().equals(sensor))
                    .flatMap(one -> one.measures().stream())
                    .forEach(sensors::lose);
        }
    }
}
