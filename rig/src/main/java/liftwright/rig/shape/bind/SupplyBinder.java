package liftwright.rig.shape.bind;

import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.Supplies;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Name;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Stated;

/** What feeds a kill, a coil, or receiver and computer. */
final class SupplyBinder {

    private final Ledger ledger;
    private final Parts parts;

    SupplyBinder(Ledger ledger, Parts parts) {
        this.ledger = ledger;
        this.parts = parts;
    }

    /** A pack or a battery; reported and empty when it is neither. */
    Optional<String> of(Fields fields, Key<String> key) {
        return fields.stated(key).flatMap(this::supply);
    }

    private Optional<String> supply(Stated<String> stated) {
        String text = stated.value();
        if (Supplies.isBattery(text)) {
            return Name.check(text, stated.spot(), stated.spot().span(), ledger.problems())
                    ? Optional.of(text)
                    : Optional.empty();
        }
        var packs = parts.packsOf(stated, "a pack, or the words own battery");
        if (packs.size() > 1) {
            ledger.problems()
                    .add(
                            Code.CONTRADICTION,
                            stated.spot(),
                            Problems.quote(text) + ", a group",
                            "one pack",
                            "Name the one that feeds it: " + packs.getFirst() + ".");
            return Optional.empty();
        }
        return packs.stream().findFirst().map(Object::toString);
    }
}
