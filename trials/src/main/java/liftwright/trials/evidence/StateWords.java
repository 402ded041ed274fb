package liftwright.trials.evidence;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import liftwright.trials.evidence.Inputs.Difference;
import liftwright.trials.evidence.Standing.State;

/** What a card is worth, for a reader. */
public final class StateWords {

    private static final int TOLD = 2;

    private StateWords() {}

    /** Behind the name of the card, without an end mark. */
    public static String of(State state) {
        return switch (state) {
            case State.Passed(var on, var until, int runs) ->
                    "passed on "
                            + on
                            + " with "
                            + CleanRuns.of(runs).clause()
                            + until.map(last -> ", counts until " + last).orElse("");
            case State.Begun(var on, int runs, int needed) ->
                    "has " + runs + " of " + needed + " clean runs, the last on " + on;
            case State.Voided(var on, var differences) ->
                    "was passed on " + on + " on another build: " + told(differences);
            case State.Expired(var on, var until) ->
                    "was passed on " + on + " and counted until " + until;
            case State.Failed(var on, var last) ->
                    switch (last) {
                                case PASSED, FAILED -> "did not pass";
                                case ABORTED -> "was aborted";
                                case UNEXPLAINED -> "had an unexplained event";
                            }
                            + " on "
                            + on
                            + ", which takes away what was before";
            case State.Never() -> "was never passed";
        };
    }

    private static String told(List<Difference> differences) {
        String first = String.join("; ", ChangeWords.of(differences).stream().limit(TOLD).toList());
        int more = ChangeWords.of(differences).size() - TOLD;
        return more > 0 ? first + "; and " + more + " more" : first;
    }

    /** When it was passed last, for a state that was. */
    public static Optional<LocalDate> day(State state) {
        return switch (state) {
            case State.Passed(var on, var _, var _) -> Optional.of(on);
            case State.Begun(var on, var _, var _) -> Optional.of(on);
            case State.Voided(var on, var _) -> Optional.of(on);
            case State.Expired(var on, var _) -> Optional.of(on);
            case State.Failed _, State.Never _ -> Optional.empty();
        };
    }
}
