package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Rig;

/**
 * Every way to gain that this rig's declaration leaves open, in the order in which a workshop would
 * try them.
 */
public final class Candidates {

    private Candidates() {}

    public static List<Candidate> forLift(Rig rig) {
        List<Candidate> all = new ArrayList<>();
        all.addAll(MassOff.of(rig));
        all.addAll(OpenGrille.of(rig));
        all.addAll(LessCant.of(rig));
        all.addAll(MoreCells.IN_SERIES.of(rig));
        all.addAll(MoreFans.of(rig));
        return all;
    }

    /** Every way to longer flight, in the same order. */
    public static List<Candidate> forEndurance(Rig rig) {
        List<Candidate> all = new ArrayList<>();
        all.addAll(FullCharge.of(rig));
        all.addAll(MassOff.of(rig));
        all.addAll(OpenGrille.of(rig));
        all.addAll(LessCant.of(rig));
        all.addAll(MoreCells.SIDE_BY_SIDE.of(rig));
        all.addAll(MoreCells.IN_SERIES.of(rig));
        return all;
    }
}
