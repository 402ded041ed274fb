package liftwright.plant.body;

import java.util.List;
import liftwright.physics.Gravity;
import liftwright.rig.Vec3;

/**
 * Mass of the whole rig as declared, wearer included. Wires add nothing: declare them as a part
 * ("wire and lugs"), since insulation, lugs and ties outweigh what gauge and length tell.
 *
 * @param massKg total, kg
 * @param centre centre of mass in rig axes, m (origin: the mid-shoulder point); zero for a rig
 *     without mass
 * @param inertia about the centre, kg·m²
 * @param items the parts
 */
public record MassProperties(double massKg, Vec3 centre, Inertia inertia, List<MassItem> items) {

    public MassProperties {
        items = List.copyOf(items);
    }

    static MassProperties of(List<MassItem> items) {
        double mass = 0;
        Vec3 moment = Vec3.ZERO;
        for (MassItem item : items) {
            mass += item.massKg();
            moment = moment.plus(item.at().times(item.massKg()));
        }
        Vec3 centre = mass > 0 ? moment.times(1 / mass) : Vec3.ZERO;
        Inertia inertia = Inertia.ZERO;
        for (MassItem item : items) {
            Vec3 from = item.at().plus(centre.times(-1));
            inertia = inertia.plus(item.own()).plusPoint(item.massKg(), from);
        }
        return new MassProperties(mass, centre, inertia, items);
    }

    /** Weight under standard gravity, N. */
    public double weightN() {
        return massKg * Gravity.STANDARD_MPS2;
    }
}
