package liftwright.plant.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.physics.CellLaw;
import liftwright.plant.identify.CellUnknown;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * The packs as sources: rest voltage and resistance from the cells.
 *
 * <p>Resistance is the settled one, R0 + Σ R_k, at the pack's temperature, age and charge: a pulse
 * of ten seconds would understate what a minute's discharge sees. A pack is series / parallel times
 * its mean cell plus the interconnect; scatter from cell to cell averages out in the pack ({@link
 * ParameterRows#meanRow}).
 */
public final class PackBank {

    private final List<Pack> packs;
    private final Row[] rows;
    private final int judgedAtCharge;

    private record Row(
            int series,
            int parallel,
            int instant,
            int temperatureCoefficient,
            int offset,
            int interconnect,
            int charge,
            int temperature,
            int capacity,
            int capacityLeft,
            int growth,
            CellScatter capacityScatter,
            CellScatter resistanceScatter,
            Cell cell) {}

    /** What a pack takes from its cells in lists. */
    private static final class Cell {
        private final int[] settling;
        private final int[] settlingTime;
        private final double[] charge;
        private final double[] volt;
        private final double[] shapeCharge;
        private final double[] shapeFactor;

        Cell(int[] settling, int[] settlingTime, CellType.Curve openCircuit, CellType.Shape shape) {
            this.settling = settling;
            this.settlingTime = settlingTime;
            charge = doubles(openCircuit.charge());
            volt = doubles(openCircuit.volt());
            shapeCharge = doubles(shape.charge());
            shapeFactor = doubles(shape.factor());
        }

        private static double[] doubles(List<Double> list) {
            return list.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    private PackBank(List<Pack> packs, Row[] rows, int judgedAtCharge) {
        this.packs = packs;
        this.rows = rows;
        this.judgedAtCharge = judgedAtCharge;
    }

    /** Declares the parameters of all packs. */
    public static PackBank declare(Rig rig, ParameterRows table) {
        int judged =
                table.row(
                        RigPath.of("demands", "judged at charge"),
                        "charge at which lift is judged",
                        rig.demands().judgedAtCharge(),
                        Range.ANY);
        List<Row> rows = new ArrayList<>();
        for (Pack pack : rig.packs()) {
            rows.add(row(pack, table));
        }
        return new PackBank(rig.packs(), rows.toArray(new Row[0]), judged);
    }

    /** One resistance for all charges. */
    private static final CellType.Shape FLAT = new CellType.Shape(List.of(0.5), List.of(1.0));

    /** The row of an age; −1 for a new cell. */
    private static int age(Pack pack, ParameterRows table, String key, Optional<Quantity> value) {
        RigPath at = RigPath.of("cells", pack.cell().name(), "ageing", key);
        return value.map(
                        age ->
                                table.meanRow(
                                        at,
                                        key + " of cell " + pack.cell().name(),
                                        pack.id(),
                                        pack.series() * pack.parallel(),
                                        age,
                                        Range.POSITIVE))
                .orElse(-1);
    }

    private static Row row(Pack pack, ParameterRows table) {
        CellType cell = pack.cell();
        RigPath type = RigPath.of("cells", cell.name());
        Optional<FittedCell> fitted = FittedCell.of(cell, table);
        int cells = pack.series() * pack.parallel();
        return new Row(
                pack.series(),
                pack.parallel(),
                told(fitted, CellUnknown.RESISTANCE)
                        .orElseGet(
                                () ->
                                        table.meanRow(
                                                type.child("resistance"),
                                                "resistance of cell " + cell.name(),
                                                pack.id(),
                                                cells,
                                                cell.resistance().orElseThrow(),
                                                Range.POSITIVE)),
                told(fitted, CellUnknown.TEMPERATURE)
                        .orElseGet(
                                () ->
                                        table.row(
                                                type.child("temperature coefficient"),
                                                "temperature coefficient of cell " + cell.name(),
                                                pack.id(),
                                                cell.temperatureCoefficient(),
                                                Range.ANY)),
                table.meanRow(
                        type.child("open circuit doubt"),
                        "open-circuit voltage of cell " + cell.name(),
                        pack.id(),
                        cells,
                        fitted.map(found -> found.openCircuitDoubt(cell.openCircuitDoubt()))
                                .orElse(cell.openCircuitDoubt()),
                        Range.ANY),
                table.row(
                        pack.declaredAt().child("interconnect"),
                        "interconnect of pack " + pack.declaredAt(),
                        pack.id(),
                        pack.interconnect(),
                        Range.NOT_NEGATIVE),
                table.row(
                        pack.declaredAt().child("charge"),
                        "charge of pack " + pack.declaredAt(),
                        pack.id(),
                        pack.charge(),
                        Range.ANY),
                pack.temperature()
                        .map(
                                kelvin ->
                                        table.row(
                                                pack.declaredAt().child("temperature"),
                                                "temperature of pack " + pack.declaredAt(),
                                                pack.id(),
                                                kelvin,
                                                Range.POSITIVE))
                        .orElse(-1),
                told(fitted, CellUnknown.CAPACITY)
                        .orElseGet(
                                () ->
                                        table.meanRow(
                                                type.child("capacity"),
                                                "capacity of cell " + cell.name(),
                                                pack.id(),
                                                cells,
                                                cell.capacity().orElseThrow(),
                                                Range.POSITIVE)),
                age(pack, table, "capacity left", cell.ageing().capacityLeft()),
                age(pack, table, "resistance growth", cell.ageing().resistanceGrowth()),
                CellScatter.of(pack, type.child("capacity"), cell.capacity()),
                CellScatter.of(pack, type.child("resistance"), cell.resistance()),
                fitted.map(found -> lists(pack, found, table)).orElseGet(() -> lists(pack, table)));
    }

    private static Optional<Integer> told(Optional<FittedCell> fitted, CellUnknown unknown) {
        return fitted.flatMap(found -> found.row(unknown));
    }

    private static Cell lists(Pack pack, ParameterRows table) {
        return new Cell(
                settling(pack, table, "resistance"),
                settling(pack, table, "time"),
                pack.cell().openCircuit().orElseThrow(),
                pack.cell().resistanceOverCharge().orElse(FLAT));
    }

    private static Cell lists(Pack pack, FittedCell found, ParameterRows table) {
        return new Cell(
                found.row(CellUnknown.FAST_RESISTANCE).isPresent()
                        ? found.rows(CellUnknown.FAST_RESISTANCE, CellUnknown.SLOW_RESISTANCE)
                        : settling(pack, table, "resistance"),
                found.row(CellUnknown.FAST_TIME).isPresent()
                        ? found.rows(CellUnknown.FAST_TIME, CellUnknown.SLOW_TIME)
                        : settling(pack, table, "time"),
                found.openCircuit(),
                found.shape());
    }

    /** Rows of the settling resistances or times that were declared. */
    private static int[] settling(Pack pack, ParameterRows table, String key) {
        CellType cell = pack.cell();
        RigPath at = RigPath.of("cells", cell.name(), "settling");
        int[] rows = new int[cell.settling().size()];
        for (int k = 0; k < rows.length; k++) {
            RigPath one = at.child(Integer.toString(k + 1)).child(key);
            String label = "settling " + key + " " + (k + 1) + " of cell " + cell.name();
            CellType.Settling settling = cell.settling().get(k);
            rows[k] =
                    key.equals("time")
                            ? table.row(one, label, pack.id(), settling.time(), Range.POSITIVE)
                            : table.meanRow(
                                    one,
                                    label,
                                    pack.id(),
                                    pack.series() * pack.parallel(),
                                    settling.resistance(),
                                    Range.NOT_NEGATIVE);
        }
        return rows;
    }

    public List<Pack> packs() {
        return packs;
    }

    /**
     * Rest voltages of the packs, V.
     *
     * @param judged at the charge at which lift is judged, or a pack's own if that is lower; else
     *     full
     * @param emfV takes one value per pack
     */
    public void rest(double[] p, boolean judged, double[] emfV) {
        for (int k = 0; k < rows.length; k++) {
            Row row = rows[k];
            double charge = chargeAt(p, row, judged);
            double cellV = CellLaw.openCircuitV(row.cell.charge, row.cell.volt, charge);
            emfV[k] = row.series * (cellV + p[row.offset]);
        }
    }

    /**
     * What a full pack stores: the rest voltage over all its charge, slowly drawn, J. Trapezoids
     * between the points of the curve are exact, since it runs straight there.
     */
    public double storedJ(double[] p, int pack) {
        Row row = rows[pack];
        double[] charge = row.cell.charge;
        double meanV = 0;
        double[] edges = new double[charge.length + 2];
        System.arraycopy(charge, 0, edges, 1, charge.length);
        edges[edges.length - 1] = 1;
        for (int k = 1; k < edges.length; k++) {
            double from = CellLaw.openCircuitV(charge, row.cell.volt, edges[k - 1]);
            double to = CellLaw.openCircuitV(charge, row.cell.volt, edges[k]);
            meanV += (from + to) / 2 * (edges[k] - edges[k - 1]);
        }
        double left = row.capacityLeft < 0 ? 1 : p[row.capacityLeft];
        return row.series * row.parallel * p[row.capacity] * left * (meanV + p[row.offset]);
    }

    private double chargeAt(double[] p, Row row, boolean judged) {
        return judged ? Math.min(p[judgedAtCharge], p[row.charge]) : 1;
    }

    /** Factor of age and temperature on every resistance of a pack's cells. */
    private static double factor(double[] p, Row row, double airK) {
        double kelvin = row.temperature < 0 ? airK : p[row.temperature];
        double growth = row.growth < 0 ? 1 : p[row.growth];
        return growth * CellLaw.temperatureFactor(p[row.temperatureCoefficient], kelvin);
    }

    /**
     * Resistances of the packs, Ω.
     *
     * @param airK temperature of packs that declare none, K
     * @param judged at the charge at which lift is judged, or a pack's own if that is lower; else
     *     full
     * @param settled with the settling resistances; else at once
     * @param ohm takes one value per pack
     */
    public void resistance(double[] p, double airK, boolean judged, boolean settled, double[] ohm) {
        for (int k = 0; k < rows.length; k++) {
            Row row = rows[k];
            double cell = p[row.instant];
            if (settled) {
                for (int pair : row.cell.settling) {
                    cell += p[pair];
                }
            }
            cell *= factor(p, row, airK);
            cell *=
                    CellLaw.chargeFactor(
                            row.cell.shapeCharge, row.cell.shapeFactor, chargeAt(p, row, judged));
            ohm[k] = cell * row.series / row.parallel + p[row.interconnect];
        }
    }

    /** New numbers of all cells for one thread. */
    public Cells newCells() {
        Cells cells = new Cells(packs);
        List<CellScatter> capacity = new ArrayList<>();
        List<CellScatter> resistance = new ArrayList<>();
        for (int k = 0; k < rows.length; k++) {
            cells.openCharge[k] = rows[k].cell.charge;
            cells.openVolt[k] = rows[k].cell.volt;
            cells.shapeCharge[k] = rows[k].cell.shapeCharge;
            cells.shapeFactor[k] = rows[k].cell.shapeFactor;
            capacity.add(rows[k].capacityScatter);
            resistance.add(rows[k].resistanceScatter);
        }
        CellScatter.spread(capacity, cells.start, cells.nominalCapacity);
        CellScatter.spread(resistance, cells.start, cells.nominalResistance);
        return cells;
    }

    /**
     * Numbers of all cells at a vector.
     *
     * @param table the table that the vector belongs to
     * @param draw how single cells differ from the mean of their pack
     * @param airK temperature of packs that declare none, K
     * @param cells overwritten
     */
    public void load(double[] p, ParameterTable table, CellDraw draw, double airK, Cells cells) {
        for (int k = 0; k < rows.length; k++) {
            Row row = rows[k];
            double warm = factor(p, row, airK);
            double left = row.capacityLeft < 0 ? 1 : p[row.capacityLeft];
            cells.warm[k] = warm;
            cells.startK[k] = row.temperature < 0 ? airK : p[row.temperature];
            cells.temperatureCoefficientK[k] = p[row.temperatureCoefficient];
            cells.startCharge[k] = p[row.charge];
            cells.capacityAs[k] = p[row.capacity] * left;
            cells.capacityLeft[k] = left;
            cells.instantOhm[k] = p[row.instant] * warm;
            cells.offsetV[k] = p[row.offset];
            cells.interconnectOhm[k] = p[row.interconnect];
            for (int pair = 0; pair < Cells.PAIRS; pair++) {
                boolean there = pair < row.cell.settling.length;
                int at = k * Cells.PAIRS + pair;
                cells.slowOhm[at] = there ? p[row.cell.settling[pair]] * warm : 0;
                // Capacitances change neither with temperature nor with age, so the time goes with
                // resistance.
                cells.slowS[at] = there ? p[row.cell.settlingTime[pair]] * warm : 1;
            }
            row.capacityScatter.load(
                    draw,
                    table,
                    row.capacity,
                    cells.nominalCapacity,
                    cells.capacityOff,
                    cells.start[k]);
            row.resistanceScatter.load(
                    draw,
                    table,
                    row.instant,
                    cells.nominalResistance,
                    cells.resistanceOff,
                    cells.start[k]);
        }
        cells.scale();
    }

    /** Mean cell voltage of a pack: leads and links taken out, V. */
    public double cellV(double[] p, int pack, double terminalV, double currentA) {
        Row row = rows[pack];
        return (terminalV + currentA * p[row.interconnect]) / row.series;
    }
}
