package liftwright.learning.replay;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.physics.Gravity;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.Plant;
import liftwright.plant.balance.FanAtWork;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;

/**
 * What stays through a run at one vector: weight, and the moment that each fan's thrust makes about
 * the centre of mass of the whole, as the ledger of balance has it. For one thread.
 */
final class OfVector {

    private final Plant plant;
    private final boolean turns;
    private final int wearerRow;

    /** Made when first asked for. */
    private Optional<Balancing.Worker> worker = Optional.empty();

    private final Vec3[] armM;
    private double weightN;
    private double wearerN;

    /**
     * @param turns whether moments are asked for
     */
    OfVector(Plant plant, boolean turns) {
        this.plant = plant;
        this.turns = turns;
        armM = new Vec3[plant.rig().fans().size()];
        Arrays.fill(armM, Vec3.ZERO);
        wearerRow =
                plant.rig().wearer().isPresent()
                        ? plant.parameters().indexOf(RigPath.of("wearer", "mass").toString())
                        : -1;
    }

    void load(double[] p) {
        weightN = plant.weightN(p);
        wearerN = wearerRow < 0 ? 0 : p[wearerRow] * Gravity.STANDARD_MPS2;
        if (turns) {
            Balancing.Worker own = worker.orElseGet(() -> plant.balancing().worker());
            worker = Optional.of(own);
            HoverPoint point = own.liftOff(p);
            List<FanAtWork> fans =
                    own.fullThrottle(p, point.mass().centre()).orElse(point.ledger().fans());
            for (int k = 0; k < armM.length; k++) {
                FanAtWork fan = fans.get(k);
                armM[k] = fan.thrustN() > 0 ? fan.moment().times(1 / fan.thrustN()) : Vec3.ZERO;
            }
        }
    }

    double weightN() {
        return weightN;
    }

    /** Weight without the one who wears it, N. */
    double bareN() {
        return weightN - wearerN;
    }

    /** Moment of a fan per newton of its thrust, m. */
    Vec3 armM(int fan) {
        return armM[fan];
    }
}
