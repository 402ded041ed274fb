package liftwright.rig.csv;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Measure;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Range;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;

/** Bench tables. */
final class BenchRows {

    static final Column VOLTAGE = Column.open("voltage", Measure.VOLTAGE, Range.upTo(1000));
    static final Column BUS = Column.open("bus current", Measure.CURRENT, Range.between(0, 5000));
    static final Column WINDING =
            Column.open("winding current", Measure.CURRENT, Range.between(0, 5000));
    static final Column THRUST =
            Column.needed("thrust", Measure.FORCE, Range.between(-100_000, 100_000));
    static final Column DUTY = Column.open("duty", Measure.SHARE, Range.SHARE);
    static final Column SPEED =
            Column.open("speed", Measure.ROTATION, Range.upTo(200_000 * Math.PI / 30));
    static final Column TORQUE =
            Column.open("torque", Measure.TORQUE, Range.between(-10_000, 10_000));
    static final Column AIR =
            Column.open("air temperature", Measure.TEMPERATURE, Range.between(213.15, 343.15));
    static final Column PRESSURE =
            Column.open("station pressure", Measure.PRESSURE, Range.between(30_000, 110_000));
    static final Column AIRSPEED = Column.open("airspeed", Measure.SPEED, Range.between(0, 340));
    static final Column FAN = Column.text("fan");
    static final Column NOTE = Column.text("note");

    private static final String WHICH_CURRENT =
            "Say which: “bus current [A]” was measured between supply and controller, “winding"
                    + " current [A]” between controller and motor. At part throttle the two differ.";

    static final Vocabulary WORDS =
            new Vocabulary(
                    List.of(
                            VOLTAGE, BUS, WINDING, THRUST, DUTY, SPEED, TORQUE, AIR, PRESSURE,
                            AIRSPEED, FAN, NOTE),
                    Map.of(
                            "current",
                            WHICH_CURRENT,
                            "amps",
                            WHICH_CURRENT,
                            "throttle",
                            "Throttle is what the sender commands; duty is the share of time in"
                                    + " which the controller connects the motor, and the two go"
                                    + " together by a curve of the controller's. Write “duty [%]”"
                                    + " only for what the controller reports as duty; at full"
                                    + " throttle it is 100. Else leave the column out.",
                            "pressure",
                            "Write “station pressure [hPa]”: that of the air at the stand, not the"
                                    + " weather report's, which is reduced to sea level.",
                            "temperature",
                            "Write “air temperature [°C]”, or leave out what is not the air's.",
                            "power",
                            "Leave it out: it follows from voltage and current.",
                            "rpm",
                            "Write “speed [rpm]”."));

    private final Tabular table;
    private final Faults faults;
    private final Head head;
    private final Numbers numbers;

    private BenchRows(Tabular table, Faults faults) {
        this.table = table;
        this.faults = faults;
        this.head = Head.read(table, WORDS, faults);
        this.numbers = new Numbers(table.separator(), faults);
    }

    /** The table, if nothing is wrong with it. */
    static Optional<BenchTable> read(String file, Tabular table, Faults faults) {
        return new BenchRows(table, faults).read(file);
    }

    private Optional<BenchTable> read(String file) {
        head.require(WORDS, faults);
        boolean shaft = ofShaft();
        if (!shaft && head.find(VOLTAGE).isEmpty()) {
            head.missing(VOLTAGE, faults);
        }
        Column current = shaft ? TORQUE : current();
        var rows = new ArrayList<BenchTable.Row>();
        for (Line line : table.rows()) {
            (shaft ? shaftRow(line) : row(line, current)).ifPresent(rows::add);
        }
        if (faults.isEmpty()) {
            somewhereAtWork(THRUST, rows.stream().anyMatch(row -> row.thrustN() > 0));
            somewhereAtWork(
                    current,
                    rows.stream()
                            .anyMatch(
                                    row ->
                                            (shaft ? row.torqueNm() : row.currentA()).orElse(0)
                                                    > 0));
        }
        return faults.isEmpty()
                ? Optional.of(
                        new BenchTable(
                                file,
                                current.equals(WINDING) ? CurrentKind.WINDING : CurrentKind.BUS,
                                rows))
                : Optional.empty();
    }

    /**
     * Whether the rotor was driven by a stand that tells torque and speed, and nothing electric.
     */
    private boolean ofShaft() {
        boolean electric =
                head.find(VOLTAGE).isPresent()
                        || head.find(BUS).isPresent()
                        || head.find(WINDING).isPresent()
                        || head.hasUndeclaredCurrent();
        return !electric && head.find(TORQUE).isPresent() && head.find(SPEED).isPresent();
    }

    private Column current() {
        Optional<Head.Found> bus = head.find(BUS);
        Optional<Head.Found> winding = head.find(WINDING);
        if (bus.isPresent() && winding.isPresent()) {
            Cell at = table.head().cells().get(winding.get().index());
            faults.add(
                    Code.CONTRADICTION,
                    at,
                    WINDING.name(),
                    "two kinds of current",
                    "one",
                    "Leave one of them out: the bus current, if both were measured well, stays.");
        }
        if (bus.isEmpty() && winding.isEmpty() && !head.hasUndeclaredCurrent()) {
            faults.add(
                    Code.MISSING_KEY,
                    table.head().number(),
                    1,
                    "current",
                    "no column of current",
                    "“bus current [A]” or “winding current [A]”",
                    "");
        }
        return bus.isEmpty() && winding.isPresent() ? WINDING : BUS;
    }

    private Optional<BenchTable.Row> row(Line line, Column current) {
        OptionalDouble voltage = needed(VOLTAGE, line);
        OptionalDouble amps = needed(current, line);
        var row = row(line, voltage, amps, open(SPEED, line), open(TORQUE, line));
        return voltage.isEmpty() || amps.isEmpty() ? Optional.empty() : row;
    }

    private Optional<BenchTable.Row> shaftRow(Line line) {
        OptionalDouble speed = needed(SPEED, line);
        OptionalDouble torque = needed(TORQUE, line);
        var row = row(line, OptionalDouble.empty(), OptionalDouble.empty(), speed, torque);
        return speed.isEmpty() || torque.isEmpty() ? Optional.empty() : row;
    }

    private Optional<BenchTable.Row> row(
            Line line,
            OptionalDouble voltage,
            OptionalDouble amps,
            OptionalDouble speed,
            OptionalDouble torque) {
        OptionalDouble thrust = needed(THRUST, line);
        OptionalDouble duty = open(DUTY, line);
        OptionalDouble air = open(AIR, line);
        OptionalDouble pressure = open(PRESSURE, line);
        OptionalDouble airspeed = open(AIRSPEED, line);
        boolean still = airspeed.orElse(0) == 0;
        notNegativeAtRest(THRUST, thrust, still, line);
        notNegativeAtRest(TORQUE, torque, still, line);
        if (thrust.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new BenchTable.Row(
                        line.number(),
                        voltage,
                        duty,
                        amps,
                        speed,
                        thrust.getAsDouble(),
                        torque,
                        air,
                        pressure,
                        airspeed,
                        head.find(FAN)
                                .map(found -> line.cells().get(found.index()).text())
                                .filter(text -> !text.isEmpty())));
    }

    /** Rows of a fan that never worked make no fan. */
    private void somewhereAtWork(Column column, boolean works) {
        if (!works) {
            faults.add(
                    Code.OUT_OF_RANGE,
                    table.head().cells().get(head.find(column).orElseThrow().index()),
                    column.name(),
                    "0 in every row",
                    "more than 0 in at least one row",
                    "Measure the fan while it runs.");
        }
    }

    private OptionalDouble needed(Column column, Line line) {
        var found = head.find(column);
        return found.isPresent() ? numbers.needed(found.get(), line) : OptionalDouble.empty();
    }

    private OptionalDouble open(Column column, Line line) {
        var found = head.find(column);
        return found.isPresent() ? numbers.open(found.get(), line) : OptionalDouble.empty();
    }

    /** Only a stream from outside drives a rotor; on a stand a minus is that of the scale. */
    private void notNegativeAtRest(Column column, OptionalDouble value, boolean still, Line line) {
        if (still && value.orElse(0) < 0) {
            Cell cell = line.cells().get(head.find(column).orElseThrow().index());
            faults.add(
                    Code.OUT_OF_RANGE,
                    cell,
                    column.name(),
                    Problems.quote(cell.text()),
                    "at least 0 where no airspeed is told",
                    "Turn the sign of the scale, or take its offset off.");
        }
    }
}
