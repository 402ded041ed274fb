package liftwright.rig.guide;

import java.util.List;

/**
 * Things that are asked together.
 *
 * @param id its name
 * @param title what it is about
 * @param why what the answers are for
 * @param fields what is asked
 */
public record GuideStep(String id, String title, String why, List<GuideField> fields) {

    public GuideStep {
        fields = List.copyOf(fields);
    }
}
