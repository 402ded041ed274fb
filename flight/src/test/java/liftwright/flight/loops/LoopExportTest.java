package liftwright.flight.loops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What is exported says the same as the loops, with units, and shares out what is wished. */
class LoopExportTest {

    private static LoopDesign.Granted any() {
        LoopDesign.Granted[] found = new LoopDesign.Granted[1];
        Seeded.check(
                20,
                random -> {
                    if (LoopDesign.of(RandomCraft.able(random))
                            instanceof LoopDesign.Granted granted) {
                        found[0] = granted;
                    }
                });
        assertThat(found[0]).isNotNull();
        return found[0];
    }

    @Test
    void everyLoopStandsOnALineOfItsOwn() {
        LoopDesign.Granted granted = any();
        List<String> lines = new LoopExport(granted).gainsCsv().lines().toList();
        assertThat(lines).hasSize(granted.loops().size() + 1);
        assertThat(lines.getFirst()).contains("gain (1/s)").contains("phase margin (rad)");
        for (int k = 0; k < granted.loops().size(); k++) {
            String[] cells = lines.get(k + 1).split(",", -1);
            Loop loop = granted.loops().get(k);
            assertThat(cells[0]).isEqualTo(loop.axis().words());
            assertThat(Double.parseDouble(cells[2]))
                    .isCloseTo(loop.gainPerS(), within(1e-8 * loop.gainPerS()));
        }
    }

    /** The table's own numbers: shares times rows give one wish and nothing else. */
    @Test
    void theMatrixGivesWhatItIsAsked() {
        List<String> lines = new LoopExport(any()).matrixCsv().lines().toList();
        double[][] sum = new double[4][4];
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j < 4; j++) {
                    sum[i][j] +=
                            Double.parseDouble(cells[1 + i]) * Double.parseDouble(cells[5 + j]);
                }
            }
        }
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 4; j++) {
                double size = Math.max(Math.abs(sum[i][i]), 1);
                assertThat(sum[i][j]).isCloseTo(i == j ? 1 : 0, within(1e-5 * size));
            }
        }
    }

    @Test
    void theJsonHasUnitsAndIsWhole() {
        LoopDesign.Granted granted = any();
        String json = new LoopExport(granted).json();
        assertThat(json).contains("\"units\"").contains("\"inertia\"").doesNotContain("NaN");
        assertThat(json).doesNotContain("Infinity");
        assertThat(json.chars().filter(c -> c == '{').count())
                .isEqualTo(json.chars().filter(c -> c == '}').count());
        assertThat(json.split("\"axis\":", -1)).hasSize(granted.loops().size() + 1);
    }
}
