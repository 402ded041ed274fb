package liftwright.rig;

import java.util.List;
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
        Optional<String> radio) {

    public Control {
        groups = List.copyOf(groups);
        sensors = List.copyOf(sensors);
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

    /**
     * Equal sensors that stand in for each other.
     *
     * @param name as declared
     * @param count how many, ≥ 1
     */
    public record Sensor(String name, RigPath declaredAt, int count) {}
}
