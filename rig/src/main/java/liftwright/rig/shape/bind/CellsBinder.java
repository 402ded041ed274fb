package liftwright.rig.shape.bind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Problem.Code;
import liftwright.rig.book.OpenCircuitCurve;
import liftwright.rig.book.PartsBook;
import liftwright.rig.shape.kind.Either;
import liftwright.rig.shape.kind.Fields;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.CellKeys;

/** The cell types. */
final class CellsBinder {

    private final Ledger ledger;

    CellsBinder(Ledger ledger) {
        this.ledger = ledger;
    }

    Map<String, CellType> bind(Map<String, Stated<Fields>> declared) {
        var types = new LinkedHashMap<String, CellType>();
        declared.forEach((name, fields) -> types.put(name, type(name, fields.value())));
        return types;
    }

    private CellType type(String name, Fields fields) {
        var curve = curve(fields);
        return new CellType(
                name,
                ledger.value(fields, CellKeys.CHEMISTRY),
                Optional.of(ledger.value(fields, CellKeys.CAPACITY)),
                Optional.of(ledger.value(fields, CellKeys.RESISTANCE)),
                fields.get(CellKeys.SETTLING).orElse(List.of()).stream()
                        .map(Stated::value)
                        .map(this::settling)
                        .toList(),
                ledger.value(fields, CellKeys.B),
                ledger.value(fields, CellKeys.MASS),
                Optional.of(curve.curve()),
                doubt(fields, curve),
                fields.get(CellKeys.CONTINUOUS),
                fields.get(CellKeys.PEAK),
                Optional.empty());
    }

    private CellType.Settling settling(Fields fields) {
        return new CellType.Settling(
                ledger.value(fields, CellKeys.SETTLING_RESISTANCE),
                ledger.value(fields, CellKeys.SETTLING_TIME));
    }

    private Quantity doubt(Fields fields, OpenCircuitCurve curve) {
        return curve.doubtV() == 0
                ? fields.get(CellKeys.OPEN_CIRCUIT_DOUBT)
                        .orElse(Quantity.exact(0, Measure.VOLTAGE.dimension()))
                : ledger.computed(
                        fields,
                        CellKeys.OPEN_CIRCUIT_DOUBT,
                        "± " + Measure.VOLTAGE.show(curve.doubtV()),
                        "parts book, " + curve.source());
    }

    private OpenCircuitCurve curve(Fields fields) {
        Spot spot = fields.spotOf(CellKeys.OPEN_CIRCUIT);
        return switch (ledger.value(fields, CellKeys.OPEN_CIRCUIT)) {
            case Either.Of.One<String, List<Stated<Fields>>>(var name) -> fromBook(name, spot);
            case Either.Of.Other<String, List<Stated<Fields>>>(var points) -> own(points, spot);
        };
    }

    private OpenCircuitCurve fromBook(String name, Spot spot) {
        return PartsBook.openCircuit(name)
                .orElseGet(
                        () -> {
                            String near = Nearest.advice(name, PartsBook.openCircuitNames());
                            ledger.problems()
                                    .add(
                                            Code.NO_SUCH_PART,
                                            spot,
                                            Problems.quote(name),
                                            "an open-circuit curve of the parts book, or points",
                                            near.isEmpty()
                                                    ? "The parts book has: "
                                                            + String.join(
                                                                    ", ",
                                                                    PartsBook.openCircuitNames())
                                                            + "."
                                                    : near);
                            return flat();
                        });
    }

    private OpenCircuitCurve own(List<Stated<Fields>> points, Spot spot) {
        var charge = new ArrayList<Double>();
        var volt = new ArrayList<Double>();
        for (Stated<Fields> stated : points) {
            Fields point = stated.value();
            double share =
                    ledger.middle(
                            ledger.value(point, CellKeys.AT_CHARGE),
                            point.spotOf(CellKeys.AT_CHARGE));
            if (!charge.isEmpty() && share <= charge.getLast()) {
                ledger.problems()
                        .add(
                                Code.OUT_OF_RANGE,
                                point.spotOf(CellKeys.AT_CHARGE),
                                Measure.SHARE.show(share),
                                "more than the point before, "
                                        + Measure.SHARE.show(charge.getLast()),
                                "Write the points in the order of rising charge.");
                return flat();
            }
            charge.add(share);
            volt.add(
                    ledger.middle(
                            ledger.value(point, CellKeys.AT_VOLTAGE),
                            point.spotOf(CellKeys.AT_VOLTAGE)));
        }
        if (charge.isEmpty() || charge.getFirst() > 0 || charge.getLast() < 1) {
            ledger.problems()
                    .add(
                            Code.OUT_OF_RANGE,
                            spot,
                            "points that leave an end open",
                            "points from 0 % to 100 %",
                            "Beyond the ends nothing is known: add them.");
            return flat();
        }
        return new OpenCircuitCurve("", new CellType.Curve(charge, volt), 0, "declared");
    }

    /** Stands in after a problem; never handed out. */
    private static OpenCircuitCurve flat() {
        return new OpenCircuitCurve(
                "", new CellType.Curve(List.of(0.0, 1.0), List.of(1.0, 1.0)), 0, "");
    }
}
