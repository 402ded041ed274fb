package liftwright.review.measured;

import java.io.IOException;
import java.io.UncheckedIOException;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigFiles;
import liftwright.rig.shape.Read;
import liftwright.rig.shape.RigReader;
import liftwright.rig.text.RigText;

/** The rig whose figures come from open measured data. */
final class MeasuredRig {

    private MeasuredRig() {}

    static Rig read() {
        RigText text;
        try {
            text = RigText.read("rig.yaml", RigFiles.read(Points.FOLDER.resolve("rig.yaml")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!text.problems().isEmpty()) {
            throw new AssertionError(text.problems());
        }
        Read read = RigReader.read(text.fileName(), text.root().orElseThrow());
        if (read.problems().stream().map(Problem::code).anyMatch(Problem.Code::isError)) {
            throw new AssertionError(read.problems());
        }
        return read.rig().orElseThrow();
    }
}
