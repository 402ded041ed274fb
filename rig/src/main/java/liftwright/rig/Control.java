package liftwright.rig;

import java.util.List;
import liftwright.quantity.Quantity;

/**
 * How throttle reaches the fans.
 *
 * @param kind who shares out the thrust
 * @param groups every fan belongs to exactly one
 */
public record Control(Kind kind, List<Group> groups) {

    public Control {
        groups = List.copyOf(groups);
    }

    public enum Kind {
        SHARED_THROTTLE,
        FLIGHT_COMPUTER
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
}
