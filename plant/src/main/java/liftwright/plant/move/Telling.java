package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.rig.Mount;
import liftwright.rig.place.Carried;

/** Says what a move writes and what goes along. */
final class Telling {

    /** More names than this are counted. */
    private static final int MOST_NAMED = 4;

    private Telling() {}

    static String of(
            Carried part, PartMove move, Optional<String> counterpart, List<String> parts) {
        String id = part.id().text();
        var said = new StringBuilder(what(part, move));
        var told = new ArrayList<>(List.of(id));
        move.twin()
                .ifPresent(
                        twin -> {
                            told.add(twin.id().text());
                            said.append(twin(twin.id().text(), move, parts));
                        });
        counterpart.ifPresent(
                other -> {
                    told.add(other);
                    said.append(' ')
                            .append(quoted(other))
                            .append(", on the other side, goes along.");
                });
        List<String> others = parts.stream().filter(p -> !told.contains(p)).toList();
        if (!others.isEmpty()) {
            said.append(" With it ")
                    .append(others.size() == 1 ? "goes " : "go ")
                    .append(named(others))
                    .append('.');
        }
        if (!move.caught().isEmpty()) {
            said.append(" In line with ").append(String.join(" and ", move.caught())).append('.');
        }
        return said.toString();
    }

    private static String what(Carried part, PartMove move) {
        String id = quoted(part.id().text());
        String entry = quoted(part.declaredAt().segments().getLast());
        return switch (move.how()) {
            case OWN -> "Sets the place of " + id + ".";
            case NEW_EXCEPTION ->
                    "Gives " + id + " a place of its own: an exception in " + entry + ".";
            case EXCEPTION ->
                    "Changes the place that an exception in " + entry + " gives " + id + ".";
            case GROUP -> "Moves " + entry + " as a whole.";
        };
    }

    private static String twin(String twin, PartMove move, List<String> parts) {
        if (move.together()) {
            return " " + quoted(twin) + " is its mirror image and goes along.";
        }
        return parts.contains(twin)
                ? ""
                : " " + quoted(twin) + ", its mirror image, keeps its place.";
    }

    static String of(Mount mount, Optional<Mount> twin) {
        return "Moves the mount "
                + quoted(mount.name())
                + " with all that it carries."
                + twin.map(t -> " " + quoted(t.name()) + " is its mirror image and goes along.")
                        .orElse("");
    }

    /** What is said where jets go another way. */
    static String turned(List<String> fans) {
        return fans.isEmpty()
                ? ""
                : " “Outboard” is the other side there: the jet of "
                        + named(fans)
                        + " leans or blows that way now.";
    }

    private static String named(List<String> ids) {
        String names =
                ids.stream()
                        .limit(MOST_NAMED)
                        .map(Telling::quoted)
                        .collect(Collectors.joining(", "));
        int more = ids.size() - MOST_NAMED;
        return more > 0 ? names + " and " + more + " more" : names;
    }

    private static String quoted(String name) {
        return "“" + name + "”";
    }
}
