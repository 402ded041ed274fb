package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.json.JsonMapper;

/** Names from a file are a stranger's: on no way out do they act on a terminal. */
class HostileNamesTest {

    private static final String HOVER = "hover: 60 s";
    private static final String CAPACITY = "capacity: 4.84 Ah";

    @TempDir private Path folder;

    static Stream<String> names() {
        return Stream.of(
                "\u001b[2J\u001b[31mgone",
                "\u009b31mold terminals",
                "\rmet: lift holds",
                "two\nlines",
                "\u202egnp.gir",
                "\u2066isolated",
                "zero\u200bwidth",
                "bell\u0007",
                "\ufefffeff",
                "a".repeat(3000),
                "Z" + "\u0301".repeat(400),
                "<script>alert(1)</script>",
                "${jndi:ldap://x} %s %n {0}",
                "\"}],\"verdict\":{\"outcome\":\"met\"",
                "\ud83d\ude81 \u5c71\u9e61",
                "=cmd|' /C calc'!A0");
    }

    @ParameterizedTest
    @MethodSource("names")
    void inTheFile(String name) throws IOException {
        String rig = Files.readString(Shell.EXAMPLES.resolve("measured/rig.yaml"));
        String hostile =
                rig.replaceFirst("(?m)^rig: .*$", "rig: " + Matcher.quoteReplacement(quoted(name)));
        assertThat(hostile).isNotEqualTo(rig);
        // A short flight on small cells: no remedy is searched for and nothing flies for an hour,
        // which would take
        // most of the time and has no more doors.
        assertThat(hostile).contains(HOVER, CAPACITY);
        hostile = hostile.replace(HOVER, "hover: 5 s").replace(CAPACITY, "capacity: 0.1 Ah");
        Files.writeString(folder.resolve("rig.yaml"), hostile);
        everyWayOut(".");
    }

    @ParameterizedTest
    @MethodSource("names")
    void onTheCommandLine(String name) {
        for (Shell shell : List.of(new Shell(folder), new Shell(folder).ascii())) {
            for (String verb : List.of("check", "review")) {
                var ran = shell.run(verb, name);
                assertThat(ran.code()).isEqualTo(2);
                harmless(ran.err(), !shell.utf8());
            }
            harmless(shell.run(name).err(), !shell.utf8());
        }
    }

    private void everyWayOut(String file) {
        for (Shell shell : List.of(new Shell(folder), new Shell(folder).ascii())) {
            for (String verb : List.of("check", "review")) {
                var ran = shell.run(verb, file);
                assertThat(ran.code()).isIn(0, 1, 2);
                harmless(ran.out(), !shell.utf8());
                harmless(ran.err(), !shell.utf8());
                if (!shell.utf8()) {
                    continue; // JSON is the same on every terminal
                }
                var json = shell.run(verb, file, "--json");
                harmless(json.out(), false);
                // Every question of a review has a line of its own; problems have one.
                boolean answered = verb.equals("review") && json.code() != 2;
                assertThat(json.lines()).hasSize(answered ? Grammar.QUESTIONS.size() : 1);
                for (String line : json.lines()) {
                    JsonMapper.builder().build().readTree(line);
                }
            }
        }
    }

    private static void harmless(String text, boolean ascii) {
        assertThat(
                        text.codePoints()
                                .filter(c -> !harmless(c, ascii))
                                .mapToObj(Integer::toHexString))
                .as(text)
                .isEmpty();
        assertThat(text.lines().filter(line -> !line.startsWith("{")))
                .allMatch(
                        line ->
                                line.codePoints()
                                                .filter(
                                                        c ->
                                                                Character.getType(c)
                                                                        != Character
                                                                                .NON_SPACING_MARK)
                                                .count()
                                        <= 100);
    }

    private static boolean harmless(int c, boolean ascii) {
        if (c == '\n') {
            return true;
        }
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    false;
            default -> !ascii || c < 0x7f;
        };
    }

    /** As YAML: whatever is not plain ASCII by its code. */
    private static String quoted(String name) {
        var out = new StringBuilder("\"");
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if ((c >= ' ' && c < 0x7f) || Character.isSurrogate(c)) {
                out.append(c);
            } else {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            }
        }
        return out.append('"').toString();
    }
}
