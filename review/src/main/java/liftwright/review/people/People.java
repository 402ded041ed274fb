package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.plant.Plant;

/**
 * What there is to say of the people near a rig: what can hit, blow, deafen or burn them, and how
 * fast a fall ends. Nothing of it is a permission.
 *
 * @param sections tables and plots, in reading order
 * @param findings in no order
 */
public record People(List<Section> sections, List<Finding> findings) {

    public People {
        sections = List.copyOf(sections);
        findings = List.copyOf(findings);
    }

    /**
     * At the declared values, with bands of their doubt.
     *
     * @param seed of every draw
     * @param draws for the bands; 0 for none
     */
    public static People of(Plant plant, long seed, int draws) {
        List<Section> sections = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        Numbers numbers = new Numbers(plant.rig());
        Optional<FullThrottle> full = FullThrottle.of(plant, numbers, seed, draws);
        if (full.isPresent() && !plant.rig().fans().isEmpty()) {
            turning(plant, numbers, full.get(), sections, findings);
        }
        Stored stored = new Stored(plant, full);
        stored.section().ifPresent(sections::add);
        findings.addAll(stored.findings());
        Drops drops = new Drops(plant);
        sections.addAll(drops.sections());
        findings.add(drops.finding());
        return new People(sections, findings);
    }

    /**
     * How far those who are not crew stay away, m: the larger of the limit and the farthest throw
     * of a fan that breaks at full throttle, at the declared values. Empty where nothing turns.
     *
     * @param raisedM how much higher than the demanded height it may break, ≥ 0, m: a runaway
     */
    public static Optional<Double> keepOutM(Plant plant, double raisedM) {
        Numbers numbers = new Numbers(plant.rig());
        return FullThrottle.of(plant, numbers, 0, 0)
                .filter(full -> !plant.rig().fans().isEmpty())
                .map(
                        full ->
                                new Fragments(
                                                plant.rig(),
                                                numbers,
                                                full,
                                                new Ground(plant).highestFanM() + raisedM)
                                        .keepOutM());
    }

    /** What it rests on, for the evidence of an answer. */
    public static List<Evidence.Law> laws() {
        return List.of(
                new Evidence.Law(
                        "pieces of a broken fan",
                        "mechanics; drag of Hoerner 1965, from memory",
                        "thrown along the tangent; duct and guard hold nothing back",
                        true),
                new Evidence.Law(
                        "jets, merged and along the ground",
                        "turbulent free jet and wall jet, from memory",
                        "all merged into one, beyond two of its diameters; ± 30 % along the ground",
                        true),
                new Evidence.Law(
                        "sound and its permitted time",
                        "incoherent sources; NIOSH 98-126, 29 CFR 1910.95",
                        "free far field; near the array a bound",
                        true),
                new Evidence.Law(
                        "fire of the packs",
                        "from memory, a factor of two either way",
                        "heat alone; gas is not in it",
                        true),
                new Evidence.Law(
                        "falls",
                        "free fall, and quadratic drag",
                        "upright, all thrust gone",
                        true));
    }

    private static void turning(
            Plant plant,
            Numbers numbers,
            FullThrottle full,
            List<Section> sections,
            List<Finding> findings) {
        Ground ground = new Ground(plant);
        Fragments fragments = new Fragments(plant.rig(), numbers, full, ground.highestFanM());
        fragments.section().ifPresent(sections::add);
        findings.addAll(fragments.findings());
        findings.addAll(
                CrewPlaces.findings(plant.rig(), fragments.hazardM(), fragments.keepOutM()));
        CrewPlaces.kills(plant.rig(), fragments.keepOutM()).ifPresent(findings::add);
        JetWinds jets = new JetWinds(plant.rig(), full);
        if (jets.blows()) {
            sections.addAll(jets.sections());
            findings.add(jets.swept());
        }
        CrewPlaces.section(plant.rig(), fragments.hazardM(), fragments.farthestM(), jets)
                .ifPresent(sections::add);
        Indoors.finding(plant, full).ifPresent(findings::add);
        Hearing hearing = new Hearing(plant.rig(), numbers, full, ground);
        hearing.section().ifPresent(sections::add);
        findings.addAll(hearing.findings());
    }
}
