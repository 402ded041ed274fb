package liftwright.review.kill;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.plant.Plant;
import liftwright.rig.Rig;

/**
 * What there is to say of how a rig is made dead.
 *
 * @param findings in no order
 * @param sections kill chains, what they need, and what keeps thrust on; none where no kill is
 *     declared
 */
public record KillChains(List<Finding> findings, List<Section> sections) {

    public KillChains {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    /** At the declared values, from full throttle on full packs. */
    public static KillChains of(Plant plant) {
        Rig rig = plant.rig();
        KillStructure structure = new KillStructure(rig);
        KillTimes times = KillTimes.of(plant);
        List<Finding> findings = new ArrayList<>(ChainFindings.of(rig, structure));
        findings.addAll(CommonFindings.of(rig, structure));
        findings.addAll(new ActFindings(rig, structure, times).all());
        findings.addAll(new ThrottleLink(rig).findings());
        return new KillChains(findings, new KillTables(structure, times).all());
    }
}
