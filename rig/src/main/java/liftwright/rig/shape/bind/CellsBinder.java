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
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Nearest;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.words.CellKeys;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.CellTests;

/** The cell types. */
final class CellsBinder {

    private final Ledger ledger;
    private final Shelf shelf;

    CellsBinder(Ledger ledger, Shelf shelf) {
        this.ledger = ledger;
        this.shelf = shelf;
    }

    Map<String, CellType> bind(Map<String, Stated<Fields>> declared) {
        var types = new LinkedHashMap<String, CellType>();
        declared.forEach((name, fields) -> types.put(name, type(name, fields.value())));
        return types;
    }

    private CellType type(String name, Fields fields) {
        Optional<CellTests> tests = fields.get(CellKeys.MEASURED).flatMap(this::tests);
        boolean tested = tests.isPresent();
        Optional<OpenCircuitCurve> curve =
                tested && !fields.has(CellKeys.OPEN_CIRCUIT)
                        ? Optional.empty()
                        : Optional.of(curve(fields));
        return new CellType(
                name,
                ledger.value(fields, CellKeys.CHEMISTRY),
                declared(fields, CellKeys.CAPACITY, tested),
                declared(fields, CellKeys.RESISTANCE, tested),
                fields.get(CellKeys.SETTLING).orElse(List.of()).stream()
                        .map(Stated::value)
                        .map(this::settling)
                        .toList(),
                fields.get(CellKeys.SHAPE).flatMap(points -> shape(points, fields)),
                ageing(fields),
                ledger.value(fields, CellKeys.B),
                ledger.value(fields, CellKeys.MASS),
                curve.map(OpenCircuitCurve::curve),
                doubt(fields, curve),
                fields.get(CellKeys.CONTINUOUS),
                fields.get(CellKeys.PEAK),
                tests,
                new WarmthBinder(ledger).cell(fields));
    }

    /**
     * @param tested whether what is not declared is found from tests
     */
    private Optional<Quantity> declared(Fields fields, Key<Quantity> key, boolean tested) {
        return tested ? fields.get(key) : Optional.of(ledger.value(fields, key));
    }

    /** Empty after a problem. */
    private Optional<CellTests> tests(List<Stated<Fields>> stated) {
        var runs = new ArrayList<CellTests.Run>();
        stated.forEach(test -> run(test.value()).ifPresent(runs::add));
        return runs.isEmpty() ? Optional.empty() : Optional.of(new CellTests(runs));
    }

    private Optional<CellTests.Run> run(Fields fields) {
        int series = ledger.value(fields, CellKeys.TEST_SERIES);
        int parallel = ledger.value(fields, CellKeys.TEST_PARALLEL);
        double charge =
                ledger.middle(
                        ledger.value(fields, CellKeys.TEST_CHARGE),
                        fields.spotOf(CellKeys.TEST_CHARGE));
        boolean heldOut = ledger.value(fields, CellKeys.TEST_HELD_OUT);
        return fields.get(CellKeys.TEST_TABLE)
                .flatMap(
                        path ->
                                shelf.cellTest(
                                        path,
                                        fields.spotOf(CellKeys.TEST_TABLE),
                                        ledger.problems()))
                .map(test -> new CellTests.Run(ofOneCell(test, series, parallel), charge, heldOut));
    }

    private static CellTest ofOneCell(CellTest test, int series, int parallel) {
        return series == 1 && parallel == 1
                ? test
                : new CellTest(
                        test.file(),
                        test.rows().stream()
                                .map(
                                        row ->
                                                new CellTest.Row(
                                                        row.line(),
                                                        row.timeS(),
                                                        row.currentA() / parallel,
                                                        row.voltageV() / series,
                                                        row.temperatureK()))
                                .toList());
    }

    private CellType.Settling settling(Fields fields) {
        return new CellType.Settling(
                ledger.value(fields, CellKeys.SETTLING_RESISTANCE),
                ledger.value(fields, CellKeys.SETTLING_TIME));
    }

    /** Empty after a problem. */
    private Optional<CellType.Shape> shape(List<Stated<Fields>> points, Fields fields) {
        var charge = new ArrayList<Double>();
        var factor = new ArrayList<Double>();
        for (Stated<Fields> stated : points) {
            Fields point = stated.value();
            double share =
                    ledger.middle(
                            ledger.value(point, CellKeys.SHAPE_CHARGE),
                            point.spotOf(CellKeys.SHAPE_CHARGE));
            if (!rises(charge, share, point.spotOf(CellKeys.SHAPE_CHARGE))) {
                return Optional.empty();
            }
            charge.add(share);
            factor.add(
                    ledger.middle(
                            ledger.value(point, CellKeys.SHAPE_FACTOR),
                            point.spotOf(CellKeys.SHAPE_FACTOR)));
        }
        double atHalf = between(charge, factor, 0.5);
        if (!(Math.abs(atHalf - 1) < 1e-3)) {
            ledger.problems()
                    .add(
                            Code.OUT_OF_RANGE,
                            fields.spotOf(CellKeys.SHAPE),
                            "factor " + Measure.RATIO.show(atHalf) + " at 50 % charge",
                            "factor 1 at 50 % charge, where the resistance is declared",
                            "Divide every factor by it, and multiply the resistance by it.");
            return Optional.empty();
        }
        return Optional.of(new CellType.Shape(charge, factor));
    }

    private static double between(List<Double> points, List<Double> values, double at) {
        int k = 0;
        while (k < points.size() && points.get(k) < at) {
            k++;
        }
        if (k == 0 || k == points.size()) {
            return values.get(k == 0 ? 0 : k - 1);
        }
        double share = (at - points.get(k - 1)) / (points.get(k) - points.get(k - 1));
        return values.get(k - 1) + share * (values.get(k) - values.get(k - 1));
    }

    private static CellType.Ageing ageing(Fields fields) {
        return fields.get(CellKeys.AGEING)
                .map(
                        age ->
                                new CellType.Ageing(
                                        age.get(CellKeys.CAPACITY_LEFT),
                                        age.get(CellKeys.RESISTANCE_GROWTH)))
                .orElse(CellType.Ageing.NONE);
    }

    /** Whether a point lies beyond those before it; else the problem is noted. */
    private boolean rises(List<Double> before, double share, Spot spot) {
        if (before.isEmpty() || share > before.getLast()) {
            return true;
        }
        ledger.problems()
                .add(
                        Code.OUT_OF_RANGE,
                        spot,
                        Measure.SHARE.show(share),
                        "more than the point before, " + Measure.SHARE.show(before.getLast()),
                        "Write the points in the order of rising charge.");
        return false;
    }

    private Quantity doubt(Fields fields, Optional<OpenCircuitCurve> curve) {
        double doubtV = curve.map(OpenCircuitCurve::doubtV).orElse(0.0);
        return doubtV == 0
                ? fields.get(CellKeys.OPEN_CIRCUIT_DOUBT)
                        .orElse(Quantity.exact(0, Measure.VOLTAGE.dimension()))
                : ledger.computed(
                        fields,
                        CellKeys.OPEN_CIRCUIT_DOUBT,
                        "± " + Measure.VOLTAGE.show(doubtV),
                        "parts book, " + curve.map(OpenCircuitCurve::source).orElse(""));
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
            if (!rises(charge, share, point.spotOf(CellKeys.AT_CHARGE))) {
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
