package liftwright.rig.draft;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Declaration;
import liftwright.rig.text.RigText;

/** The texts that edits may still be based on. */
final class Past {

    /** Older ones are forgotten: who edits on them has not looked for long. */
    private static final int MOST = 32;

    private final Map<String, RigText> byRevision = new LinkedHashMap<>();

    void remember(String revision, RigText text) {
        byRevision.remove(revision);
        byRevision.put(revision, text);
        if (byRevision.size() > MOST) {
            byRevision.remove(byRevision.keySet().iterator().next());
        }
    }

    /** What the text of that revision said; empty if it is forgotten or said nothing readable. */
    Optional<Declaration> declaration(String revision) {
        return Optional.ofNullable(byRevision.get(revision)).flatMap(RigText::declaration);
    }
}
