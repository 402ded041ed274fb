package liftwright.flight;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/** The rigs and profiles of the examples. */
public final class Examples {

    private static final Path HERE = Path.of("..", "examples");

    /** What gives Mudlark a flight computer of its own; with {@link #rig(String, String...)}. */
    public static final List<String> COMPUTER =
            List.of(
                    "  kind: shared throttle\n",
                    """
                      kind: flight computer
                      rate: 1 kHz
                      delay: 2 ms
                      sensors:
                        gyro: {count: 3, noise: 0.005 deg/s/√Hz, rate: 500 Hz, delay: 1 ms}
                        height: {count: 2}
                    """);

    private Examples() {}

    /**
     * @param changes by turns what stands in the file and what is to stand there
     */
    public static Rig rig(String name, String... changes) {
        try {
            String text = Files.readString(HERE.resolve(name).resolve("rig.yaml"));
            for (int k = 0; k < changes.length; k += 2) {
                assertThat(text).contains(changes[k]);
                text = text.replace(changes[k], changes[k + 1]);
            }
            return read(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rig that a text declares. */
    public static Rig read(String text) {
        RigReading reading = RigReading.read("rig.yaml", text.getBytes(StandardCharsets.UTF_8));
        return reading.rig()
                .orElseThrow(() -> new IllegalArgumentException(reading.problems().toString()));
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
                ProfileReading.read("profile.yaml", text.getBytes(StandardCharsets.UTF_8), rig);
        return reading.profile()
                .orElseThrow(() -> new IllegalArgumentException(reading.problems().toString()));
    }
}
