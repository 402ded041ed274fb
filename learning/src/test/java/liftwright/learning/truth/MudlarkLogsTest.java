package liftwright.learning.truth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The files of Mudlark's logbook are those that the simulator writes. */
class MudlarkLogsTest {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark");

    /** {@code -Dliftwright.write=true} writes them anew. */
    @Test
    void theFilesAreWhatTheSimulatorWrites() throws IOException {
        Path folder = MUDLARK.resolve("logs");
        var made = new MudlarkLogs(MUDLARK.resolve("rig.yaml")).files();
        assertThat(made).hasSizeGreaterThan(9);
        for (var file : made.entrySet()) {
            byte[] bytes = file.getValue().getBytes(StandardCharsets.UTF_8);
            assertThat(bytes.length).as(file.getKey()).isLessThan(150_000);
            if (Boolean.getBoolean("liftwright.write")) {
                Files.createDirectories(folder);
                Files.write(folder.resolve(file.getKey()), bytes);
            }
            assertThat(folder.resolve(file.getKey())).hasBinaryContent(bytes);
        }
    }
}
