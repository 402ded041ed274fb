package liftwright.rig;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;

/**
 * How throttle reaches the fans.
 *
 * @param kind who shares out the thrust
 * @param groups every fan belongs to exactly one
 * @param linkLoss what a lost or frozen signal does; undeclared it is the worst, {@link
 *     LinkLoss#HOLD} ({@link Rig#isDeclared})
 * @param lossTime after which a signal counts as lost, s
 * @param rise fastest rise of the throttle, 1/s; nothing limits it where it is empty
 * @param liveBelow throttle above which the rig cannot be made live, 0 to 1
 * @param stop what a let-go throttle does
 * @param rate how often commands are given, Hz
 * @param delay from sensor to command, s
 * @param sensors what a flight computer reads
 * @param computers flight computers that stand in for each other, ≥ 1
 * @param fedBy what feeds receiver and computer: a pack, or a battery (see {@link Supplies})
 * @param lowering thrust over weight while {@link LinkLoss#LOWER} lowers the rig, 0 to 1
 * @param radio name of the radio link of the throttle; kills that name the same link share it
 * @param estimator how attitude and position are estimated
 * @param loops what is asked of single loops of a flight computer
 */
public record Control(
        Kind kind,
        List<Group> groups,
        LinkLoss linkLoss,
        Quantity lossTime,
        Optional<Quantity> rise,
        Optional<Quantity> liveBelow,
        Optional<Stop> stop,
        Optional<Quantity> rate,
        Optional<Quantity> delay,
        List<Sensor> sensors,
        int computers,
        Optional<String> fedBy,
        Quantity lowering,
        Optional<String> radio,
        Estimator estimator,
        Map<LoopName, Loop> loops) {

    public Control {
        groups = List.copyOf(groups);
        sensors = List.copyOf(sensors);
        var ordered = new EnumMap<LoopName, Loop>(LoopName.class);
        ordered.putAll(loops);
        loops = Collections.unmodifiableMap(ordered);
    }

    /** Control of whose estimator and loops nothing is declared. */
    public Control(
            Kind kind,
            List<Group> groups,
            LinkLoss linkLoss,
            Quantity lossTime,
            Optional<Quantity> rise,
            Optional<Quantity> liveBelow,
            Optional<Stop> stop,
            Optional<Quantity> rate,
            Optional<Quantity> delay,
            List<Sensor> sensors,
            int computers,
            Optional<String> fedBy,
            Quantity lowering,
            Optional<String> radio) {
        this(
                kind,
                groups,
                linkLoss,
                lossTime,
                rise,
                liveBelow,
                stop,
                rate,
                delay,
                sensors,
                computers,
                fedBy,
                lowering,
                radio,
                Estimator.UNDECLARED,
                Map.of());
    }

    /** As this with other groups. */
    public Control with(List<Group> others) {
        return new Control(
                kind, others, linkLoss, lossTime, rise, liveBelow, stop, rate, delay, sensors,
                computers, fedBy, lowering, radio, estimator, loops);
    }

    /** The first sensor that measures this. */
    public Optional<Sensor> sensor(Measures what) {
        return sensors.stream()
                .filter(s -> s.measures().filter(what::equals).isPresent())
                .findFirst();
    }

    /** Control of which nothing more is declared. */
    public Control(Kind kind, List<Group> groups) {
        this(
                kind,
                groups,
                LinkLoss.HOLD,
                Quantity.exact(0.3, new Dimension(0, 0, 1, 0, 0, 0)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                1,
                Optional.empty(),
                Quantity.exact(0.9, Dimension.NONE),
                Optional.empty());
    }

    public enum Kind {
        SHARED_THROTTLE,
        FLIGHT_COMPUTER
    }

    /** What a lost or frozen signal does. */
    public enum LinkLoss {
        CUT,
        LOWER,
        /** The last throttle stays: the worst. */
        HOLD
    }

    /** What the throttle does when it is let go. */
    public enum Stop {
        CUT,
        LOWER,
        /** Thrust lasts only while it is held. */
        HOLD_TO_RUN
    }

    /**
     * @param name as declared
     * @param fans members
     * @param share duty of the group at full throttle, 0 to 1
     */
    public record Group(String name, RigPath declaredAt, List<PartId> fans, Quantity share) {
        public Group {
            fans = List.copyOf(fans);
        }
    }

    /** What a sensor tells a flight computer. */
    public enum Measures {
        /** About the three axes of the rig. */
        TURN_RATE("gyro", new Dimension(0, 0, -1, 0, 0, 1)),
        /** Specific force along the three axes of the rig: what gravity leaves out. */
        ACCELERATION("accelerometer", new Dimension(1, 0, -2, 0, 0, 0)),
        /** Above the ground. */
        HEIGHT("height", new Dimension(1, 0, 0, 0, 0, 0)),
        /** Level, in two axes. */
        POSITION("position", new Dimension(1, 0, 0, 0, 0, 0)),
        /** Over ground, in two level axes and upwards. */
        VELOCITY("velocity", new Dimension(1, 0, -1, 0, 0, 0)),
        /** Where forward points on the map. */
        HEADING("heading", new Dimension(0, 0, 0, 0, 0, 1));

        private final String usualName;
        private final Dimension dimension;

        Measures(String usualName, Dimension dimension) {
            this.usualName = usualName;
            this.dimension = dimension;
        }

        /** The name by which a sensor tells what it measures without saying so. */
        public String usualName() {
            return usualName;
        }

        /** Of its values. */
        public Dimension dimension() {
            return dimension;
        }
    }

    /**
     * Equal sensors that stand in for each other. What is not declared of one that a flight needs
     * is taken as usual, which the question of flight says.
     *
     * @param name as declared
     * @param count how many, ≥ 1
     * @param measures what it measures, as declared or by its name; empty for one that a flight
     *     does not read
     * @param noise amplitude density of its noise, two-sided as in IEEE Std 952, unit of its values
     *     per √Hz
     * @param rate how often it is read, Hz
     * @param delay how late its value is, its filter's left out, s
     * @param misalignment how far its axes are off, ≥ 0 rad
     * @param dropout share of readings that are lost, 0 to 1
     * @param filter corner of its low-pass filter, Hz
     * @param bias offset that stays; the doubt is that of the offset, drawn once a flight
     * @param range largest value that it can read, above 0
     */
    public record Sensor(
            String name,
            RigPath declaredAt,
            int count,
            Optional<Measures> measures,
            Optional<Quantity> noise,
            Optional<Quantity> rate,
            Optional<Quantity> delay,
            Optional<Quantity> misalignment,
            Optional<Quantity> dropout,
            Optional<Quantity> filter,
            Optional<Quantity> bias,
            Optional<Quantity> range) {

        /** Sensors of which only their number is declared. */
        public Sensor(String name, RigPath declaredAt, int count) {
            this(
                    name,
                    declaredAt,
                    count,
                    named(name),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }

        /**
         * What a sensor of that name measures where the file does not say; empty for other names.
         */
        public static Optional<Measures> named(String name) {
            for (Measures one : Measures.values()) {
                if (one.usualName().equals(name)) {
                    return Optional.of(one);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * How attitude and position are estimated.
     *
     * @param kind by which method
     * @param bandwidth where it leaves the gyro for the other sensors, Hz
     */
    public record Estimator(Optional<EstimatorKind> kind, Optional<Quantity> bandwidth) {

        /** One of which nothing is declared. */
        public static final Estimator UNDECLARED =
                new Estimator(Optional.empty(), Optional.empty());
    }

    /** By which method a flight computer estimates. */
    public enum EstimatorKind {
        /** There is none. */
        NONE,
        /** Gyro above a stated frequency, the other sensors below it. */
        COMPLEMENTARY,
        /** Gains by the noise of the sensors. */
        KALMAN
    }

    /** The loops of a flight computer, inner to outer. */
    public enum LoopName {
        RATE,
        ATTITUDE,
        VELOCITY,
        POSITION
    }

    /**
     * What is asked of one loop. What is left open is found by the design.
     *
     * @param crossover where its open loop falls through one, Hz
     * @param margin phase margin that it is designed for, above 0 rad
     * @param integral whether it has an integral part
     */
    public record Loop(
            Optional<Quantity> crossover, Optional<Quantity> margin, Optional<Boolean> integral) {

        /** One of which nothing is asked. */
        public static final Loop UNDECLARED =
                new Loop(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
