package liftwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.YamlText;

/** Starts from the example rigs and mutates them towards code that was not reached yet. */
class RigFileFuzzTest {

    @FuzzTest(maxDuration = "2m")
    void anyBytesAreReadOrGiveProblemsInTheirText(byte[] bytes) {
        var reading = RigReading.read("fuzzed.yaml", bytes);
        long lines = YamlText.read("fuzzed.yaml", bytes).text().lines().count() + 1;
        boolean errors = reading.problems().stream().anyMatch(p -> p.code().isError());
        assertThat(reading.rig().isPresent()).isEqualTo(!errors);
        for (var problem : reading.problems()) {
            assertThat(problem.at().line()).isBetween(1, (int) lines);
            assertThat(problem.at().column()).isPositive();
        }
    }
}
