package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import liftwright.rig.Problem;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * Every slip of a single token in every example gives a rig or located problems. A plain build
 * tries a sample of them, a deep run all.
 */
class MutationTest {

    private static final List<String> EXAMPLES =
            List.of("mudlark", "curlew", "sandpiper", "measured");

    private static final Pattern TOKEN =
            Pattern.compile("\\R *|[\\p{L}\\p{N}.°²·µΩ√/+−%-]+|[^\\s]");

    private static final List<String> JUNK =
            List.of(
                    "",
                    "@",
                    "{",
                    "]",
                    ": ",
                    "- ",
                    "\"",
                    "\t",
                    "#",
                    "|",
                    "99999 kg",
                    "\u0000",
                    "\uFEFF",
                    "\u202E",
                    "&a",
                    "zz");

    private record Token(int from, int to) {}

    private record Mutant(String example, String change, String text) {}

    private static String text(String example) {
        try {
            return Files.readString(Path.of("..", "examples", example, "rig.yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Token> tokens(String text) {
        var tokens = new ArrayList<Token>();
        var matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(new Token(matcher.start(), matcher.end()));
        }
        return tokens;
    }

    private static String replaced(String text, int from, int to, String by) {
        return text.substring(0, from) + by + text.substring(to);
    }

    private static Mutant mutant(
            String example, String text, List<Token> tokens, int index, int way) {
        var token = tokens.get(index);
        String own = text.substring(token.from(), token.to());
        String change =
                switch (way) {
                    case 0 -> replaced(text, token.from(), token.to(), "");
                    case 1 -> replaced(text, token.to(), token.to(), " " + own);
                    case 2 -> {
                        if (index + 1 == tokens.size()) {
                            yield text;
                        }
                        var next = tokens.get(index + 1);
                        yield replaced(
                                text,
                                token.from(),
                                next.to(),
                                text.substring(next.from(), next.to())
                                        + text.substring(token.to(), next.from())
                                        + own);
                    }
                    default -> replaced(text, token.from(), token.to(), JUNK.get(way - 3));
                };
        return new Mutant(example, own + " at " + token.from() + " way " + way, change);
    }

    @Test
    void everySlipGivesARigOrLocatedProblems() {
        int ways = 3 + JUNK.size();
        var texts = EXAMPLES.stream().map(MutationTest::text).toList();
        var tokens = texts.stream().map(MutationTest::tokens).toList();
        if (Seeded.deep()) {
            for (int e = 0; e < texts.size(); e++) {
                for (int i = 0; i < tokens.get(e).size(); i++) {
                    for (int way = 0; way < ways; way++) {
                        check(mutant(EXAMPLES.get(e), texts.get(e), tokens.get(e), i, way));
                    }
                }
            }
            return;
        }
        Seeded.check(
                1000,
                random -> {
                    int e = random.nextInt(texts.size());
                    int i = random.nextInt(tokens.get(e).size());
                    // half of them with junk
                    int way = random.nextBoolean() ? random.nextInt(3) : random.nextInt(3, ways);
                    check(mutant(EXAMPLES.get(e), texts.get(e), tokens.get(e), i, way));
                });
    }

    private static void check(Mutant mutant) {
        RigReading reading;
        try {
            reading = RigReading.read("rig.yaml", mutant.text().getBytes(UTF_8));
        } catch (RuntimeException e) {
            throw new AssertionError(mutant.example() + ": " + mutant.change(), e);
        }
        String what = mutant.example() + ": " + mutant.change() + " " + reading.problems();
        boolean wrong = reading.problems().stream().anyMatch(p -> p.code().isError());
        assertThat(reading.rig().isPresent()).as(what).isEqualTo(!wrong);
        String[] lines = mutant.text().split("\r\n|\r|\n", -1);
        for (Problem problem : reading.problems()) {
            var at = problem.at();
            assertThat(at.line()).as(what).isBetween(1, lines.length);
            String line = lines[at.line() - 1];
            assertThat(at.column())
                    .as(what)
                    .isBetween(1, line.codePointCount(0, line.length()) + 1);
            assertThat(problem.found()).as(what).isNotBlank();
        }
    }
}
