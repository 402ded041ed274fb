package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.plant.Plant;

/**
 * What is wrong with the wiring whatever the run: packs without a fuse, wires of which nobody said
 * what insulates them, joints rated below their wire, capacitors that a pack meets empty, buses
 * that braking fans lift.
 */
public final class WiringFindings {

    private WiringFindings() {}

    /** At the declared values; in no order. */
    public static List<Finding> of(Plant plant) {
        List<Finding> findings = new ArrayList<>();
        double[] p = plant.parameters().nominal();
        findings.addAll(Unfused.findings(plant.rig(), plant.faultSupply(p)));
        Uncovered.finding(plant.rig()).ifPresent(findings::add);
        WeakJoints.finding(plant.rig()).ifPresent(findings::add);
        findings.addAll(Capacitors.findings(plant));
        findings.addAll(braking(plant));
        return findings;
    }

    /** What fans that brake together do to their bus, alone: of these findings the quick ones. */
    public static List<Finding> braking(Plant plant) {
        return BusBraking.findings(plant);
    }
}
