package liftwright.trials.ask;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.trials.Planned;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Standing.State;
import liftwright.trials.evidence.StateWords;

/**
 * A card of the programme, what became of it, and whether it may be done today.
 *
 * @param planned the card
 * @param state what came of it so far
 * @param gate whether it may be done
 */
record CardStanding(Planned planned, State state, Gate gate) {

    boolean isPassed() {
        return state instanceof State.Passed;
    }

    boolean isOpen() {
        return gate instanceof Gate.Open;
    }

    List<Gate.Reason> reasons() {
        return switch (gate) {
            case Gate.Open() -> List.of();
            case Gate.Closed(var reasons) -> reasons;
        };
    }

    /** In one word. */
    String word() {
        return switch (state) {
            case State.Passed _ -> "passed";
            case State.Voided _ -> "voided";
            case State.Expired _ -> "expired";
            case State.Begun _, State.Failed _, State.Never() -> isOpen() ? "open" : "closed";
        };
    }

    /** What came of it, where anything did, and what keeps it closed. */
    String why() {
        String closed = isOpen() ? "" : "closed: " + ReasonWords.of(reasons());
        return switch (state) {
            case State.Passed _ -> "";
            case State.Never() -> isOpen() ? "" : ReasonWords.of(reasons());
            case State.Begun _, State.Voided _, State.Expired _, State.Failed _ ->
                    StateWords.of(state) + (closed.isEmpty() ? "" : "; " + closed);
        };
    }

    Optional<LocalDate> until() {
        return state instanceof State.Passed(var _, var until, var _) ? until : Optional.empty();
    }
}
