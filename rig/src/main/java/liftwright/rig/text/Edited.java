package liftwright.rig.text;

import liftwright.rig.Declaration;

/** What came of a change to a declaration. */
public sealed interface Edited {

    record Done(Declaration declaration) implements Edited {}

    /**
     * @param reason a sentence for the one who asked
     */
    record Refused(String reason) implements Edited {}
}
