package liftwright.app.bay;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.review.Stage;

/** What tests taught, of those asked about last: a test never changes, nor does what it taught. */
final class Learned {

    private static final int TESTS = 32;

    private final Map<String, Map<Stage, Answer>> byDigest =
            new LinkedHashMap<>() {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Map<Stage, Answer>> eldest) {
                    return size() > TESTS;
                }
            };

    /**
     * @param digest of the test
     */
    synchronized void keep(String digest, Stage stage, Answer answer) {
        byDigest.computeIfAbsent(digest, _ -> new EnumMap<>(Stage.class)).put(stage, answer);
    }

    /** What was answered about the test of that digest, as far as that stage. */
    synchronized Optional<Answer> of(String digest, Stage stage) {
        return Optional.ofNullable(byDigest.getOrDefault(digest, Map.of()).get(stage));
    }
}
