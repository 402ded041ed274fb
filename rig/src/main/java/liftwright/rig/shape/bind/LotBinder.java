package liftwright.rig.shape.bind;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.LotKeys;
import liftwright.rig.table.BenchTable;

/** What was measured of a lot of fans. */
final class LotBinder {

    private final Ledger ledger;
    private final Shelf shelf;

    LotBinder(Ledger ledger, Shelf shelf) {
        this.ledger = ledger;
        this.shelf = shelf;
    }

    /** The lot, if what is told of it is whole. */
    Optional<FanType.Lot> bind(Fields fields, boolean findsScatter) {
        return evidence(fields).map(evidence -> new FanType.Lot(evidence, findsScatter));
    }

    private Optional<FanType.Lot.Evidence> evidence(Fields fields) {
        if (fields.get(LotKeys.WORTH).isPresent()) {
            return fields.get(LotKeys.WORTH).map(FanType.Lot.Worth::new);
        }
        if (fields.get(LotKeys.MEASURED).isPresent()) {
            return fans(fields, fields.get(LotKeys.MEASURED).get());
        }
        return fields.get(LotKeys.BENCH).flatMap(path -> rows(fields, path));
    }

    private Optional<FanType.Lot.Evidence> fans(
            Fields fields, Map<String, Stated<Quantity>> measured) {
        Map<String, Double> byFan = new LinkedHashMap<>();
        measured.forEach(
                (name, worth) -> byFan.put(name, ledger.middle(worth.value(), worth.spot())));
        Quantity stand = ledger.value(fields, LotKeys.STAND);
        if (byFan.isEmpty() && !ledger.problems().hasErrors()) {
            ledger.problems()
                    .add(
                            Code.OUT_OF_RANGE,
                            fields.spotOf(LotKeys.MEASURED),
                            "no fan",
                            "the worth of at least one fan",
                            "");
        }
        return byFan.isEmpty() ? Optional.empty() : Optional.of(new FanType.Lot.Fans(byFan, stand));
    }

    private Optional<FanType.Lot.Evidence> rows(Fields fields, String path) {
        Spot spot = fields.spotOf(LotKeys.BENCH);
        Quantity stand = ledger.value(fields, LotKeys.STAND);
        Optional<BenchTable> table = shelf.bench(path, spot, ledger.problems());
        for (BenchTable.Row row : table.map(BenchTable::rows).orElseGet(List::of)) {
            if (row.fan().isEmpty() || row.speedRadps().isEmpty()) {
                ledger.problems()
                        .add(
                                Code.MISSING_KEY,
                                spot,
                                "line "
                                        + row.line()
                                        + " without its "
                                        + (row.fan().isEmpty() ? "fan" : "speed"),
                                "rows that all tell their fan and their speed",
                                "Name each fan in the column “fan”, and write the speed at which it"
                                        + " was weighed: the label is asked for its thrust there.");
                return Optional.empty();
            }
            if (row.thrustN() <= 0 || row.airspeedMps().orElse(0) != 0) {
                ledger.problems()
                        .add(
                                Code.OUT_OF_RANGE,
                                spot,
                                "line "
                                        + row.line()
                                        + (row.thrustN() <= 0
                                                ? " without thrust"
                                                : " in a stream of air"),
                                "rows with thrust, in still air",
                                "Take the row out.");
                return Optional.empty();
            }
        }
        return table.map(rows -> new FanType.Lot.Rows(rows, stand));
    }
}
