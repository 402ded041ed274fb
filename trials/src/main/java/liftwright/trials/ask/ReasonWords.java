package liftwright.trials.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import liftwright.trials.CardId;
import liftwright.trials.evidence.Gate.Reason;
import liftwright.trials.evidence.Standing.State;

/** Why a card is closed, as short as a line of a table. */
final class ReasonWords {

    private ReasonWords() {}

    /** {@code needs mass, centre or inertia; kills not proved today}. */
    static String of(List<Reason> reasons) {
        var needs = new ArrayList<String>();
        var others = new ArrayList<String>();
        boolean kills = false;
        for (Reason reason : reasons) {
            switch (reason) {
                case Reason.Unproved(var anyOf, var states)
                        when states.stream().allMatch(State.Never.class::isInstance) ->
                        needs.add(
                                anyOf.stream()
                                        .map(CardId::text)
                                        .collect(Collectors.joining(" or ")));
                case Reason.Kill _ -> kills = true;
                case Reason.Unproved _,
                        Reason.Undeclared _,
                        Reason.Unread _,
                        Reason.Stops _,
                        Reason.NotMet _ ->
                        others.add(withoutPoint(reason.words()));
            }
        }
        var all = new ArrayList<String>();
        if (!needs.isEmpty()) {
            all.add("needs " + String.join(", ", needs));
        }
        all.addAll(others);
        if (kills) {
            all.add("kills not proved today");
        }
        return String.join("; ", all);
    }

    private static String withoutPoint(String words) {
        return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
    }
}
