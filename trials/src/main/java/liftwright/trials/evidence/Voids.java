package liftwright.trials.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import liftwright.rig.Change;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.evidence.Inputs.Difference;

/** Which passes a change of the rig would void. */
public sealed interface Voids {

    /**
     * The file cannot be changed like that.
     *
     * @param reason a sentence
     */
    record Refused(String reason) implements Voids {}

    /**
     * What it would leave is no rig.
     *
     * @param problems what would be wrong with it
     */
    record NoRig(List<Problem> problems) implements Voids {
        public NoRig {
            problems = List.copyOf(problems);
        }
    }

    /**
     * @param changed every input that would not be what it is
     * @param voided cards that count today and would not, and by which inputs
     * @param stand cards that count today and would still
     */
    record Told(List<Difference> changed, Map<CardId, List<Difference>> voided, List<CardId> stand)
            implements Voids {
        public Told {
            changed = List.copyOf(changed);
            voided = new TreeMap<>(voided);
            stand = List.copyOf(stand);
        }

        /** Two or three sentences. */
        public String words() {
            if (changed.isEmpty()) {
                return "Nothing of the rig changes; every pass stands.";
            }
            var sentences = new ArrayList<String>();
            sentences.add(upper(String.join("; ", ChangeWords.of(changed))) + ".");
            if (voided.isEmpty() && stand.isEmpty()) {
                sentences.add("No card counts today that it could void.");
            } else {
                sentences.add("Void: " + cards(voided.keySet()) + ".");
                sentences.add("Still stand: " + cards(stand) + ".");
            }
            return String.join(" ", sentences);
        }

        private static String cards(Collection<CardId> cards) {
            return cards.isEmpty()
                    ? "none"
                    : cards.stream().map(CardId::text).collect(Collectors.joining(", "));
        }

        private static String upper(String text) {
            return Character.toUpperCase(text.charAt(0)) + text.substring(1);
        }
    }

    /**
     * Makes the changes in memory and looks what is left.
     *
     * @param before the rig as it stands
     * @param changes one after the other
     * @param passes all that were written down
     * @param programme gives the cards of a rig
     * @param settings of the controllers, which stay
     * @throws IllegalArgumentException if {@code before} is no rig
     */
    static Voids by(
            RigReading before,
            List<Change> changes,
            Collection<Pass> passes,
            Function<Rig, List<Planned>> programme,
            Map<String, String> settings,
            LocalDate today) {
        Rig was =
                before.rig().orElseThrow(() -> new IllegalArgumentException("the file is no rig"));
        return switch (before.with(changes)) {
            case RigReading.Edit.Refused(var _, var reason) -> new Refused(reason);
            case RigReading.Edit.Changed(var after, var _) ->
                    after.rig()
                            .<Voids>map(
                                    is ->
                                            told(
                                                    programme.apply(was),
                                                    programme.apply(is),
                                                    Inputs.of(was, settings),
                                                    Inputs.of(is, settings),
                                                    passes,
                                                    today))
                            .orElseGet(() -> new NoRig(after.problems()));
        };
    }

    private static Told told(
            List<Planned> cardsBefore,
            List<Planned> cardsAfter,
            Inputs before,
            Inputs after,
            Collection<Pass> passes,
            LocalDate today) {
        Standing was = Standing.of(cardsBefore, passes, before, today);
        Standing is = Standing.of(cardsAfter, passes, after, today);
        var voided = new TreeMap<CardId, List<Difference>>();
        var stand = new ArrayList<CardId>();
        for (CardId card : was.byCard().keySet()) {
            if (was.isPassed(card)) {
                switch (is.of(card)) {
                    case Standing.State.Passed _ -> stand.add(card);
                    case Standing.State.Voided(var _, var by) -> voided.put(card, by);
                    // Fewer of its runs count, or the changed rig has no such card.
                    case Standing.State.Begun _,
                            Standing.State.Expired _,
                            Standing.State.Failed _,
                            Standing.State.Never _ ->
                            voided.put(card, List.of());
                }
            }
        }
        return new Told(after.since(before, after), voided, stand);
    }
}
