package liftwright.rig.shape.bind;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.rig.PartId;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;

/** Serial numbers, wherever they are written. */
final class Serials {

    private final Ledger ledger;
    private final Map<String, Stated<String>> byId = new HashMap<>();
    private final Set<String> asked = new HashSet<>();

    Serials(Ledger ledger) {
        this.ledger = ledger;
    }

    /** Adds a map of serial numbers by part. */
    void add(Map<String, Stated<String>> declared) {
        declared.forEach(this::put);
    }

    /** Adds those of a group: a map, or the number of its only part. */
    void add(String group, Stated<Either.Of<String, Map<String, Stated<String>>>> declared) {
        switch (declared.value()) {
            case Either.Of.One<String, Map<String, Stated<String>>>(var serial) ->
                    put(PartId.of(group, 1).text(), new Stated<>(declared.spot(), serial));
            case Either.Of.Other<String, Map<String, Stated<String>>>(var map) -> add(map);
        }
    }

    private void put(String id, Stated<String> serial) {
        Stated<String> before = byId.putIfAbsent(id, serial);
        if (before != null && !before.value().equals(serial.value())) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            serial.spot(),
                            Problems.quote(serial.value()),
                            "one serial number for " + Problems.quote(id),
                            "Elsewhere it is " + Problems.quote(before.value()) + ".");
        }
    }

    /** The serial number of a part, if one is declared. */
    Optional<String> of(PartId id) {
        asked.add(id.text());
        return Optional.ofNullable(byId.get(id.text())).map(Stated::value);
    }

    /** Notes the serial number that an exception gives. */
    Optional<String> given(PartId id, Stated<String> serial) {
        put(id.text(), serial);
        return of(id);
    }

    /** Reports serial numbers of parts that do not exist. */
    void reportUnused(Parts parts) {
        byId.forEach(
                (id, serial) -> {
                    if (!asked.contains(id) && !parts.isBroken(id)) {
                        ledger.problems()
                                .add(
                                        Code.NO_SUCH_PART,
                                        serial.spot(),
                                        Problems.quote(id),
                                        "the id of a fan or a pack",
                                        Nearest.advice(id, asked));
                    }
                });
    }
}
