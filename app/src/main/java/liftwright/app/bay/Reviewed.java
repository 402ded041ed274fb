package liftwright.app.bay;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Answer;

/**
 * Whole answers of the review, of the rigs asked about last: the gates of cards rest on them, and
 * shall not wait for them a second time.
 */
final class Reviewed {

    private static final int RIGS = 8;

    private final Map<String, Map<String, Answer>> byDigest =
            new LinkedHashMap<>() {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Map<String, Answer>> eldest) {
                    return size() > RIGS;
                }
            };

    /**
     * @param digest of what the rig was read from
     * @param answer to its end
     */
    synchronized void keep(String digest, Answer answer) {
        byDigest.computeIfAbsent(digest, _ -> new HashMap<>()).put(answer.question(), answer);
    }

    /** The answer to a question about that very state of a rig, where it was given. */
    synchronized Optional<Answer> of(String digest, String question) {
        return Optional.ofNullable(byDigest.getOrDefault(digest, Map.of()).get(question));
    }
}
