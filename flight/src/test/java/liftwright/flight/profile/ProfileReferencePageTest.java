package liftwright.flight.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.flight.Examples;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** The page that is written from the table of keys is that of today's table. */
class ProfileReferencePageTest {

    @Test
    void theReferencePageIsUpToDate() throws IOException {
        Path page = Path.of("..", "docs", "reference", "profile-file.md");
        String text = ProfileReference.markdown();
        if (System.getProperty("liftwright.write") != null) {
            Files.writeString(page, text);
        }
        assertThat(Files.readString(page))
                .as("docs/reference/profile-file.md; write it anew with -Dliftwright.write")
                .isEqualTo(text);
    }

    @Test
    void theExamplesAreRead() throws IOException {
        int read = 0;
        for (String example : new String[] {"curlew", "mudlark"}) {
            Rig rig = Examples.rig(example);
            try (var files = Files.list(Path.of("..", "examples", example, "profiles"))) {
                for (Path file : files.toList()) {
                    ProfileReading reading =
                            ProfileReading.read(file.toString(), Files.readAllBytes(file), rig);
                    assertThat(reading.problems()).as("%s", file).isEmpty();
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThanOrEqualTo(4);
    }
}
