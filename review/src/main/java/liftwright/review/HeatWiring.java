package liftwright.review;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.plant.Effects;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.review.wiring.Warmth;
import liftwright.review.wiring.WiringReview;
import liftwright.rig.PartId;

/**
 * What the question of heat says of the wiring beside its temperatures: which currents and voltages
 * exceed ratings, what happens within a millisecond, and the lists to make and look after it.
 */
final class HeatWiring {

    /** Limits of what joins packs and fans. */
    private static final Set<Kind> KINDS =
            EnumSet.of(
                    Kind.JOINT_CURRENT,
                    Kind.FUSE_CURRENT,
                    Kind.FUSE_BREAKING,
                    Kind.FUSE_VOLTAGE,
                    Kind.CONTACTOR_CURRENT,
                    Kind.CONTACTOR_BREAKING,
                    Kind.CONTACTOR_VOLTAGE,
                    Kind.REVERSE_CURRENT,
                    Kind.HAZARDOUS_VOLTAGE);

    private final Plant plant;
    private final WiringReview review;

    private HeatWiring(Plant plant, WiringReview review) {
        this.plant = plant;
        this.review = review;
    }

    /** Of a plant whose parts became so hot in the flight that is asked for. */
    static HeatWiring of(Plant plant, HeatParts parts, HeatRun run) {
        Map<PartId, Warmth> warmth = new HashMap<>();
        for (int part = 0; part < parts.all().size(); part++) {
            switch (parts.part(part).kind()) {
                case WIRE, JOINT, FUSE, POLE ->
                        warmth.put(
                                parts.part(part).id(),
                                new Warmth(run.asked().hottestK(part), parts.part(part).limitK()));
                case SWITCHES, CONTROLLER, WINDING, MAGNETS, CELLS -> {}
            }
        }
        return new HeatWiring(plant, WiringReview.of(plant, warmth));
    }

    List<Finding> findings() {
        double[] p = plant.parameters().nominal();
        SteadyState full = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), full);
        List<Finding> findings =
                new ArrayList<>(LiftFindings.limits(plant.rig(), plant, full, KINDS));
        findings.addAll(FastFindings.of(plant));
        findings.addAll(review.findings());
        return findings;
    }

    List<Section> sections() {
        return review.sections();
    }
}
