package liftwright.rig.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.ListOf;
import liftwright.rig.shape.kind.MapOf;
import liftwright.rig.shape.kind.Need;
import liftwright.rig.shape.kind.Rule;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.words.FanKeys;

/** The reference page of the rig file, written from the table of keys. */
public final class RigReference {

    private static final String HEAD =
            """
            # The rig file, format 1

            This page is written from the table that the reader itself uses; a test says when it is
            stale. Every quantity carries its unit. A doubt is written behind the value: `± 3 %`,
            `± 5 mm`, `+0.15/−0.20`, `± 3 W bound` for a value that lies anywhere between two ends,
            and `each` where every single part has its own. What is left out takes the value in the
            column “without it”; every answer prints the defaults that it used.

            Places are said as the wearer sees them: `forward`, `right`, `up`; `outboard` is away
            from the middle of the body, on the side where the mount is. On a limb the axes turn with
            it, so that `down` and `along` run towards the hand. Parts that a group makes are called
            `group.1`, `group.2` and so on.

            Keys marked *not yet* are part of the format: they are read and checked, and no question
            uses them yet.
            """;

    private final StringBuilder out;

    /** Whether the page says which question reads a key. */
    private final boolean readers;

    private RigReference(String head, boolean readers) {
        out = new StringBuilder(head);
        this.readers = readers;
    }

    /** The page as Markdown, with a line feed at its end. */
    public static String markdown() {
        var page = new RigReference(HEAD, true);
        Shape.sections().values().forEach(page::section);
        return page.out.toString();
    }

    /**
     * The page of another file that is read with the same kinds.
     *
     * @param head what stands above the tables, with a line feed at its end
     * @param root of the file
     */
    public static String markdown(String head, Section root) {
        var page = new RigReference(head, false);
        Shape.sections(root).values().forEach(page::section);
        return page.out.toString();
    }

    private void section(Section section) {
        out.append("\n## ").append(title(section.name())).append("\n\n");
        out.append(section.meaning()).append("\n\n");
        out.append("| key | what it is | without it | meaning | example |");
        out.append(readers ? " read by |\n" : "\n");
        out.append("| --- | --- | --- | --- | --- |").append(readers ? " --- |\n" : "\n");
        section.keys().forEach(this::row);
        var all = new ArrayList<>(section.rules());
        if (section.equals(FanKeys.SECTION)) {
            all.addAll(FanKeys.WHOLE);
        }
        List<String> rules = all.stream().map(RigReference::rule).toList();
        if (!rules.isEmpty()) {
            out.append('\n');
            rules.forEach(rule -> out.append("- ").append(rule).append('\n'));
        }
    }

    private void row(Key<?> key) {
        out.append("| `").append(key.name()).append("` | ");
        out.append(cell(what(key.kind()))).append(" | ");
        out.append(cell(without(key.need()))).append(" | ");
        out.append(cell(key.meaning())).append(" | `");
        out.append(cell(key.example())).append(readers ? "` | " : "` |\n");
        if (!readers) {
            return;
        }
        key.usedBy().ifPresent(q -> out.append(q.name().toLowerCase(Locale.ROOT)));
        out.append(key.isUsed() ? "" : key.usedBy().isPresent() ? ", *not yet*" : "*not yet*");
        out.append(" |\n");
    }

    private static String what(Kind<?> kind) {
        String links =
                Shape.within(kind).stream()
                        .map(RigReference::link)
                        .collect(Collectors.joining(", "));
        if (kind instanceof Section section) {
            return link(section);
        }
        if (links.isEmpty()) {
            return kind.expectation();
        }
        return switch (kind) {
            case ListOf<?> list -> "a list of " + list.what() + ": " + links;
            case MapOf<?> map -> map.what() + ": " + links;
            default -> kind.expectation() + ": " + links;
        };
    }

    private static String link(Section section) {
        return "[" + section.name() + "](#" + section.name().replace(' ', '-') + ")";
    }

    private static String without(Need need) {
        return switch (need) {
            case Need.Required _ -> "**required**";
            case Need.Open(var means) -> means;
            case Need.Default(var text, var origin) -> "`" + text + "`: " + origin;
            case Need.Computed(var how) -> how;
        };
    }

    private static String rule(Rule rule) {
        return switch (rule) {
            case Rule.AtMostOne(var keys) -> "At most one of " + names(keys) + ".";
            case Rule.AtLeastOne(var keys) -> "At least one of " + names(keys) + ".";
            case Rule.Needs(var key, var others) ->
                    names(List.of(key)) + " needs " + names(others) + ".";
            case Rule.OnlyWith(var key, var others) ->
                    names(List.of(key)) + " only beside " + names(others) + ".";
        };
    }

    private static String names(List<Key<?>> keys) {
        return keys.stream().map(k -> "`" + k.name() + "`").collect(Collectors.joining(", "));
    }

    private static String title(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    /** A bar would end the cell. */
    private static String cell(String text) {
        return text.replace("|", "\\|");
    }
}
