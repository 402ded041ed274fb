package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.PartId;

/** Many parts in few words: runs of numbers within a group are drawn together. */
final class PartList {

    private PartList() {}

    /** {@code left.1 to left.8, p.3}; order stays. */
    static String words(List<PartId> parts) {
        List<String> words = new ArrayList<>();
        int from = 0;
        for (int k = 1; k <= parts.size(); k++) {
            if (k == parts.size() || !follows(parts.get(k - 1), parts.get(k))) {
                String first = parts.get(from).text();
                String last = parts.get(k - 1).text();
                switch (k - from) {
                    case 1 -> words.add(first);
                    case 2 -> {
                        words.add(first);
                        words.add(last);
                    }
                    default -> words.add(first + " to " + last);
                }
                from = k;
            }
        }
        return String.join(", ", words);
    }

    private static boolean follows(PartId one, PartId next) {
        int dot = one.text().lastIndexOf('.');
        if (dot < 0) {
            return false;
        }
        try {
            int number = Integer.parseInt(one.text().substring(dot + 1));
            return next.equals(PartId.of(one.text().substring(0, dot), number + 1));
        } catch (NumberFormatException e) {
            return false; // an id of the builder's own with a dot in it
        }
    }
}
