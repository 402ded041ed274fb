package liftwright.plant.move;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.Problem;
import liftwright.rig.file.RigReading;

/** Changes made one after the other, each upon the file as the ones before left it. */
final class Steps {

    private final List<Change> done = new ArrayList<>();
    private Standing now;

    Steps(Standing first) {
        this.now = first;
    }

    Standing now() {
        return now;
    }

    List<Change> done() {
        return List.copyOf(done);
    }

    /**
     * Makes changes.
     *
     * @throws StaysException if the file cannot be changed so, or would say what cannot be
     */
    void make(List<Change> changes) throws StaysException {
        if (changes.isEmpty()) {
            return;
        }
        switch (now.reading().with(changes)) {
            case RigReading.Edit.Refused(var _, var reason) -> throw new StaysException(reason);
            case RigReading.Edit.Changed(var reading, var _) -> {
                if (reading.rig().isEmpty()) {
                    throw new StaysException(reason(reading));
                }
                now = new Standing(reading, reading.rig().get());
                done.addAll(changes);
            }
        }
    }

    private static String reason(RigReading reading) {
        Problem first =
                reading.problems().stream()
                        .filter(p -> p.code().isError())
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("no rig and nothing wrong"));
        return "There the file would say "
                + first.found()
                + " ("
                + first.at().path()
                + "). "
                + first.advice();
    }
}
