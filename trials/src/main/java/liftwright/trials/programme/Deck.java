package liftwright.trials.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.Rig;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.Run;

/** Cards of one rig as they are laid down, first to last. */
final class Deck {

    private final Rig rig;
    private final Feeding feeding;
    private final List<Planned> cards = new ArrayList<>();

    Deck(Rig rig) {
        this.rig = rig;
        feeding = new Feeding(rig);
    }

    Rig rig() {
        return rig;
    }

    Feeding feeding() {
        return feeding;
    }

    List<Planned> cards() {
        return cards;
    }

    /** A card on which nothing turns. */
    void still(
            CardId id, String purpose, List<Set<CardId>> needs, Basis basis, Practice.Terms terms) {
        lay(id, purpose, needs, Set.of(), false, basis, terms, Optional.empty());
    }

    /** A card on which something turns: the kills have to be proved that day. */
    void turning(
            CardId id,
            String purpose,
            List<Set<CardId>> needs,
            Set<String> questions,
            Basis basis,
            Practice.Terms terms,
            Optional<Run> run) {
        lay(id, purpose, needs, questions, true, basis, terms, run);
    }

    /** The proof of the kills itself, which cannot ask for one. */
    void proof(
            CardId id,
            String purpose,
            List<Set<CardId>> needs,
            Basis basis,
            Practice.Terms terms,
            Run run) {
        lay(id, purpose, needs, Set.of(), false, basis, terms, Optional.of(run));
    }

    private void lay(
            CardId id,
            String purpose,
            List<Set<CardId>> needs,
            Set<String> questions,
            boolean killProof,
            Basis basis,
            Practice.Terms terms,
            Optional<Run> run) {
        cards.add(
                new Planned(
                        id,
                        purpose,
                        needs,
                        questions,
                        killProof,
                        basis,
                        terms.agesAfterDays(),
                        terms.minutes(),
                        terms.repeats(),
                        run));
    }
}
