package liftwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.answer.Evidence;

/** Assumptions that differ in nothing but the number of an item, brought together in one line. */
public final class AlikeLines {

    private static final Pattern ITEM = Pattern.compile("/(\\d{1,9})(?=/)");

    private record Likeness(String before, String after, String value, String origin) {}

    private AlikeLines() {}

    /** One line for each kind of assumption, in the order in which it first comes. */
    public static List<String> of(List<Evidence.Assumption> assumptions) {
        Map<Likeness, List<Integer>> items = new LinkedHashMap<>();
        for (Evidence.Assumption one : assumptions) {
            Matcher item = ITEM.matcher(one.path());
            boolean listed = item.find();
            String before = listed ? one.path().substring(0, item.start()) : one.path();
            String after = listed ? one.path().substring(item.end()) : "";
            List<Integer> numbers =
                    items.computeIfAbsent(
                            new Likeness(before, after, one.value(), one.origin()),
                            _ -> new ArrayList<>());
            if (listed) {
                numbers.add(Integer.parseInt(item.group(1)));
            }
        }
        List<String> lines = new ArrayList<>();
        items.forEach((like, numbers) -> lines.add(line(like, numbers)));
        return lines;
    }

    private static String line(Likeness like, List<Integer> numbers) {
        String at = numbers.isEmpty() ? "" : "/" + ranges(numbers);
        return like.before() + at + like.after() + ": " + like.value() + " (" + like.origin() + ")";
    }

    /** Such as 1–10, 13. */
    private static String ranges(List<Integer> numbers) {
        var text = new StringBuilder();
        int from = 0;
        for (int k = 0; k < numbers.size(); k++) {
            boolean goesOn = k + 1 < numbers.size() && numbers.get(k + 1) == numbers.get(k) + 1;
            if (goesOn) {
                continue;
            }
            text.append(text.isEmpty() ? "" : ", ").append(numbers.get(from));
            if (k > from) {
                text.append("–").append(numbers.get(k));
            }
            from = k + 1;
        }
        return text.toString();
    }
}
