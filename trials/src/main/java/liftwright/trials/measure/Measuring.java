package liftwright.trials.measure;

import java.util.Optional;
import liftwright.numerics.Work;
import liftwright.rig.Rig;
import liftwright.rig.stand.Stand;
import liftwright.trials.Planned;

/** What stands on the cards by which a rig is measured. */
public final class Measuring {

    private Measuring() {}

    /** The same where no thrust stand is planned in a file. */
    public static Optional<Measured> of(Rig rig, Planned card, long seed, int threads, Work work) {
        return of(rig, card, Optional.empty(), seed, threads, work);
    }

    /**
     * Makes the content of one card.
     *
     * @param stand by which thrust will be measured; where there is none, the error of a stand is
     *     that of common practice
     * @param seed of the draws; the same gives the same on any number of threads
     * @param threads ≥ 1
     * @return empty for a card on which nothing is measured, and where the work was stopped
     * @throws liftwright.plant.parameters.ImpossibleValueException if a declared value is none that
     *     can be
     */
    public static Optional<Measured> of(
            Rig rig, Planned card, Optional<Stand> stand, long seed, int threads, Work work) {
        Asked asked = new Asked(rig, card, stand, seed, threads, work);
        return switch (card.id().kind()) {
            case MASS -> new MassCard(asked).content();
            case CENTRE -> new CentreCard(asked).content();
            case INERTIA -> new InertiaCard(asked).content();
            case CELLS -> new CellsCard(asked).content();
            case FRAME -> new FrameCard(asked).content();
            case THROTTLE -> new ThrottleCard(asked).content();
            case THRUST -> new ThrustCard(asked).content();
            case LAG -> new LagCard(asked).content();
            case PROOF_SPIN -> new ProofSpinCard(asked).content();
            case KILL,
                    FIRST_SPIN,
                    POD,
                    ALL_FANS,
                    SCALE,
                    HANGING,
                    HOP,
                    FREE_HOVER,
                    MODULE_HOLD,
                    MODULE_CROSS,
                    TO_WEARER ->
                    Optional.empty();
        };
    }
}
