package liftwright.flight;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.rig.Rig;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/** The rigs and profiles of the examples. */
public final class Examples {

    private static final Path HERE = Path.of("..", "examples");

    private Examples() {}

    public static Rig rig(String name) {
        try {
            return RigReading.read(
                            "rig.yaml", RigFiles.read(HERE.resolve(name).resolve("rig.yaml")))
                    .rig()
                    .orElseThrow();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String profileText(String example, String name) {
        try {
            return Files.readString(
                    HERE.resolve(example).resolve("profiles").resolve(name + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Profile profile(Rig rig, String text) {
        ProfileReading reading =
                ProfileReading.read(
                        "profile.yaml",
                        text.getBytes(java.nio.charset.StandardCharsets.UTF_8),
                        rig);
        return reading.profile()
                .orElseThrow(() -> new IllegalArgumentException(reading.problems().toString()));
    }
}
