package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.plant.FaultSupply;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;

/**
 * What there is to say of the wiring beside the temperatures of a run.
 *
 * @param findings in no order
 * @param sections fuses, the soldering list in two tables, the inspection list
 */
public record WiringReview(List<Finding> findings, List<Section> sections) {

    /** Gas constant of dry air, J/(kg·K). */
    private static final double DRY_AIR_JPKGK = 287.05;

    public WiringReview {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    /**
     * At the declared values.
     *
     * @param warmth how hot each part became in a run; empty before any
     */
    public static WiringReview of(Plant plant, Map<PartId, Warmth> warmth) {
        return of(plant, Loads.of(plant), warmth);
    }

    /**
     * The same with the currents of a run that somebody made.
     *
     * @param loads currents of all chains
     */
    public static WiringReview of(Plant plant, Loads loads, Map<PartId, Warmth> warmth) {
        FaultSupply supply = plant.faultSupply(plant.parameters().nominal());
        List<FuseChoice.Found> fuses = choice(plant, loads, supply).all();
        List<Finding> findings = new ArrayList<>(WiringFindings.of(plant));
        findings.addAll(FuseTable.findings(fuses));
        SolderingList soldering = SolderingList.of(plant.rig(), loads, supply.wireK(), warmth);
        List<Section> sections = new ArrayList<>();
        if (plant.rig().wiring().chains().stream().allMatch(chain -> chain.elements().isEmpty())) {
            return new WiringReview(findings, sections); // nothing to make, nothing to look at
        }
        if (!fuses.isEmpty()) {
            sections.add(FuseTable.table(fuses));
        }
        sections.add(soldering.made());
        sections.add(soldering.carried());
        sections.add(InspectionList.of(plant.rig(), loads, supply.wireK(), warmth));
        return new WiringReview(findings, sections);
    }

    /**
     * What another rig's fuses no longer protect, as a sentence: a larger fuse holds longer, and
     * lets more be harmed. Empty where nothing lies open that did not before.
     */
    public static Optional<Sentence> newlyExposed(Plant before, Plant after) {
        Map<RigPath, FuseChoice.Harm> old = harms(before);
        return harms(after).entrySet().stream()
                .filter(harm -> !old.containsKey(harm.getKey()))
                .findFirst()
                .map(
                        harm ->
                                Sentence.words(
                                                "the fuse at "
                                                        + harm.getKey()
                                                        + " would let the wire ")
                                        .then(harm.getValue().run().id() + " be harmed by ")
                                        .then(Measure.CURRENT, harm.getValue().ampere()));
    }

    private static Map<RigPath, FuseChoice.Harm> harms(Plant plant) {
        FaultSupply supply = plant.faultSupply(plant.parameters().nominal());
        return choice(plant, Loads.of(plant), supply).harms();
    }

    private static FuseChoice choice(Plant plant, Loads loads, FaultSupply supply) {
        double[] p = plant.parameters().nominal();
        double airK = plant.siteTemperatureK(p);
        double pascal = plant.siteDensityKgpm3(p) * DRY_AIR_JPKGK * airK;
        return new FuseChoice(plant.rig(), loads, supply, airK, pascal);
    }
}
