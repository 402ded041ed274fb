package liftwright.rig.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A draft of Mudlark in a folder of its own, and another program that writes there. */
abstract class DraftInFolder {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark", "rig.yaml");

    @TempDir Path folder;
    Path file;
    byte[] first;

    @BeforeEach
    void aRigInAFolder() throws IOException {
        first = Files.readAllBytes(MUDLARK);
        file = Files.write(folder.resolve("rig.yaml"), first);
    }

    Draft open() throws IOException {
        return Draft.open(folder, "rig.yaml");
    }

    static List<Change> set(String path, String value) {
        return List.of(new Change.Set(RigPath.parse(path), value));
    }

    static DraftView done(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
        return outcome.view();
    }

    static String text(DraftView view) {
        return view.reading().text().text();
    }

    void elsewhere(String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }
}
