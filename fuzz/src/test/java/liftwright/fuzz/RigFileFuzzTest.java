package liftwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import liftwright.rig.text.YamlText;

/** Starts from the example rigs and mutates them towards code that was not reached yet. */
class RigFileFuzzTest {

    @FuzzTest(maxDuration = "2m")
    void anyBytesAreReadOrGiveProblemsInTheirText(byte[] bytes) {
        var reading = YamlText.read("fuzzed.yaml", bytes);
        long lines = reading.text().lines().count() + 1;
        for (var problem : reading.problems()) {
            assertThat(problem.at().line()).isBetween(1, (int) lines);
            assertThat(problem.at().column()).isPositive();
        }
    }
}
