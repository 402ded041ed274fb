package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.rig.Change;
import liftwright.rig.Declaration;
import liftwright.rig.Rig;
import liftwright.rig.shape.Binder;
import liftwright.rig.text.Edited;
import liftwright.rig.text.Edits;

/** A rig with changes, made through its declaration, as the file would read. */
final class Revised {

    private Revised() {}

    /** Empty when the changed declaration is no rig. */
    static Optional<Rig> with(Rig rig, List<Change> changes) {
        Declaration declaration = rig.declaration();
        for (Change change : changes) {
            switch (Edits.apply(declaration, change)) {
                case Edited.Done(var changed) -> declaration = changed;
                case Edited.Refused _ -> {
                    return Optional.empty();
                }
            }
        }
        return Binder.bind(declaration, rig.tables())
                .rig()
                .map(changed -> changed.with(rig.corrections()));
    }
}
