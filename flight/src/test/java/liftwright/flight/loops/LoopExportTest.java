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
        assertThat(lines.getFirst())
                .contains("gain (1/s)")
                .contains("phase margin of the rigid body (rad)");
        for (int k = 0; k < granted.loops().size(); k++) {
            String[] cells = lines.get(k + 1).split(",", -1);
            Loop loop = granted.loops().get(k);
            assertThat(cells[0]).isEqualTo(loop.axis().words());
            assertThat(Double.parseDouble(cells[2]))
                    .isCloseTo(loop.gainPerS(), within(1e-8 * loop.gainPerS()));
        }
    }

    /**
     * A worn craft: what the harness leaves of each loop stands under its own head, and in JSON.
     */
    @Test
    void distancesFromSwingingInTheHarnessAreExported() {
        int[] felt = {0, 0};
        Seeded.check(
                12,
                random -> {
                    Craft worn = RandomCraft.able(random).with(new Flexible(3, 0.1, 0.3, 0.5, 0.7));
                    if (!(LoopDesign.of(worn) instanceof LoopDesign.Granted granted)) {
                        return;
                    }
                    LoopExport export = new LoopExport(granted);
                    List<String> lines = export.gainsCsv().lines().toList();
                    List<String> head = List.of(lines.getFirst().split(",", -1));
                    int distance = head.indexOf("least distance from −1 with the harness (1)");
                    int hz = head.indexOf("frequency of the harness at it (rad/s)");
                    int settles = head.indexOf("settling time of the rigid body (s)");
                    String[] json = export.json().split("\"axis\":", -1);
                    for (int k = 0; k < granted.loops().size(); k++) {
                        Loop loop = granted.loops().get(k);
                        String[] cells = lines.get(k + 1).split(",", head.size());
                        assertThat(cells).hasSize(head.size());
                        assertThat(cells[settles]).isNotEmpty();
                        if (loop.harness().isEmpty()) {
                            felt[0]++;
                            assertThat(cells[distance]).isEqualTo("not felt");
                            assertThat(json[k + 1]).contains("\"harness distance\": \"not felt\"");
                            continue;
                        }
                        felt[1]++;
                        double told = loop.harness().get().distance();
                        assertThat(Double.parseDouble(cells[distance]))
                                .isCloseTo(told, within(1e-8));
                        // From practice's 3 to 8 Hz, and far enough from -1 to be granted.
                        assertThat(told).isBetween(0.49, 2.0);
                        assertThat(Double.parseDouble(cells[hz]) / (2 * Math.PI))
                                .isBetween(2.9, 8.1);
                        assertThat(json[k + 1])
                                .contains("\"harness distance\": " + cells[distance]);
                    }
                });
        assertThat(felt[0]).isPositive();
        assertThat(felt[1]).isGreaterThan(10);
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
