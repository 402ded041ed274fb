package liftwright.rig.shape.kind;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Node;

/**
 * One of a few words.
 *
 * @param words what may be written, and what it means inside, in the order of the reference page
 */
public record Word<E>(Map<String, E> words) implements Kind<E> {

    public Word {
        words = Collections.unmodifiableMap(new LinkedHashMap<>(words));
    }

    /** Words that stand for themselves. */
    public static Word<String> of(String... words) {
        var map = new LinkedHashMap<String, String>();
        for (String word : words) {
            map.put(word, word);
        }
        return new Word<>(map);
    }

    /** The constants of an enum, written in small letters with spaces or hyphens. */
    public static <E extends Enum<E>> Word<E> of(E[] constants, char between) {
        var map = new LinkedHashMap<String, E>();
        for (E constant : constants) {
            map.put(
                    constant.name().toLowerCase(java.util.Locale.ROOT).replace('_', between),
                    constant);
        }
        return new Word<>(map);
    }

    @Override
    public Optional<E> read(Node node, Spot spot, Problems problems) {
        var text = Scalars.text(node, spot, this, problems);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        E meaning = words.get(text.get());
        if (meaning == null) {
            problems.add(
                    Code.UNKNOWN_WORD,
                    spot,
                    Problems.quote(text.get()),
                    expectation(),
                    Nearest.advice(text.get(), words.keySet()));
        }
        return Optional.ofNullable(meaning);
    }

    @Override
    public String expectation() {
        return words.size() == 1
                ? "the word " + String.join("", words.keySet())
                : "one of " + String.join(", ", words.keySet());
    }
}
