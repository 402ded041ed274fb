package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A rig of which a little more is asked than it is known to give, so that there is something to
 * keep.
 */
class KeepTest {

    @TempDir private Path folder;
    private Path file;
    private List<String> before;

    @BeforeEach
    void askMoreOfTheMeasuredRig() throws IOException {
        file = folder.resolve("rig.yaml");
        String rig = Files.readString(Shell.EXAMPLES.resolve("measured/rig.yaml"));
        String asked = rig.replace("thrust to weight: 1.05", "thrust to weight: 1.20");
        assertThat(asked).isNotEqualTo(rig);
        Files.writeString(file, asked);
        before = Files.readAllLines(file);
    }

    @Test
    void aKeptRemedyIsInTheFileAndTheFileIsAskedAgain() throws IOException {
        Files.setPosixFilePermissions(
                file, Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE));
        var kept = shell().run("review", "lift", ".", "--keep", clearing());
        assertThat(kept.err()).contains("wrote remedy");
        assertThat(Files.readAllLines(file)).isNotEqualTo(before);
        assertThat(comments(Files.readAllLines(file))).containsAll(comments(before));
        assertThat(Files.getPosixFilePermissions(file)).hasSize(2);
        assertThat(kept.lines().getFirst()).startsWith("met");
        assertThat(shell().run("review", "lift", ".").out()).isEqualTo(kept.out());
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aRemedyThatIsNotThereWritesNothing() throws IOException {
        var ran = shell().run("review", "lift", ".", "--keep", "99");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("nothing was written");
        assertThat(Files.readAllLines(file)).isEqualTo(before);
    }

    @Test
    void aRefusedRemedyWritesNothing() throws IOException {
        String refused = numberOf("refused");
        var ran = shell().run("review", "lift", ".", "--keep", refused);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("would break another limit");
        assertThat(Files.readAllLines(file)).isEqualTo(before);
    }

    private String clearing() {
        return numberOf("clears it");
    }

    private String numberOf(String effect) {
        String out = shell().run("review", "lift", ".").out().replaceAll("\\s+", " ");
        var match = Pattern.compile("\\[(\\d+)\\] [^\\[]*?" + effect).matcher(out);
        assertThat(match.find()).as("a remedy that %s in %s", effect, out).isTrue();
        return match.group(1);
    }

    private static List<String> comments(List<String> lines) {
        return lines.stream()
                .filter(line -> line.contains("#"))
                .map(line -> line.substring(line.indexOf('#')))
                .toList();
    }

    private Shell shell() {
        return new Shell(folder);
    }
}
