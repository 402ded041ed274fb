package liftwright.review.remedy;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import liftwright.plant.hold.Ask;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Rig;

/**
 * Every way to gain that this rig's declaration leaves open, in the order in which a workshop would
 * try them.
 */
public final class Candidates {

    private static final Set<Ask.What> ON_STAND =
            EnumSet.range(Ask.What.SLIDES, Ask.What.BOLT_BOTH);

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

    /**
     * Every way to bear more failures.
     *
     * @param rules by what the harm of those is reckoned that are not borne
     * @param lands whether one of them comes down upright, only too fast
     */
    public static List<Candidate> forFailures(Rig rig, Set<FaultRule> rules, boolean lands) {
        List<Candidate> all = new ArrayList<>(Spares.of(rig, rules));
        if (lands) {
            all.add(Spares.lower(rig));
            all.addAll(Spares.computer(rig));
        }
        if (rules.contains(FaultRule.MOVES)) {
            all.addAll(MassOff.of(rig));
            all.addAll(MoreFans.of(rig));
            all.addAll(MoreCells.IN_SERIES.of(rig));
        }
        return all;
    }

    /** Every way to longer flight within the limits of heat, those at the hot part first. */
    public static List<Candidate> forHeat(Rig rig, Hot hot) {
        List<Candidate> all = new ArrayList<>();
        all.addAll(BetterJoint.asNew(rig, hot.joints()));
        all.addAll(StrongerWire.thicker(rig, hot.wires()));
        all.addAll(StrongerWire.parallel(rig, hot.wires()));
        all.addAll(BetterJoint.rated(rig, hot.joints()));
        all.addAll(StrongerWire.air(rig, hot.wires()));
        all.addAll(LargerFuse.of(rig, hot.fuses()));
        all.addAll(MassOff.of(rig));
        if (hot.fans()) {
            all.addAll(MoreFans.of(rig));
        }
        if (hot.cells()) {
            all.addAll(FullCharge.of(rig));
            all.addAll(MoreCells.SIDE_BY_SIDE.of(rig));
        }
        all.addAll(MoreCells.IN_SERIES.of(rig));
        return all;
    }

    /**
     * Every way to hold it better.
     *
     * @param lacking what has no margin left
     * @param roomM height of the soles at which a climb strikes what is overhead, m
     * @param ringM height of the ring of a tether above the soles, m
     */
    public static List<Candidate> forRestraint(
            Rig rig, Set<Ask.What> lacking, double roomM, double ringM) {
        List<Candidate> all = new ArrayList<>();
        if (lacking.stream().anyMatch(ON_STAND::contains)) {
            all.addAll(StandMoves.of(rig));
        }
        all.addAll(TetherMoves.of(rig, lacking, roomM, ringM));
        return all;
    }
}
