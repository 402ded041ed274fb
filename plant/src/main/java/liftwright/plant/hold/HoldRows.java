package liftwright.plant.hold;

import java.util.Optional;
import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.Rig;

/**
 * What holds a rig, and what makes it dead, as rows of its parameter table.
 *
 * @param stand empty where none is declared
 * @param tether empty where none is declared
 * @param before rows of the table before these: those of the rig itself
 */
public record HoldRows(
        Optional<StandRows> stand, Optional<TetherRows> tether, KillRows kills, int before) {

    /** Declares them. */
    public static HoldRows declare(Rig rig, ParameterRows table) {
        int before = table.size();
        return new HoldRows(
                rig.restraint().stand().map(stand -> StandRows.declare(stand, table)),
                rig.restraint()
                        .tether()
                        .map(tether -> TetherRows.declare(tether, rig.restraint(), table)),
                KillRows.declare(rig, table),
                before);
    }
}
