package liftwright.trials.programme;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.HoldingStand;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Tether;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/**
 * What a rig file does not say and a card cannot be done without. A card with any of it stays
 * closed.
 *
 * @param at where it would be declared
 * @param words what is missing and what to declare, one sentence
 */
public record Missing(RigPath at, String words) {

    /** Least demanded thrust over weight of a restrained hop; common practice. */
    public static final double HOP_DEMAND = 1.15;

    /** The same of a free hover with a wearer. */
    public static final double FREE_DEMAND = 1.30;

    /** The same of a module that flies by itself. */
    public static final double MODULE_DEMAND = 1.6;

    /** All that a card lacks; none where it has all it needs. */
    public static List<Missing> of(Rig rig, Planned card) {
        List<Missing> missing = new ArrayList<>();
        boolean proof = card.id().kind() == CardKind.KILL;
        if ((card.killProof() || proof) && rig.wiring().kills().isEmpty()) {
            missing.add(
                    said(
                            "Nothing makes this rig dead: declare every kill, at least two that have"
                                    + " nothing in common.",
                            "wiring",
                            "kills"));
        }
        if ((card.killProof() || proof) && rig.crew().isEmpty()) {
            missing.add(
                    said(
                            "Nobody watches: declare who stands where and who holds which kill.",
                            "crew"));
        }
        card.run().ifPresent(run -> held(rig, card, run, missing));
        demand(card.id().kind()).ifPresent(least -> demanded(rig, least, missing));
        return List.copyOf(missing);
    }

    private static void held(Rig rig, Planned card, Run run, List<Missing> missing) {
        switch (run.held()) {
            case BENCH, NOTHING -> {}
            case STAND -> stand(rig, run, missing);
            case SCALE -> scale(rig, missing);
            case TETHER -> tether(rig, card, run, missing);
        }
    }

    private static void stand(Rig rig, Run run, List<Missing> missing) {
        Optional<HoldingStand> stand = rig.restraint().stand();
        if (stand.isEmpty()) {
            missing.add(
                    said(
                            "Nothing is declared that holds these fans down: declare the stand.",
                            "restraint",
                            "stand"));
            return;
        }
        Set<PartId> loose = new HashSet<>(run.fans());
        stand.get().fans().forEach(loose::remove);
        if (!loose.isEmpty()) {
            missing.add(
                    said(
                            "The declared stand does not hold "
                                    + String.join(
                                            ", ",
                                            loose.stream().sorted().map(PartId::text).toList())
                                    + ": name these fans there.",
                            "restraint",
                            "stand",
                            "fans"));
        }
    }

    private static void scale(Rig rig, List<Missing> missing) {
        if (rig.restraint().platform().isEmpty()) {
            missing.add(
                    said(
                            "No scale is declared: declare the platform, its size and the least step"
                                    + " that it shows.",
                            "restraint",
                            "platform"));
        }
    }

    private static void tether(Rig rig, Planned card, Run run, List<Missing> missing) {
        Optional<Tether> tether = rig.restraint().tether();
        if (tether.isEmpty()) {
            missing.add(
                    said(
                            "Nothing is declared that bears the rig: declare the tether, its anchor"
                                    + " and its lines.",
                            "restraint",
                            "tether"));
            return;
        }
        if (tether.get().downLines().isEmpty() && card.id().kind() == CardKind.HOP) {
            missing.add(
                    said(
                            "A line overhead does not stop a climb: declare the down-lines.",
                            "restraint",
                            "tether",
                            "down-lines"));
        }
        if (run.worn() && tether.get().gettingDown().isEmpty()) {
            missing.add(
                    said(
                            "Nobody has said how a hanging wearer gets down: declare it.",
                            "restraint",
                            "tether",
                            "getting down"));
        }
    }

    private static Optional<Double> demand(CardKind kind) {
        return switch (kind) {
            case HOP -> Optional.of(HOP_DEMAND);
            case FREE_HOVER -> Optional.of(FREE_DEMAND);
            case MODULE_HOLD, MODULE_CROSS, TO_WEARER -> Optional.of(MODULE_DEMAND);
            case MASS,
                    CENTRE,
                    INERTIA,
                    CELLS,
                    FRAME,
                    THROTTLE,
                    KILL,
                    FIRST_SPIN,
                    PROOF_SPIN,
                    THRUST,
                    LAG,
                    POD,
                    ALL_FANS,
                    SCALE,
                    HANGING ->
                    Optional.empty();
        };
    }

    private static void demanded(Rig rig, double least, List<Missing> missing) {
        double asked = rig.demands().thrustToWeight().si();
        if (asked < least - 1e-9) {
            missing.add(
                    said(
                            "This card asks that thrust over weight is held against "
                                    + least
                                    + " at least; the file demands "
                                    + asked
                                    + ".",
                            "demands",
                            "thrust to weight"));
        }
    }

    private static Missing said(String words, String... path) {
        return new Missing(RigPath.of(path), words);
    }
}
