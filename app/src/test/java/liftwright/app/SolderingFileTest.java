package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The soldering list as a file of the user's. */
class SolderingFileTest {

    @TempDir private Path folder;

    @Test
    void itIsWrittenOnceAndNeverOverAnother() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("sandpiper/rig.yaml"), folder.resolve("rig.yaml"));
        String[] asked = {"review", "heat", "rig.yaml", "--soldering", "list.csv"};
        var first = new Shell(folder).run(asked);
        assertThat(first.code()).as(first.err()).isBetween(0, 1);
        assertThat(first.err()).contains("wrote list.csv");
        List<String> lines = Files.readAllLines(folder.resolve("list.csv"));
        // Four feeds of a lug, a fuse and a wire each, and the head.
        assertThat(lines).hasSize(13);
        assertThat(lines.getFirst()).startsWith("\ufeffstep,part").contains("cut to [m]", "[°C]");
        assertThat(lines).anyMatch(line -> line.contains("feed.p.1.trunk.fuse"));
        byte[] written = Files.readAllBytes(folder.resolve("list.csv"));

        var second = new Shell(folder).run(asked);
        assertThat(second.code()).isEqualTo(2);
        assertThat(second.err()).contains("list.csv", "not overwritten");
        assertThat(Files.readAllBytes(folder.resolve("list.csv"))).isEqualTo(written);
    }

    @Test
    void itBelongsToHeat() {
        var asked = new Shell(folder).run("review", "lift", "rig.yaml", "--soldering", "list.csv");
        assertThat(asked.code()).isEqualTo(2);
        assertThat(folder.resolve("list.csv")).doesNotExist();
    }
}
