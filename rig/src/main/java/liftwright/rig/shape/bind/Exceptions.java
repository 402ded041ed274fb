package liftwright.rig.shape.bind;

import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.FanKeys;

/** What differs for single parts of a group, and whether every difference found its part. */
final class Exceptions {

    private final Ledger ledger;
    private final Map<String, Stated<Fields>> byId;
    private final Set<String> asked = new HashSet<>();

    Exceptions(Ledger ledger, Fields group) {
        this(ledger, group, FanKeys.EXCEPT);
    }

    Exceptions(Ledger ledger, Fields group, Key<Map<String, Stated<Fields>>> key) {
        this.ledger = ledger;
        this.byId = group.get(key).orElse(Map.of());
    }

    Optional<Fields> of(PartId id) {
        asked.add(id.text());
        return Optional.ofNullable(byId.get(id.text())).map(Stated::value);
    }

    /** Reports exceptions for parts that the group does not have. */
    void reportUnused() {
        byId.forEach(
                (id, fields) -> {
                    if (!asked.contains(id)) {
                        ledger.problems()
                                .add(
                                        Code.NO_SUCH_PART,
                                        fields.spot(),
                                        Problems.quote(id),
                                        "the id of a part of this group or its twin",
                                        Nearest.advice(id, asked));
                    }
                });
    }
}
