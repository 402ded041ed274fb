package liftwright.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import liftwright.plant.balance.JetStrike;
import liftwright.plant.balance.Obstacle;
import liftwright.plant.body.FanPlace;
import liftwright.plant.body.Limb;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassLedger;
import liftwright.plant.body.MassProperties;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * What the jets of a rig's fans strike: the posed wearer's segments and parts with a box. A segment
 * is the cylinder that has its mass at a person's density. A fan is not held against the segment
 * that carries it, nor against parts of its own mount, whose box tells mass and not what is open,
 * nor against what already holds its exit.
 */
final class Jets {

    /** Of a body, kg/m³ (from memory; a person hardly floats). */
    private static final double DENSITY_KGPM3 = 1050;

    private final Rig rig;
    private final MassLedger ledger;

    Jets(Rig rig, MassLedger ledger) {
        this.rig = rig;
        this.ledger = ledger;
    }

    /** What each fan's jet strikes at one vector. Allocates. */
    List<JetStrike> strikes(double[] p, MassProperties mass, List<FanPlace> places) {
        List<Obstacle> limbs = limbs(p, mass);
        List<MassLedger.PlacedBox> boxes = ledger.boxes(p);
        List<Obstacle> blocks = new ArrayList<>();
        for (MassLedger.PlacedBox box : boxes) {
            blocks.add(
                    new Obstacle.Box(
                            box.part().id().text(),
                            box.middle(),
                            List.of(box.forward(), box.right(), box.down()),
                            box.edgesM().times(0.5)));
        }
        List<JetStrike> strikes = new ArrayList<>();
        for (int k = 0; k < places.size(); k++) {
            Fan fan = rig.fans().get(k);
            List<Obstacle> before = new ArrayList<>();
            String carrier = carrier(fan.mount().on());
            for (Obstacle limb : limbs) {
                if (!limb.name().equals(carrier)) {
                    before.add(limb);
                }
            }
            for (int box = 0; box < blocks.size(); box++) {
                if (!boxes.get(box).part().mount().name().equals(fan.mount().name())) {
                    before.add(blocks.get(box));
                }
            }
            FanPlace place = places.get(k);
            strikes.add(
                    JetStrike.of(
                            place.at(),
                            place.actual().times(-1),
                            fan.type().exitArea().si(),
                            before,
                            mass.centre()));
        }
        return strikes;
    }

    private List<Obstacle> limbs(double[] p, MassProperties mass) {
        Map<String, Double> kg = new HashMap<>();
        for (MassItem item : mass.items()) {
            if (item.kind() == MassItem.Kind.WEARER) {
                kg.put(item.name(), item.massKg());
            }
        }
        List<Obstacle> limbs = new ArrayList<>();
        for (Limb limb : ledger.limbs(p)) {
            Vec3 along = limb.to().minus(limb.from());
            double volume = kg.getOrDefault(limb.name(), 0.0) / DENSITY_KGPM3;
            double radius = Math.sqrt(volume / (Math.PI * along.length()));
            limbs.add(new Obstacle.Limb(limb.name(), limb.from(), limb.to(), radius));
        }
        return limbs;
    }

    private static String carrier(Mount.Carrier on) {
        return switch (on) {
            case FRAME, TRUNK -> "trunk";
            case LEFT_UPPER_ARM -> "left upper arm";
            case RIGHT_UPPER_ARM -> "right upper arm";
            case LEFT_FOREARM -> "left forearm";
            case RIGHT_FOREARM -> "right forearm";
        };
    }
}
