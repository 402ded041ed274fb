package liftwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import liftwright.quantity.UnitSystem;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A terminal shows what a reader can take in, and says what it leaves out. */
class ProblemReportTest {

    private static final Look LOOK = new Look(80, false, false, UnitSystem.SI);

    @ParameterizedTest
    @CsvSource({"49, 49, 0", "50, 50, 0", "51, 50, 1", "24000, 50, 23950"})
    void atMostFiftyProblemsAreShownAndTheRestCounted(int problems, int shown, int more) {
        String text = ProblemReport.write("rig.yaml", "", many(Code.UNKNOWN_KEY, problems), LOOK);
        assertThat(text.lines().filter(line -> line.startsWith("rig.yaml:"))).hasSize(shown);
        assertThat(text).contains("rig: " + problems + " problems");
        assertThat(text.contains("and " + more + " more")).isEqualTo(more > 0);
    }

    @Test
    void atMostFiftyNotesAreShownAndTheRestCounted() {
        List<Problem> notes = many(Code.USED_BY_NO_QUESTION_YET, 60);
        String text = ProblemReport.write("rig.yaml", "Mudlark", notes, LOOK);
        assertThat(text.lines().filter(line -> line.strip().startsWith("line "))).hasSize(50);
        assertThat(text).contains("and 10 more");
    }

    @Test
    void aProblemOfATableNamesTheTable() {
        var place = new Problem.Place("mine/bench.csv", 3, 12, "thrust");
        var problem = new Problem(Code.OUT_OF_RANGE, place, "“-3 N”", "a force", "");
        assertThat(ProblemReport.write("mine/rig.yaml", "", List.of(problem), LOOK))
                .contains("mine/bench.csv:3:12: thrust");
    }

    private static List<Problem> many(Code code, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(
                        line ->
                                new Problem(
                                        code,
                                        new Problem.Place("rig.yaml", line, 1, "key " + line),
                                        "the key “x”",
                                        "a key",
                                        ""))
                .toList();
    }
}
