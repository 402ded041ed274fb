package liftwright.app.bay;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.correction.CorrectionsRead;

/**
 * Answers of the review, of the states of rigs asked about last. A step of undo goes back to a
 * state whose answers were known a moment ago, and the gates of cards rest on them: neither shall
 * wait for them a second time. An answer is a function of what was read, so it is the same again.
 */
final class Reviewed {

    private static final int STATES = 8;

    /**
     * All that an answer of the review rests on.
     *
     * @param digest of the rig file and its tables
     * @param corrections as they count for it
     */
    private record State(String digest, CorrectionsRead corrections) {}

    /**
     * @param stage as far as it was answered
     * @param answer to that stage
     */
    record Kept(Stage stage, Answer answer) {}

    private static final class OfOne {
        private final Map<String, Kept> told = new HashMap<>();
        private final Map<String, Answer> forCards = new HashMap<>();
    }

    /** The one used last stands last. */
    private final Map<State, OfOne> byState =
            new LinkedHashMap<>(16, 0.75f, true) {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<State, OfOne> eldest) {
                    return size() > STATES;
                }
            };

    /**
     * Keeps what was told of a rig, unless more of it is known.
     *
     * @param digest of what the rig was read from
     * @param stage as far as it is answered
     */
    synchronized void keep(String digest, Rig rig, Stage stage, Answer answer) {
        of(digest, rig)
                .told
                .merge(
                        answer.question(),
                        new Kept(stage, answer),
                        (known, now) -> known.stage.compareTo(now.stage) > 0 ? known : now);
    }

    /** The answer to a question about that very state of a rig, as far as it was given. */
    synchronized Optional<Kept> of(String digest, Rig rig, String question) {
        return Optional.ofNullable(of(digest, rig).told.get(question));
    }

    /**
     * Keeps what was asked for the gates of cards, which may look at less than the page does.
     *
     * @param digest of what the rig was read from
     */
    synchronized void keepForCards(String digest, Rig rig, Answer answer) {
        of(digest, rig).forCards.put(answer.question(), answer);
    }

    /** The whole answer that gates may rest on, where it was given. */
    synchronized Optional<Answer> forCards(String digest, Rig rig, String question) {
        OfOne known = of(digest, rig);
        return Optional.ofNullable(known.told.get(question))
                .filter(kept -> kept.stage == Stage.WHOLE)
                .map(Kept::answer)
                .or(() -> Optional.ofNullable(known.forCards.get(question)));
    }

    private OfOne of(String digest, Rig rig) {
        return byState.computeIfAbsent(new State(digest, rig.corrections()), _ -> new OfOne());
    }
}
