package liftwright.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import liftwright.rig.Rig;
import liftwright.rig.file.RigFiles;
import liftwright.rig.shape.RigReader;
import liftwright.rig.text.RigText;

/** The rigs that the kernels work on. */
final class Examples {

    private static final Path ROOT = Path.of(System.getProperty("liftwright.root", "."));

    private Examples() {}

    static byte[] bytes(String name) {
        try {
            return RigFiles.read(ROOT.resolve("examples").resolve(name).resolve("rig.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file beside the examples. */
    static Path at(String path) {
        return ROOT.resolve("examples").resolve(path);
    }

    /**
     * A rig of the file's text; a benchmark of a rig with problems would measure something else.
     */
    static Rig rig(byte[] bytes) {
        var text = RigText.read("rig.yaml", bytes);
        var read = RigReader.read("rig.yaml", text.root().orElseThrow());
        return read.rig().orElseThrow(() -> new IllegalStateException(read.problems().toString()));
    }

    /** Mudlark carrying so much more baggage that its file has 300 lines. */
    static byte[] threeHundredLines() {
        String text = new String(bytes("mudlark"), StandardCharsets.UTF_8);
        String heading = "other parts:\n";
        long missing = 300 - text.lines().count();
        var bags = new StringBuilder(heading);
        for (long i = 1; i <= missing; i++) {
            bags.append("  - {id: bag ")
                    .append(i)
                    .append(", mass: 0.02 kg ± 5 %, at: {mount: back}}\n");
        }
        String longer = text.replace(heading, bags);
        if (longer.lines().count() != 300) {
            throw new IllegalStateException("lines: " + longer.lines().count());
        }
        return longer.getBytes(StandardCharsets.UTF_8);
    }
}
