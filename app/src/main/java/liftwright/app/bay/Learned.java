package liftwright.app.bay;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.answer.Answer;

/** What tests taught, of those asked about last: a test never changes, nor does what it taught. */
final class Learned {

    private static final int TESTS = 32;

    private final Map<String, Answer> byDigest =
            new LinkedHashMap<>() {
                private static final long serialVersionUID = 1;

                @Override
                protected boolean removeEldestEntry(Map.Entry<String, Answer> eldest) {
                    return size() > TESTS;
                }
            };

    /**
     * @param digest of the test
     * @param answer to its end
     */
    synchronized void keep(String digest, Answer answer) {
        byDigest.put(digest, answer);
    }

    /** What was answered about the test of that digest. */
    synchronized Optional<Answer> of(String digest) {
        return Optional.ofNullable(byDigest.get(digest));
    }
}
