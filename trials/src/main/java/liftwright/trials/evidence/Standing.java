package liftwright.trials.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.evidence.Inputs.Difference;

/**
 * What the cards of a programme are worth today.
 *
 * @param today the day
 * @param byCard of every card of the programme
 */
public record Standing(LocalDate today, SortedMap<CardId, State> byCard) {

    public Standing {
        byCard = Collections.unmodifiableSortedMap(new TreeMap<>(byCard));
    }

    /** What came of one card so far, on this build and today. */
    public sealed interface State {

        /**
         * It counts.
         *
         * @param on day of the last clean runs
         * @param until last day on which it counts; empty where it does not age
         * @param runs clean ones in a row on this build that still count
         */
        record Passed(LocalDate on, Optional<LocalDate> until, int runs) implements State {}

        /**
         * Not enough clean runs yet.
         *
         * @param on day of the last ones
         * @param runs clean ones in a row on this build
         * @param needed how many make a pass
         */
        record Begun(LocalDate on, int runs, int needed) implements State {}

        /**
         * It was passed on another build.
         *
         * @param on the day
         * @param differences inputs that are not what they were, never empty
         */
        record Voided(LocalDate on, List<Difference> differences) implements State {
            public Voided {
                differences = List.copyOf(differences);
            }
        }

        /**
         * It was passed on this build, too long ago.
         *
         * @param on the day
         * @param until last day on which it counted
         */
        record Expired(LocalDate on, LocalDate until) implements State {}

        /**
         * The last time it did not pass, which takes away whatever was before.
         *
         * @param on the day
         * @param last what came of it
         */
        record Failed(LocalDate on, Pass.Outcome last) implements State {}

        /** Nobody did it yet. */
        record Never() implements State {}
    }

    /**
     * @param cards of the programme
     * @param passes all that were written down, in any order; those of other cards are passed over
     * @param now inputs of the rig as it is
     * @param today the day; what is dated later does not count for a card, and speaks against it
     */
    public static Standing of(
            List<Planned> cards, Collection<Pass> passes, Inputs now, LocalDate today) {
        var states = new TreeMap<CardId, State>();
        for (Planned card : cards) {
            var own =
                    passes.stream()
                            .filter(pass -> pass.card().equals(card.id()))
                            .sorted(Pass.IN_TIME)
                            .toList();
            states.put(card.id(), state(card, own, now, today));
        }
        return new Standing(today, states);
    }

    private static State state(Planned card, List<Pass> own, Inputs now, LocalDate today) {
        List<Pass> clean = new ArrayList<>();
        Optional<Pass> bad = Optional.empty();
        for (Pass pass : own) {
            if (pass.isPassed()) {
                clean.add(pass);
            } else {
                bad = Optional.of(pass);
                clean.clear();
            }
        }
        clean.removeIf(pass -> pass.on().isAfter(today));
        if (clean.isEmpty()) {
            return bad.<State>map(pass -> new State.Failed(pass.on(), pass.outcome()))
                    .orElseGet(State.Never::new);
        }
        Inputs resting = now.restingOn(card.basis());
        List<Pass> same =
                clean.stream().filter(p -> now.since(p.inputs(), resting).isEmpty()).toList();
        if (same.isEmpty()) {
            Pass last = clean.getLast();
            return new State.Voided(last.on(), now.since(last.inputs(), resting));
        }
        return onThisBuild(card, same, today);
    }

    private static State onThisBuild(Planned card, List<Pass> same, LocalDate today) {
        int runs = 0;
        Optional<LocalDate> until = Optional.empty();
        LocalDate on = same.getLast().on();
        for (Pass pass : same.reversed()) {
            Optional<LocalDate> last = pass.lastDay(card.agesAfterDays());
            if (last.isPresent() && last.get().isBefore(today)) {
                break;
            }
            // The runs that were still needed decide how long all of it counts.
            until = runs < card.repeats() ? last : until;
            runs += pass.cleanRuns();
        }
        if (runs >= card.repeats()) {
            return new State.Passed(on, until, runs);
        }
        return runs > 0
                ? new State.Begun(on, runs, card.repeats())
                : new State.Expired(on, same.getLast().lastDay(card.agesAfterDays()).orElseThrow());
    }

    /** Of a card; never done where the programme does not have it. */
    public State of(CardId card) {
        return byCard.getOrDefault(card, new State.Never());
    }

    /** Whether a card counts today. */
    public boolean isPassed(CardId card) {
        return of(card) instanceof State.Passed;
    }
}
