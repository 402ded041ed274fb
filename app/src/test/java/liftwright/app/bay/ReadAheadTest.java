package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is done before the page asks is not noticed, whatever the file holds. */
@Timeout(60)
class ReadAheadTest {

    @TempDir private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {OpenBay.RIG, "liftwright: 1\nrig: [", "", "a: &a [*a]\n"})
    void nothingIsTold(String text) throws IOException {
        Files.writeString(folder.resolve("rig.yaml"), text);
        assertThat(faultsOf("rig.yaml")).isEmpty();
        assertThat(folder.resolve("rig.yaml")).hasContent(text);
    }

    @Test
    void aRigThatIsGoneByThenIsNotMissed() throws IOException {
        assertThat(faultsOf("gone.yaml")).isEmpty();
    }

    @Test
    void aWholeRigIsReadWithoutAWord() throws IOException {
        Path example = Path.of("..", "examples", "sandpiper");
        try (var files = Files.list(example)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        String before = Files.readString(folder.resolve("rig.yaml"));
        assertThat(faultsOf("rig.yaml")).isEmpty();
        assertThat(folder.resolve("rig.yaml")).hasContent(before);
    }

    /** Mistakes told from its beginning to the end of the server. */
    private List<Throwable> faultsOf(String rig) throws IOException {
        var faults = new CopyOnWriteArrayList<Throwable>();
        var bay = new Bay(new OpenedFolder(folder), "9.9.9", Optional.of(rig), faults::add);
        bay.atTheEnd(bay.drafts()::close);
        new ReadAhead(bay).start();
        bay.end();
        return faults;
    }
}
