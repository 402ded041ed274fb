package liftwright.review.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.text.RigText;

/** The same changes at 90 % of their size, or one step less where that is less. */
final class Smaller {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]+)?");

    private Smaller() {}

    static List<Change> than(RigText text, List<Change> changes) {
        List<Change> smaller = new ArrayList<>();
        for (Change change : changes) {
            switch (change) {
                case Change.Set(var at, var value) -> {
                    String before =
                            text.span(at)
                                    .map(span -> text.text().substring(span.from(), span.to()))
                                    .orElseThrow();
                    smaller.add(new Change.Set(at, between(at, before, value)));
                }
                case Change.Add _ -> {
                    // One fan less: see below.
                }
                case Change.Remove _, Change.Replace _, Change.Move _ ->
                        throw new AssertionError(change);
            }
        }
        List<Change> added =
                changes.stream().filter(change -> change instanceof Change.Add).toList();
        if (!added.isEmpty()) {
            // A ring grows by two.
            smaller.addAll(added.subList(0, added.size() - 2));
        }
        return smaller;
    }

    private static String between(RigPath at, String before, String after) {
        Matcher from = first(before);
        Matcher to = first(after);
        double old = Double.parseDouble(from.group());
        double now = Double.parseDouble(to.group());
        if (before.matches("[0-9]+") && after.matches("[0-9]+")) {
            long step = at.segments().getLast().equals("ring") ? 2 : 1;
            return Long.toString(Math.round(now) - step);
        }
        double step = step(after);
        double size = Math.abs(now - old);
        double less = Math.max(0.1 * size, step);
        double value = now - Math.copySign(Math.min(less, size), now - old);
        return String.format(Locale.ROOT, "%.12g", value) + after.substring(to.end());
    }

    private static double step(String value) {
        if (value.contains("kg")) {
            return 0.1;
        }
        if (value.contains("°")) {
            return 0.5;
        }
        return value.contains("%") && !value.contains("±") ? 1 : 0.01;
    }

    private static Matcher first(String text) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.find()) {
            throw new AssertionError("no number in " + text);
        }
        return matcher;
    }
}
