package liftwright.quantity;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import liftwright.quantity.Refusal.Code;
import org.jspecify.annotations.Nullable;

/** What to say about a word that stands where a unit should and is none. */
final class UnknownUnit {

    private static final String A_UNIT = "a unit of the list in docs/reference/units.md";

    private static final int MOST_GUESSES = 12;

    private UnknownUnit() {}

    static RefusedException refusal(Cursor in, int start, int end) {
        String word = in.text.substring(start, end);
        var advice = UnitAdvice.notAUnit(word);
        if (advice != null) {
            return in.refusal(
                    Code.NOT_A_UNIT,
                    start,
                    end,
                    advice.message(),
                    advice.expected(),
                    advice.instead());
        }
        String prefixed = prefixed(word);
        return prefixed == null
                ? in.refusal(
                        Code.UNIT_UNKNOWN,
                        start,
                        end,
                        "no unit is written " + word,
                        A_UNIT,
                        guesses(word))
                : in.refusal(Code.UNIT_UNKNOWN, start, end, prefixed, A_UNIT, inOtherCase(word));
    }

    /** What to say where {@code word} is a unit behind a prefix that it does not take. */
    private static @Nullable String prefixed(String word) {
        for (Prefix prefix : Prefix.ALL) {
            for (String before : prefix.spellings()) {
                var entry =
                        word.startsWith(before)
                                ? UnitIndex.find(word.substring(before.length()))
                                : null;
                if (entry != null && entry.symbol().equals(entry.unit().symbol())) {
                    return entry.symbol() + " takes no prefix " + prefix.name();
                }
            }
        }
        return null;
    }

    /** Best first: words of everyday use, wrong case, two units written as one, a slip of a key. */
    static List<String> guesses(String word) {
        var found = new LinkedHashSet<>(UnitAdvice.inWords(word));
        found.addAll(inOtherCase(word));
        addSplit(word, found);
        addNearest(word, found);
        return found.stream().limit(MOST_GUESSES).toList();
    }

    private static List<String> inOtherCase(String word) {
        var same = new ArrayList<String>();
        UnitIndex.all()
                .forEach(
                        (spelling, entry) -> {
                            if (spelling.equalsIgnoreCase(word)) {
                                same.add(entry.symbol());
                            }
                        });
        same.sort((a, b) -> Integer.compare(changes(word, a), changes(word, b)));
        return same;
    }

    private static int changes(String word, String symbol) {
        int count = Math.abs(word.length() - symbol.length());
        for (int i = 0; i < Math.min(word.length(), symbol.length()); i++) {
            count += word.charAt(i) == symbol.charAt(i) ? 0 : 1;
        }
        return count;
    }

    private static void addSplit(String word, Set<String> found) {
        for (int i = word.length() - 1; i > 0; i--) {
            var left = UnitIndex.find(word.substring(0, i));
            var right = UnitIndex.find(word.substring(i));
            if (left != null && right != null) {
                found.add(left.symbol() + "·" + right.symbol());
            }
        }
    }

    private static void addNearest(String word, Set<String> found) {
        int most = word.length() < 3 ? 0 : word.length() < 6 ? 1 : 2;
        for (int distance = 1; distance <= most; distance++) {
            int wanted = distance;
            for (String known : UnitAdvice.words()) {
                if (known.length() > 3 && EditDistance.between(word, known, wanted) == wanted) {
                    found.addAll(UnitAdvice.inWords(known));
                }
            }
            UnitIndex.all()
                    .forEach(
                            (spelling, entry) -> {
                                if (EditDistance.between(word, spelling, wanted) == wanted) {
                                    found.add(entry.symbol());
                                }
                            });
        }
    }
}
