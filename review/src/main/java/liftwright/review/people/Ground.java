package liftwright.review.people;

import java.util.List;
import java.util.Optional;
import liftwright.plant.Plant;
import liftwright.plant.body.Limb;
import liftwright.quantity.Quantity;
import liftwright.rig.HoldingStand;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Where the ground, the fans and the wearer's ears are. Places are those of the rig's axes, down
 * positive, as everywhere inside.
 */
final class Ground {

    /**
     * Of a rig that nobody wears and no stand holds: fans over the ground at rest, m; from memory.
     */
    private static final double UNWORN_M = 1;

    private final Plant plant;
    private final double[] p;
    private final List<Limb> limbs;

    Ground(Plant plant) {
        this.plant = plant;
        p = plant.parameters().nominal();
        limbs = plant.rig().wearer().isPresent() ? plant.balancing().limbs(p) : List.of();
    }

    /** Height of the highest fan over the ground at the height that is asked for, m. */
    double highestFanM() {
        Rig rig = plant.rig();
        double top = Double.POSITIVE_INFINITY;
        for (int k = 0; k < rig.fans().size(); k++) {
            top = Math.min(top, place(k).z());
        }
        double up = rig.demands().height().si();
        if (!limbs.isEmpty()) {
            double sole = Double.NEGATIVE_INFINITY;
            for (Limb limb : limbs) {
                sole = Math.max(sole, Math.max(limb.from().z(), limb.to().z()));
            }
            return Math.max(0, sole - top) + up;
        }
        return rig.restraint().stand().map(HoldingStand::height).map(Quantity::si).orElse(UNWORN_M)
                + up;
    }

    /** Middle of the wearer's head; empty without a wearer. */
    Optional<Vec3> ears() {
        return limbs.stream()
                .filter(limb -> limb.name().equals("head"))
                .findFirst()
                .map(head -> head.from().plus(head.to()).times(0.5));
    }

    Vec3 place(int fan) {
        return plant.fanPlace(p, fan);
    }

    /** Middle of all fans. */
    Vec3 middle() {
        int fans = plant.rig().fans().size();
        Vec3 sum = place(0);
        for (int k = 1; k < fans; k++) {
            sum = sum.plus(place(k));
        }
        return sum.times(1.0 / fans);
    }

    /** How far the farthest fan is from the middle of all, m. */
    double spreadM() {
        Vec3 middle = middle();
        double most = 0;
        for (int k = 0; k < plant.rig().fans().size(); k++) {
            most = Math.max(most, place(k).minus(middle).length());
        }
        return most;
    }
}
