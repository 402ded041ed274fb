package liftwright.trials;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A card of a programme before anything is computed for it.
 *
 * @param id its name
 * @param purpose what is known after it that was not before, one sentence
 * @param needs what it rests on: of each group at least one card has to be passed on this build
 * @param questions questions of the review whose stopping or undecided findings keep it closed
 * @param killProof whether the kills have to be proved on the same day
 * @param basis inputs that its pass rests on
 * @param agesAfterDays after so many days a pass is worth nothing; never where it is empty
 * @param minutes how long it takes with setting up, common practice
 * @param repeats clean runs in a row that make a pass, ≥ 1
 * @param run what the fans do; empty where none turns
 */
public record Planned(
        CardId id,
        String purpose,
        List<Set<CardId>> needs,
        Set<String> questions,
        boolean killProof,
        Basis basis,
        Optional<Integer> agesAfterDays,
        double minutes,
        int repeats,
        Optional<Run> run) {

    public Planned {
        needs = needs.stream().map(Set::copyOf).toList();
        questions = Set.copyOf(questions);
        if (needs.stream().anyMatch(Set::isEmpty) || repeats < 1 || !(minutes > 0)) {
            throw new IllegalArgumentException("not a card: " + id);
        }
    }
}
