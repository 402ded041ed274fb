package liftwright.trials.predict;

import liftwright.rig.CellType;
import liftwright.rig.Pack;

/** One pack as it truly is: every cell in series its own, with a quick drop the model lacks. */
public final class TruePack {

    private static final double REFERENCE_K = 298.15;

    public final Pack declared;
    private final int series;
    private final double[] curveCharge;
    private final double[] curveV;
    private final double[] capacityAs;
    private final double[] ohm25;
    private final double linksOhm;

    /** Part of the links that a cell's two taps see. */
    private final double seenOhm;

    private final double offV;
    private final double warmK;
    private final double slowShare;
    private final double slowS;
    private final double[] settleOhm;
    private final double[] settleS;
    private final double[] settleV;
    private final double capacityJpK;
    private final double acrossWpK;
    private final double airWpK;
    private final double airK;
    private double slowV;
    private double passedAs;
    private final double start;

    /** Every resistance over what it was, for a fault. */
    public double worn = 1;

    /** Share of the charge that was missing at the start, for a fault. */
    public double missing;

    public double coreK;
    private double surfaceK;
    public double amp;

    public TruePack(Pack pack, TrueNumbers draw, double airK) {
        declared = pack;
        this.airK = airK;
        CellType cell = pack.cell();
        String name = cell.name() + "/";
        series = pack.series();
        var curve = cell.openCircuit().orElseThrow();
        curveCharge = curve.charge().stream().mapToDouble(Double::doubleValue).toArray();
        curveV = curve.volt().stream().mapToDouble(Double::doubleValue).toArray();
        capacityAs = new double[series];
        ohm25 = new double[series];
        for (int k = 0; k < series; k++) {
            capacityAs[k] =
                    pack.parallel()
                            * draw.mean(
                                    cell.capacity().orElseThrow(),
                                    name + "capacity",
                                    pack.parallel());
            ohm25[k] =
                    draw.mean(cell.resistance().orElseThrow(), name + "ohm", pack.parallel())
                            / pack.parallel();
        }
        linksOhm = draw.of(pack.interconnect(), "links");
        seenOhm = draw.between(0, 0.3) * linksOhm / series;
        offV = draw.of(cell.openCircuitDoubt(), name + "off") + 0.004 * draw.normal();
        warmK = draw.of(cell.temperatureCoefficient(), name + "warm");
        slowShare = draw.between(0, 0.10);
        slowS = draw.between(3, 12);
        int pairs = cell.settling().size();
        settleOhm = new double[pairs];
        settleS = new double[pairs];
        settleV = new double[pairs];
        for (int k = 0; k < pairs; k++) {
            settleOhm[k] =
                    draw.of(cell.settling().get(k).resistance(), name + "r" + k) / pack.parallel();
            settleS[k] = draw.of(cell.settling().get(k).time(), name + "t" + k);
        }
        int cells = series * pack.parallel();
        capacityJpK = draw.mean(cell.thermal().heatCapacity(), name + "heat", cells);
        acrossWpK = draw.mean(cell.thermal().coreToSurface(), name + "across", cells);
        airWpK = draw.mean(cell.thermal().toAir(), name + "air", cells);
        start = Math.min(1, draw.of(pack.charge(), "charge " + pack.id()));
        coreK = pack.temperature().map(k -> k.si()).orElse(airK);
        surfaceK = coreK;
    }

    private double warm() {
        return worn * Math.exp(warmK * (1 / coreK - 1 / REFERENCE_K));
    }

    private double restV(int k) {
        double charge = start - missing - passedAs / capacityAs[k];
        int at = 1;
        while (at < curveCharge.length - 1 && curveCharge[at] < charge) {
            at++;
        }
        double low = curveCharge[at - 1];
        double part = Math.clamp((charge - low) / (curveCharge[at] - low), 0, 1);
        return offV + curveV[at - 1] * (1 - part) + curveV[at] * part;
    }

    public double chargeLeft() {
        double least = 1;
        for (double capacity : capacityAs) {
            least = Math.min(least, start - missing - passedAs / capacity);
        }
        return least;
    }

    public double emfV() {
        double sum = 0;
        for (int k = 0; k < series; k++) {
            sum += restV(k) - slow();
        }
        return sum;
    }

    private double slow() {
        double sum = slowV;
        for (double volt : settleV) {
            sum += volt;
        }
        return sum;
    }

    public double ohm() {
        double sum = linksOhm;
        for (double one : ohm25) {
            sum += one * warm();
        }
        return sum;
    }

    public double terminalV() {
        return emfV() - amp * ohm();
    }

    public double leastCellV() {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < series; k++) {
            least = Math.min(least, restV(k) - slow() - amp * (ohm25[k] * warm() + seenOhm));
        }
        return least;
    }

    /** Charge that left it since the start, A s. */
    public double passedAs() {
        return passedAs;
    }

    public void step(double forS) {
        passedAs += amp * forS;
        double mean = 0;
        for (double one : ohm25) {
            mean += one / series;
        }
        slowV += (1 - Math.exp(-forS / slowS)) * (amp * mean * warm() * slowShare - slowV);
        for (int k = 0; k < settleV.length; k++) {
            settleV[k] +=
                    (1 - Math.exp(-forS / settleS[k])) * (amp * settleOhm[k] * warm() - settleV[k]);
        }
        double most = 0;
        for (double one : ohm25) {
            most = Math.max(most, one);
        }
        double cells = declared.parallel();
        double watt = (amp * amp * most * warm() + amp * slow()) / cells;
        double across = acrossWpK * (coreK - surfaceK);
        coreK += forS * (watt - across) / (0.9 * capacityJpK);
        surfaceK += forS * (across - airWpK * (surfaceK - airK)) / (0.1 * capacityJpK);
    }
}
