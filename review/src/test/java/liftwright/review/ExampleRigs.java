package liftwright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/** Example rigs with pieces of their text replaced. */
final class ExampleRigs {

    private ExampleRigs() {}

    /**
     * @param replacements in pairs: what stands there, what shall
     */
    static Rig edited(String example, String... replacements) {
        String text;
        try {
            text = Files.readString(Path.of("..", "examples", example, "rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (int k = 0; k < replacements.length; k += 2) {
            assertThat(text).contains(replacements[k]);
            text = text.replace(replacements[k], replacements[k + 1]);
        }
        return RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8))
                .rig()
                .orElseThrow();
    }
}
