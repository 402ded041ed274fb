package liftwright.rig.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.rig.Problem;
import liftwright.testkit.Seeded;
import liftwright.testkit.Slips;
import org.junit.jupiter.api.Test;

/**
 * Every slip of a single token in every example gives a rig or located problems. A plain build
 * tries a sample of them, a deep run all.
 */
class MutationTest {

    private static final List<String> EXAMPLES =
            List.of("mudlark", "curlew", "sandpiper", "measured");

    private static String text(String example) {
        try {
            return Files.readString(Path.of("..", "examples", example, "rig.yaml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void everySlipGivesARigOrLocatedProblems() {
        var slips = EXAMPLES.stream().map(MutationTest::text).map(Slips::new).toList();
        if (Seeded.deep()) {
            for (int e = 0; e < slips.size(); e++) {
                for (int i = 0; i < slips.get(e).tokens(); i++) {
                    for (int way = 0; way < Slips.WAYS; way++) {
                        check(EXAMPLES.get(e), slips.get(e), i, way);
                    }
                }
            }
            return;
        }
        Seeded.check(
                1000,
                random -> {
                    int e = random.nextInt(slips.size());
                    int i = random.nextInt(slips.get(e).tokens());
                    // half of them with junk
                    int way =
                            random.nextBoolean()
                                    ? random.nextInt(Slips.PLAIN)
                                    : random.nextInt(Slips.PLAIN, Slips.WAYS);
                    check(EXAMPLES.get(e), slips.get(e), i, way);
                });
    }

    private static void check(String example, Slips slips, int token, int way) {
        String text = slips.slip(token, way);
        String change = example + ": " + slips.words(token, way);
        RigReading reading;
        try {
            reading = RigReading.read("rig.yaml", text.getBytes(UTF_8));
        } catch (RuntimeException e) {
            throw new AssertionError(change, e);
        }
        String what = change + " " + reading.problems();
        boolean wrong = reading.problems().stream().anyMatch(p -> p.code().isError());
        assertThat(reading.rig().isPresent()).as(what).isEqualTo(!wrong);
        String[] lines = text.split("\r\n|\r|\n", -1);
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
