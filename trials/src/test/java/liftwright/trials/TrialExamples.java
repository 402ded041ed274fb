package liftwright.trials;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/** The rigs of examples/. */
public final class TrialExamples {

    /** Those whose programmes are looked at. */
    public static final List<String> NAMES = List.of("mudlark", "curlew", "sandpiper");

    private TrialExamples() {}

    /** An example with its file. */
    public static RigReading reading(String name) {
        Path folder = Path.of("..", "examples", name);
        try {
            return RigReading.read(
                    "rig.yaml", RigFiles.read(folder.resolve("rig.yaml")), new Folder(folder));
        } catch (IOException e) {
            throw new AssertionError("no example " + name, e);
        }
    }

    /** An example. */
    public static Rig rig(String name) {
        var reading = reading(name);
        return reading.rig().orElseThrow(() -> new AssertionError(reading.problems()));
    }
}
