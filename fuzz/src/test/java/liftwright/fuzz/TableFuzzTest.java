package liftwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;

/** Tables beside a rig file, which a stranger may have written. */
class TableFuzzTest {

    @FuzzTest(maxDuration = "1m")
    void anyBytesAreATableOrGiveProblemsInTheirText(byte[] bytes) {
        for (TableReading<?> reading :
                List.of(
                        TableReader.bench("t.csv", bytes),
                        TableReader.cellTest("t.csv", bytes),
                        TableReader.trace("t.csv", bytes, List.of("back", "pods")))) {
            if (reading instanceof TableReading.Broken<?>(var problems)) {
                assertThat(problems).isNotEmpty();
                for (var problem : problems) {
                    assertThat(problem.at().line()).isBetween(1, bytes.length + 1);
                    assertThat(problem.at().column()).isBetween(1, bytes.length + 1);
                }
            }
        }
    }
}
