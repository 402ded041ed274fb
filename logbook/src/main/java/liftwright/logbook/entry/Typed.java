package liftwright.logbook.entry;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import liftwright.logbook.entry.PackSheet.Retire;
import liftwright.logbook.entry.TestEntry.Weather;
import liftwright.quantity.Quantity;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.Node;
import liftwright.rig.text.QuotedText;
import liftwright.rig.text.YamlText;

/**
 * Entries typed as words {@code key=value}: each becomes a line of a file, and is read as strictly.
 */
public final class Typed {

    /** As problems call what was typed; a word is a line. */
    private static final String NAME = "what was typed, word";

    private static final Set<String> OF_AN_INSPECTION =
            Set.of(
                    PartKeys.DATE.name(),
                    PartKeys.SERIAL.name(),
                    PartKeys.ACCEPTED.name(),
                    PartKeys.BY.name(),
                    PartKeys.NOTE.name());

    private static final Set<String> OF_A_NEW_PACK =
            Set.of(
                    PackKeys.SERIAL.name(),
                    PackKeys.NEW_RESISTANCE.name(),
                    PackKeys.NEW_CAPACITY.name(),
                    PackKeys.COEFFICIENT.name());

    /** How the keys of a rule of retirement are typed: {@code retire resistance=150 %}. */
    private static final String RETIRE = "retire ";

    private Typed() {}

    /** Air and wind: {@code air=9 °C}, {@code wind=2 m/s}. */
    public static EntryReading<Weather> weather(List<String> words) {
        return read(
                lines(words),
                "the weather",
                (root, problems) ->
                        TestKeys.WEATHER_SECTION
                                .read(root, Spot.top(root.span()), problems)
                                .map(TestBinder::weather));
    }

    /** Hours of work: {@code 3 h}. */
    public static EntryReading<Quantity> hours(String text) {
        return read(
                "hours: " + QuotedText.of(text) + "\n",
                "hours",
                (root, problems) ->
                        root instanceof Node.Entries map
                                ? map.value("hours")
                                        .flatMap(
                                                node ->
                                                        TestKeys.HOURS
                                                                .kind()
                                                                .read(
                                                                        node,
                                                                        Spot.top(node.span()),
                                                                        problems))
                                : Optional.empty());
    }

    /**
     * A sheet with one row: keys of the row, and of the sheet's head where it begins one.
     *
     * @param head what the sheet begins with besides what is typed
     */
    public static EntryReading<PackSheet> pack(PackSheet head, List<String> words) {
        var top = new ArrayList<String>();
        var retire = new ArrayList<String>();
        var row = new ArrayList<String>();
        for (String word : words) {
            String key = key(word);
            if (OF_A_NEW_PACK.contains(key)) {
                top.add(word);
            } else if (key.startsWith(RETIRE)) {
                retire.add(word.substring(RETIRE.length()));
            } else {
                row.add(word);
            }
        }
        var text = new StringBuilder("liftwright pack: 1\n");
        text.append("pack: ").append(QuotedText.of(head.pack())).append('\n');
        if (top.stream().noneMatch(word -> key(word).equals(PackKeys.COEFFICIENT.name()))) {
            text.append(PackKeys.COEFFICIENT.name())
                    .append(": ")
                    .append(Writing.kelvin(head.temperatureCoefficient()))
                    .append('\n');
        }
        if (!head.serial().isEmpty()
                && top.stream().noneMatch(word -> key(word).equals(PackKeys.SERIAL.name()))) {
            text.append("serial: ").append(QuotedText.of(head.serial())).append('\n');
        }
        text.append(lines(top));
        if (!retire.isEmpty()) {
            text.append(PackKeys.RETIRE.name()).append(":\n").append(indented(retire, "  "));
        }
        text.append("rows:\n").append(item(row));
        return read(
                text.toString(), "a row", (root, problems) -> new PackBinder(problems).read(root));
    }

    /** An inspection: its own keys, and what was measured as {@code mass=0.418 kg / 0.412 kg}. */
    public static EntryReading<PartSheet.Inspection> inspection(String part, List<String> words) {
        var own = new ArrayList<String>();
        var measured = new ArrayList<String>();
        for (String word : words) {
            (OF_AN_INSPECTION.contains(key(word)) ? own : measured).add(word);
        }
        var text = new StringBuilder("liftwright part: 1\n");
        text.append("part: ").append(QuotedText.of(part)).append("\ninspections:\n");
        text.append(item(own));
        if (!measured.isEmpty()) {
            text.append("    measured:\n");
            for (String word : measured) {
                text.append("      - what: ").append(QuotedText.of(key(word))).append('\n');
                String[] sides = value(word).split(" / ", 2);
                text.append("        found: ").append(QuotedText.of(sides[0].strip())).append('\n');
                if (sides.length > 1) {
                    text.append("        declared: ");
                    text.append(QuotedText.of(sides[1].strip())).append('\n');
                }
            }
        }
        EntryReading<PartSheet> sheet =
                read(
                        text.toString(),
                        "an inspection",
                        (root, problems) -> new PartBinder(problems).read(root));
        return new EntryReading<>(
                sheet.entry().map(one -> one.inspections().getLast()), sheet.problems());
    }

    /** A sheet that begins, before anything is typed. */
    public static PackSheet begun(String pack, String serial, Quantity temperatureCoefficient) {
        return new PackSheet(
                pack,
                serial,
                temperatureCoefficient,
                Optional.empty(),
                Optional.empty(),
                Retire.USUAL,
                List.of());
    }

    /** With a day where none was typed. */
    public static List<String> on(LocalDate day, List<String> words) {
        return with("date", day.toString(), words);
    }

    /** With a value under a key where none was typed and there is one. */
    public static List<String> with(String key, String value, List<String> words) {
        if (value.isEmpty() || words.stream().anyMatch(word -> key(word).equals(key))) {
            return words;
        }
        var more = new ArrayList<>(words);
        more.add(key + "=" + value);
        return more;
    }

    private static String key(String word) {
        int is = word.indexOf('=');
        return (is < 0 ? word : word.substring(0, is)).strip();
    }

    private static String value(String word) {
        int is = word.indexOf('=');
        return is < 0 ? "" : word.substring(is + 1).strip();
    }

    private static String lines(List<String> words) {
        return indented(words, "");
    }

    private static String indented(List<String> words, String indent) {
        var text = new StringBuilder();
        for (String word : words) {
            text.append(indent).append(QuotedText.of(key(word))).append(": ");
            text.append(QuotedText.of(value(word))).append('\n');
        }
        return text.toString();
    }

    private static String item(List<String> words) {
        String text = indented(words, "    ");
        return text.isEmpty() ? "  - {}\n" : "  - " + text.substring(4);
    }

    private static <T> EntryReading<T> read(
            String text, String what, BiFunction<Node, Problems, Optional<T>> binder) {
        var read = YamlText.read(NAME, text.getBytes(StandardCharsets.UTF_8));
        if (!read.problems().isEmpty() || read.root().isEmpty()) {
            return new EntryReading<>(Optional.empty(), read.problems());
        }
        var problems = new Problems(what);
        Optional<T> made = binder.apply(read.root().get(), problems);
        return new EntryReading<>(
                problems.hasErrors() ? Optional.empty() : made, problems.inOrder());
    }
}
