package liftwright.trials.evidence;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import liftwright.trials.evidence.Inputs.Difference;

/** What became of a rig, for a reader: a line for each part and thing. */
public final class ChangeWords {

    private static final String AT = "/at/";

    private ChangeWords() {}

    /** Each a clause without an end mark: {@code p.4 moved 30 mm up}. */
    public static List<String> of(List<Difference> differences) {
        var moved = new LinkedHashMap<String, Map<String, Difference>>();
        var rest = new LinkedHashMap<String, List<Difference>>();
        for (Difference one : differences) {
            int at = one.path().indexOf(AT);
            if (at >= 0 && isMove(one)) {
                moved.computeIfAbsent(one.path().substring(0, at), _ -> new TreeMap<>())
                        .put(one.path().substring(at + AT.length()), one);
            } else {
                rest.computeIfAbsent(part(one.path()), _ -> new ArrayList<>()).add(one);
            }
        }
        var words = new ArrayList<String>();
        moved.forEach((part, ways) -> words.add(name(part) + " moved " + ways(ways)));
        rest.forEach((part, all) -> words.add(told(part, all)));
        return List.copyOf(words);
    }

    private static String told(String part, List<Difference> all) {
        if (all.stream().allMatch(d -> d.from().equals(Inputs.NOTHING)) && isWhole(part, all)) {
            return name(part) + " is new";
        }
        if (all.stream().allMatch(d -> d.to().equals(Inputs.NOTHING)) && isWhole(part, all)) {
            return name(part) + " is gone";
        }
        Difference first = all.getFirst();
        String what = first.path().substring(Math.min(part.length() + 1, first.path().length()));
        return name(part)
                + (what.isEmpty() ? "" : " " + what.replace('/', ' '))
                + ": "
                + first.from()
                + " → "
                + first.to()
                + (all.size() > 1 ? " and " + (all.size() - 1) + " more of it" : "");
    }

    /** Whether it is a part that came or went, and not something that a part has now. */
    private static boolean isWhole(String part, List<Difference> all) {
        String own =
                switch (part.substring(0, part.lastIndexOf('/') + 1)) {
                    case "fan types/", "cells/" -> "/mass";
                    case "mounts/" -> "/on";
                    case "wiring/chains/" -> "/from";
                    case "wiring/contactors/" -> "/poles";
                    default -> "/declared at";
                };
        return all.stream().anyMatch(d -> d.path().equals(part + own));
    }

    private static String name(String part) {
        return part.substring(part.lastIndexOf('/') + 1);
    }

    /** Section and id; of the wiring one segment more. */
    private static String part(String path) {
        String[] segments = path.split("/", -1);
        int length = path.startsWith("wiring/") || path.startsWith("control/groups/") ? 3 : 2;
        if (path.startsWith(UnreadKeys.DECLARED + "/")) {
            length++;
        }
        return String.join("/", List.of(segments).subList(0, Math.min(length, segments.length)));
    }

    private static boolean isMove(Difference one) {
        return one.from().endsWith(" m") && one.to().endsWith(" m");
    }

    private static double metres(String text) {
        return Double.parseDouble(text.substring(0, text.length() - 2));
    }

    private static String ways(Map<String, Difference> ways) {
        var words = new ArrayList<String>();
        ways.forEach(
                (axis, way) -> {
                    double byM = metres(way.to()) - metres(way.from());
                    words.add(
                            new BigDecimal(1e3 * Math.abs(byM))
                                            .round(new MathContext(4))
                                            .stripTrailingZeros()
                                            .toPlainString()
                                    + " mm "
                                    + direction(axis, byM > 0));
                });
        return String.join(", ", words);
    }

    private static String direction(String axis, boolean positive) {
        return switch (axis) {
            case "forward" -> positive ? "forward" : "back";
            case "right" -> positive ? "right" : "left";
            case "down" -> positive ? "down" : "up";
            default -> axis;
        };
    }
}
