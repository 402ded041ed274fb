package liftwright.review.referee;

import java.nio.charset.StandardCharsets;
import java.util.List;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.RigText;

/** Drawn rigs as files. */
final class Written {

    private Written() {}

    static RigText text(String yaml) {
        return RigText.read("drawn.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    }

    static Rig rig(String yaml) {
        return rig(text(yaml));
    }

    static Rig rig(RigText text) {
        RigReading file = RigReading.of(text);
        return file.rig()
                .orElseThrow(() -> new AssertionError(file.problems() + "\n" + text.text()));
    }

    static RigText edited(RigText text, List<Change> changes) {
        return switch (text.with(changes)) {
            case RigText.Edit.Changed(var after, var _) -> after;
            case RigText.Edit.Refused(var change, var reason) ->
                    throw new AssertionError(change + " refused: " + reason + "\n" + text.text());
        };
    }
}
