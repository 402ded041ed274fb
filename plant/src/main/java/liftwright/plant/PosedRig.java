package liftwright.plant;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.plant.body.FanPlace;
import liftwright.plant.body.MassProperties;

/**
 * Masses and fans of a rig at the vector they were asked for last: one loss after the other leaves
 * them where they are. Kept by all the numbers of the vector, so that what is found depends on
 * nothing asked before. For one thread.
 */
final class PosedRig {

    private final Assembler parts;
    private double[] at = {};
    private Optional<MassProperties> mass = Optional.empty();
    private Optional<List<FanPlace>> places = Optional.empty();

    PosedRig(Assembler parts) {
        this.parts = parts;
    }

    /**
     * @param posed a vector whose arms are held where they shall be
     */
    MassProperties mass(double[] posed) {
        take(posed);
        MassProperties known = mass.orElseGet(() -> parts.ledger.properties(posed));
        mass = Optional.of(known);
        return known;
    }

    /** Where every fan is and pushes, beams stiff. */
    List<FanPlace> places(double[] posed) {
        take(posed);
        List<FanPlace> known =
                places.orElseGet(() -> FanPlace.of(parts.rig, parts.pose, parts.lines, posed));
        places = Optional.of(known);
        return known;
    }

    private void take(double[] posed) {
        if (!Arrays.equals(at, posed)) {
            at = posed.clone();
            mass = Optional.empty();
            places = Optional.empty();
        }
    }
}
