package liftwright.trials.proof;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.table.KillLog.Signal;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A proof is written, read again as the same, and refused where a hand has spoilt it. */
class ProofTextTest {

    static final String DIGEST = "0123456789abcdef".repeat(4);

    private static final String GOOD =
            """
            liftwright kill proof: 1
            date: 2026-05-02
            rig: %s
            log: kills.csv
            log digest: %s
            read from: thrust
            limit: 500 ms
            paths:
              - path: remote
                presses: 3
                half: {from: 210 ms, to: 230 ms}
                tenth: {from: 310 ms, to: 360 ms}
                outcome: met
              - path: link loss
                presses: 0
                outcome: cannot be told
                reasons: [not pressed in this log]
            """
                    .formatted(DIGEST, DIGEST);

    private static ProofReading read(String text) {
        return ProofReading.read("p.yaml", text.getBytes(UTF_8));
    }

    @Test
    void aFileByHandIsRead() {
        KillProof proof = read(GOOD).proof().orElseThrow();
        assertThat(proof.date()).isEqualTo(LocalDate.of(2026, 5, 2));
        assertThat(proof.signal()).isEqualTo(Signal.THRUST);
        assertThat(proof.limitS()).isEqualTo(0.5);
        assertThat(proof.paths()).hasSize(2);
        assertThat(proof.paths().getFirst().tenth()).contains(new Span(0.31, 0.36));
        assertThat(proof.outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(proof.doubts(proof.date(), DIGEST))
                .containsExactly("link loss: not pressed in this log");
    }

    @Test
    void whatIsWrittenIsReadAsTheSame() {
        Seeded.check(
                200,
                random -> {
                    KillProof proof = draw(random, random.nextInt(0, 5));
                    ProofReading again = read(ProofText.write(proof));
                    assertThat(again.problems()).isEmpty();
                    assertThat(again.proof()).contains(proof);
                });
    }

    /** A proof of so many ways to stop, some of them not met. */
    static KillProof draw(RandomGenerator random, int paths) {
        List<PathProof> all = new ArrayList<>();
        for (int k = 0; k < paths; k++) {
            boolean pressed = random.nextInt(3) > 0;
            double half = random.nextDouble(0, 0.3);
            double tenth = half + random.nextDouble(0, 0.3);
            boolean met = pressed && tenth + 0.01 <= 0.5 && random.nextBoolean();
            all.add(
                    new PathProof(
                            "it's #" + k + ": \"path\"",
                            pressed ? random.nextInt(3, 9) : 0,
                            pressed ? Optional.of(new Span(half, half + 0.01)) : Optional.empty(),
                            pressed ? Optional.of(new Span(tenth, tenth + 0.01)) : Optional.empty(),
                            met
                                    ? Outcome.HOLDS
                                    : random.nextBoolean()
                                            ? Outcome.DOES_NOT_HOLD
                                            : Outcome.CANNOT_BE_TOLD,
                            met ? List.of() : List.of("line 3: it's – “odd” \\ {x}: [y]", "- b")));
        }
        Signal[] signals = Signal.values();
        return new KillProof(
                LocalDate.of(2026, 1, 1).plusDays(random.nextInt(400)),
                DIGEST,
                "kills: 'of' May.csv",
                DIGEST.substring(2) + "00",
                signals[random.nextInt(signals.length)],
                0.5,
                all);
    }

    /** Another day, another build or a way that does not hold, and it proves nothing. */
    @Test
    void itStandsOnItsDayForItsBuildAlone() {
        KillProof proof = read(GOOD.substring(0, GOOD.indexOf("  - path: link"))).proof().get();
        LocalDate day = proof.date();
        assertThat(proof.stands(day, DIGEST)).isTrue();
        assertThat(proof.stands(day.plusDays(1), DIGEST)).isFalse();
        assertThat(proof.stands(day.minusDays(1), DIGEST)).isFalse();
        assertThat(proof.stands(day, "0".repeat(64))).isFalse();
        assertThat(read(GOOD).proof().get().stands(day, DIGEST)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "proof: 1 | proof: ¦2 | OUT_OF_RANGE | liftwright kill proof",
                "2026-05-02 | ¦2 May 2026 | WRONG_KIND | date",
                "2026-05-02 | ¦2026-02-30 | WRONG_KIND | date",
                "date: 2026-05-02; | ¦ | MISSING_KEY | date",
                "rig: 0123 | rig: ¦x123 | WRONG_KIND | rig",
                "log digest: 0123 | log digest: ¦0 | WRONG_KIND | log digest",
                "from: thrust | from: ¦lift | UNKNOWN_WORD | read from",
                "limit: 500 ms | limit: ¦500 | WRONG_UNIT | limit",
                "limit: 500 ms | limit: ¦0 s | OUT_OF_RANGE | limit",
                "presses: 3 | presses: ¦-1 | OUT_OF_RANGE | paths/1/presses",
                "presses: 3 | presses: ¦0 | CONTRADICTION | paths/1/presses",
                "presses: 3 | presses: ¦many | WRONG_KIND | paths/1/presses",
                "{from: 310 ms, to: 360 ms} | ¦{from: 370 ms, to: 360 ms} | CONTRADICTION | paths/1/tenth",
                "{from: 310 ms, to: 360 ms} | ¦{from: 310 ms} | MISSING_KEY | paths/1/tenth/to",
                "{from: 310 ms, to: 360 ms} | ¦{from: 110 ms, to: 160 ms} | CONTRADICTION | paths/1/tenth",
                "limit: 500 ms | limit: 350 ms | CONTRADICTION | paths/1/outcome",
                "outcome: met | outcome: ¦fine | UNKNOWN_WORD | paths/1/outcome",
                "path: link loss | path: ¦remote | DUPLICATE_ID | paths/2/path",
                "presses: 0 | presses: ¦2 | CONTRADICTION | paths/2/presses",
                "log: kills.csv | log: kills.csv;¦logs: x | UNKNOWN_KEY | logs"
            })
    void whatIsWrongIsToldAtItsPlace(String right, String wrong, Code code, String path) {
        String from = right.replace(";", "\n");
        assertThat(GOOD).contains(from);
        int at = GOOD.indexOf(from);
        String marked =
                GOOD.substring(0, at)
                        + wrong.replace(";", "\n")
                        + GOOD.substring(at + from.length());
        ProofReading reading = read(marked.replace("¦", ""));
        assertThat(reading.proof()).isEmpty();
        Problem problem = reading.problems().getFirst();
        assertThat(problem.code()).as(reading.problems().toString()).isEqualTo(code);
        assertThat(problem.at().path()).isEqualTo(path);
        int mark = marked.indexOf('¦');
        if (mark >= 0 && code != Code.MISSING_KEY) {
            int line = (int) marked.substring(0, mark).lines().count();
            assertThat(problem.at().line())
                    .isEqualTo(marked.startsWith("\n", mark - 1) ? line + 1 : line);
        }
    }
}
