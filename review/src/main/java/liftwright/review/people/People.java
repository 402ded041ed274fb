package liftwright.review.people;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.plant.Plant;

/**
 * What there is to say of the people near a rig.
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
    @SuppressWarnings("unused") // the parts follow one by one
    public static People of(Plant plant, long seed, int draws) {
        return new People(List.of(), List.of());
    }
}
