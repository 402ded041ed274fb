package liftwright.review.referee;

import java.util.EnumSet;
import java.util.Set;

/**
 * How long a rig hovers, in small fixed steps: Heun's rule on charge and slow voltages, cell by
 * cell; at each moment one throttle is found by false position so that the rig weighs nothing, and
 * each fan's voltage by the secant rule on its own load line. A step in which something ends is
 * halved until it is short. Nothing of the program that it judges is called.
 */
final class RefereeEndurance {

    /** What can end a hover. */
    enum Why {
        RESERVE,
        CELL_VOLTAGE,
        CELL_CURRENT,
        CUT_OFF,
        FULL_THROTTLE,
        EMPTY
    }

    /**
     * @param whys all that happen within the last step's remainder
     */
    record End(double timeS, Set<Why> whys) {}

    private static final double G = 9.80665;

    private final RefereeHover hover;
    private final RefereeRig rig;
    private final Set<Why> heeded;
    private final boolean drawn;
    private final int packs;

    // One fan of this draw.
    private final double thrustPerSpeed2;
    private final double torquePerSpeed2;
    private final double kv;
    private final double ohm;
    private final double noLoad;
    private final double limit;
    private final double branchOhm;
    private final double trunkOhm;

    /** Scatter of the fans of each pack, summed, times all that the fans share. */
    private final double[] effectOfPack;

    private final double weightN;

    // The cells of this draw.
    private final double[][] capacityAs;
    private final double[][] cellOhm;
    private final double slowOhm;
    private final double slowS;

    // State, then what follows from it.
    private final double[] passedAs;
    private final double[] slowV;
    private final double[] currentA;
    private final double[] emfV;
    private final double[] packOhm;
    private final double[] fanV;
    private double throttle = 0.8;
    private double liftAtFullN;

    private RefereeEndurance(RefereeHover hover, RefereeDraw draw, boolean drawn, Set<Why> heeded) {
        this.hover = hover;
        this.heeded = heeded;
        this.drawn = drawn;
        rig = hover.rig();
        packs = rig.fansOfPack().size();
        var fan = rig.fan();
        double density =
                RefereeLift.density(rig.elevationM(), rig.temperatureC(), rig.humidity()) / 1.225;
        double omega = fan.speedRpm() * Math.PI / 30;
        thrustPerSpeed2 = draw.of("thrust", fan.thrustN()) / (omega * omega) * density;
        torquePerSpeed2 =
                draw.of("shaft power", fan.shaftPowerW()) / (omega * omega * omega) * density;
        kv = draw.of("speed constant", fan.speedConstantRpmPerV()) * Math.PI / 30;
        ohm =
                (draw.of("winding resistance", fan.windingMilliohm())
                                + draw.of("on-resistance", fan.onMilliohm()))
                        / 1000;
        noLoad = draw.of("no-load current", fan.noLoadA());
        limit = fan.currentLimitA().orElse(Double.MAX_VALUE);
        branchOhm = wireOhm(draw, "branch", rig.branch()) + rig.branchJointMilliohm() / 1000;
        trunkOhm =
                wireOhm(draw, "trunk", rig.trunk())
                        + (rig.trunkJointMilliohm() + rig.fuseMilliohm()) / 1000;

        double shared =
                draw.of("installation", fan.installation())
                        * (fan.seller()
                                ? draw.of(
                                        "seller",
                                        new Doubtful(0.9, "", 0.05 / 0.9, 0.15 / 0.9, false, false))
                                : 1)
                        * Math.cos(Math.toRadians(draw.of("cant", rig.cantDegrees())))
                        * intake(draw);
        effectOfPack = new double[packs];
        for (int k = 0; k < packs; k++) {
            for (int i = 0; i < rig.fansOfPack().get(k); i++) {
                effectOfPack[k] += shared * draw.of("scatter", fan.scatterPercent());
            }
        }
        weightN = weightN(draw);

        double warm =
                Math.exp(hover.coefficientK() * (1 / (hover.celsius() + 273.15) - 1 / 298.15));
        slowOhm = draw.of("settling", rig.cell().settlingMilliohm()) / 1000 * warm;
        slowS = hover.settlingS() * warm;
        capacityAs = new double[packs][];
        cellOhm = new double[packs][];
        for (int k = 0; k < packs; k++) {
            capacityAs[k] = cells(draw, drawn, "capacity", hover.capacityAh(), 3600);
            cellOhm[k] = cells(draw, drawn, "resistance", hover.resistanceMilliohm(), warm / 1000);
        }

        passedAs = new double[packs];
        slowV = new double[packs];
        currentA = new double[packs];
        emfV = new double[packs];
        packOhm = new double[packs];
        fanV = new double[packs];
    }

    /** The declared rig; cells that differ in one way stand at their expected places. */
    static End declared(RefereeHover hover, Set<Why> heeded) {
        return new RefereeEndurance(hover, RefereeDraw.nominal(), false, heeded).run();
    }

    static End declared(RefereeHover hover) {
        return declared(hover, EnumSet.allOf(Why.class));
    }

    /** One draw of all that is declared. */
    static End drawn(RefereeHover hover, RefereeDraw draw) {
        return new RefereeEndurance(hover, draw, true, EnumSet.allOf(Why.class)).run();
    }

    private double[] cells(
            RefereeDraw draw, boolean drawn, String name, Doubtful declared, double si) {
        double[] cells = new double[rig.series()];
        for (int c = 0; c < cells.length; c++) {
            double value;
            if (drawn || !declared.each()) {
                value = draw.of(name, declared);
            } else {
                // Blom's normal scores; ± is two standard deviations.
                double score = normalScore((c + 1 - 0.375) / (cells.length + 0.25));
                value = declared.value() * (1 + declared.plus() / 2 * score);
            }
            cells[c] = value * si;
        }
        return cells;
    }

    /** Where the normal distribution reaches a probability, by summing its density. */
    private static double normalScore(double probability) {
        double step = 1e-4;
        double sum = 0.5;
        double z = 0;
        double wanted = Math.max(probability, 1 - probability);
        while (sum < wanted) {
            double middle = z + step / 2;
            sum += step * Math.exp(-middle * middle / 2) / Math.sqrt(2 * Math.PI);
            z += step;
        }
        return probability < 0.5 ? -z : z;
    }

    private double wireOhm(RefereeDraw draw, String name, RefereeRig.Wire wire) {
        // FAA AC 43.13-1B Chg 1, table 11-9: Ω per 1,000 ft at 20 °C; wires 30 K above the air.
        double perKft =
                switch (wire.gauge()) {
                    case 6 -> 0.44;
                    case 8 -> 0.70;
                    case 10 -> 1.26;
                    case 12 -> 2.02;
                    default -> throw new IllegalArgumentException("AWG " + wire.gauge());
                };
        double metres = draw.of(name + " length", wire.lengthMm()) / 1000;
        return 2 * metres * perKft / 304.8 * (1 + 0.00393 * (rig.temperatureC() + 10));
    }

    private double intake(RefereeDraw draw) {
        if (rig.fan().screen().isEmpty()) {
            return 1;
        }
        var screen = rig.fan().screen().get();
        double f = draw.of("free area", screen.freeArea());
        double root = 0.707 * Math.pow(1 - f, 0.375) + 1 - f;
        double areas = draw.of("exit area", rig.fan().exitAreaCm2()) / screen.faceCm2();
        return Math.pow(1 + root * root / (f * f) * areas * areas, -2.0 / 3);
    }

    private double weightN(RefereeDraw draw) {
        var fan = rig.fan();
        double kg = rig.fans() * (draw.of("mass", fan.massKg()) + fan.controllerKg());
        kg +=
                packs
                        * (rig.series() * draw.of("cell mass", rig.cell().massG()) / 1000
                                + draw.of("extra mass", rig.extraMass()));
        for (int i = 0; i < rig.partsKg().size(); i++) {
            kg += draw.of("part " + i, rig.partsKg().get(i));
        }
        return kg * G;
    }

    private double restV(double charge) {
        var at = rig.cell().charge();
        var volt = rig.cell().volt();
        if (charge <= at.getFirst()) {
            return volt.getFirst();
        }
        for (int i = 1; i < at.size(); i++) {
            if (charge <= at.get(i)) {
                return volt.get(i - 1)
                        + (charge - at.get(i - 1))
                                / (at.get(i) - at.get(i - 1))
                                * (volt.get(i) - volt.get(i - 1));
            }
        }
        return volt.getLast();
    }

    private double left(int pack, int cell) {
        return hover.charge() - passedAs[pack] / capacityAs[pack][cell];
    }

    /** Current and speed² of one fan on a voltage at its own terminals. */
    private double busA(double v, double duty) {
        double d = duty;
        double a = ohm * kv * torquePerSpeed2;
        double c = ohm * noLoad - d * v;
        speed = c >= 0 ? 0 : 2 * -c / (1 / kv + Math.sqrt(1 / (kv * kv) - 4 * a * c));
        double winding = c >= 0 ? d * v / ohm : noLoad + kv * torquePerSpeed2 * speed * speed;
        if (winding > limit) {
            winding = limit;
            speed = Math.sqrt((limit - noLoad) / (kv * torquePerSpeed2));
            d = (ohm * limit + speed / kv) / v;
        }
        return (d + RefereeLift.SWITCHING * (1 - d)) * winding + rig.fan().fixedW() / v;
    }

    private double speed;

    /** Terminal voltage of equal fans behind a source, from the last one found there. */
    private double terminalV(double e, double loadOhm, double duty, double guess) {
        double before = e;
        double missBefore = e - loadOhm * busA(e, duty) - e;
        double at = guess > 0 && guess < e ? guess : e + missBefore;
        for (int tries = 0; tries < 100; tries++) {
            double miss = e - loadOhm * busA(at, duty) - at;
            if (Math.abs(miss) < 1e-11 * e) {
                return at;
            }
            double next = at - miss * (at - before) / (miss - missBefore);
            before = at;
            missBefore = miss;
            at = next > 0.2 * e && next < e ? next : (at + e) / 2;
        }
        throw new IllegalStateException("no operating point");
    }

    /** Lift at a throttle; leaves the packs' currents. */
    private double liftN(double share) {
        double duty = share * rig.share();
        double lift = 0;
        if (rig.oneBus()) {
            double siemens = 0;
            double inflow = 0;
            double effect = 0;
            for (int k = 0; k < packs; k++) {
                siemens += 1 / (packOhm[k] + trunkOhm);
                inflow += emfV[k] / (packOhm[k] + trunkOhm);
                effect += effectOfPack[k];
            }
            double e = inflow / siemens;
            double v = terminalV(e, rig.fans() / siemens + branchOhm, duty, fanV[0]);
            double bus = busA(v, duty);
            double split = v + branchOhm * bus;
            for (int k = 0; k < packs; k++) {
                currentA[k] = (emfV[k] - split) / (packOhm[k] + trunkOhm);
                fanV[k] = v;
            }
            return effect * thrustPerSpeed2 * speed * speed;
        }
        for (int k = 0; k < packs; k++) {
            int fans = rig.fansOfPack().get(k);
            double source = packOhm[k] + trunkOhm;
            fanV[k] = terminalV(emfV[k], source * fans + branchOhm, duty, fanV[k]);
            currentA[k] = fans * busA(fanV[k], duty);
            lift += effectOfPack[k] * thrustPerSpeed2 * speed * speed;
        }
        return lift;
    }

    /** Finds the throttle; leaves all that follows from the state. */
    private void settle() {
        for (int k = 0; k < packs; k++) {
            double sum = 0;
            double ohms = rig.interconnectMilliohm() / 1000;
            for (int c = 0; c < rig.series(); c++) {
                sum += restV(left(k, c)) - slowV[k];
                ohms += cellOhm[k][c];
            }
            emfV[k] = sum;
            packOhm[k] = ohms;
        }
        double low = Math.max(0, throttle - 0.01);
        double high = Math.min(1, throttle + 0.01);
        double lowMiss = Math.sqrt(liftN(low)) - Math.sqrt(weightN);
        if (lowMiss > 0) {
            low = 0;
            lowMiss = -Math.sqrt(weightN);
        }
        double highMiss = Math.sqrt(liftN(high)) - Math.sqrt(weightN);
        if (highMiss < 0 && high < 1) {
            high = 1;
            highMiss = Math.sqrt(liftN(1)) - Math.sqrt(weightN);
        }
        liftAtFullN = high == 1 ? Math.pow(highMiss + Math.sqrt(weightN), 2) : weightN * 2;
        if (highMiss < 0) {
            throttle = 1;
            return;
        }
        int side = 0;
        for (int tries = 0; tries < 200 && high - low > 1e-12; tries++) {
            double at = high - highMiss * (high - low) / (highMiss - lowMiss);
            double miss = Math.sqrt(liftN(at)) - Math.sqrt(weightN);
            throttle = at;
            if (Math.abs(miss) < 1e-10 * Math.sqrt(weightN)) {
                return;
            }
            if (miss < 0) {
                low = at;
                lowMiss = miss;
                highMiss = side == -1 ? highMiss / 2 : highMiss;
                side = -1;
            } else {
                high = at;
                highMiss = miss;
                lowMiss = side == 1 ? lowMiss / 2 : lowMiss;
                side = 1;
            }
        }
        liftN(high);
        throttle = high;
    }

    private Set<Why> whys() {
        Set<Why> whys = EnumSet.noneOf(Why.class);
        for (int k = 0; k < packs; k++) {
            double leastV = Double.MAX_VALUE;
            double leastLeft = Double.MAX_VALUE;
            for (int c = 0; c < rig.series(); c++) {
                double left = left(k, c);
                leastLeft = Math.min(leastLeft, left);
                leastV = Math.min(leastV, restV(left) - slowV[k] - cellOhm[k][c] * currentA[k]);
            }
            add(whys, Why.RESERVE, leastLeft <= hover.reserve());
            add(whys, Why.EMPTY, leastLeft <= 0);
            add(whys, Why.CELL_VOLTAGE, leastV <= hover.leastCellV());
            double now = currentA[k];
            add(whys, Why.CELL_CURRENT, hover.peakA().filter(most -> now >= most).isPresent());
            double volt = fanV[k];
            add(whys, Why.CUT_OFF, hover.cutOffV().filter(least -> volt <= least).isPresent());
        }
        add(whys, Why.FULL_THROTTLE, liftAtFullN <= weightN);
        return whys;
    }

    private void add(Set<Why> whys, Why why, boolean holds) {
        if (holds && heeded.contains(why)) {
            whys.add(why);
        }
    }

    private double[] stateNow() {
        double[] all = new double[2 * packs];
        System.arraycopy(passedAs, 0, all, 0, packs);
        System.arraycopy(slowV, 0, all, packs, packs);
        return all;
    }

    private void put(double[] all) {
        System.arraycopy(all, 0, passedAs, 0, packs);
        System.arraycopy(all, packs, slowV, 0, packs);
    }

    private double[] slope() {
        double[] slope = new double[2 * packs];
        for (int k = 0; k < packs; k++) {
            slope[k] = currentA[k];
            slope[packs + k] = (slowOhm * currentA[k] - slowV[k]) / slowS;
        }
        return slope;
    }

    /** From a state whose slope is known. */
    private void heun(double[] from, double[] slope, double h) {
        double[] there = new double[from.length];
        for (int i = 0; i < there.length; i++) {
            there[i] = from[i] + h * slope[i];
        }
        put(there);
        settle();
        double[] slopeThere = slope();
        for (int i = 0; i < there.length; i++) {
            there[i] = from[i] + h * (slope[i] + slopeThere[i]) / 2;
        }
        put(there);
        settle();
    }

    private End run() {
        settle();
        Set<Why> whys = whys();
        if (!whys.isEmpty()) {
            return new End(0, whys);
        }
        double fastest = 0;
        for (int k = 0; k < packs; k++) {
            fastest = Math.max(fastest, currentA[k] / capacityAs[k][0]);
        }
        // Slow voltages need steps short against their time; charge, against the whole hover.
        // The ends of a band are uncertain by more than steps three times as long make them.
        double h = Math.min(slowS / 15, 1 / fastest / 200) * (drawn ? 3 : 1);
        double timeS = 0;
        while (true) {
            double[] from = stateNow();
            double[] slope = slope();
            heun(from, slope, h);
            whys = whys();
            if (whys.isEmpty()) {
                timeS += h;
                continue;
            }
            double low = 0;
            double high = h;
            while (high - low > 1e-5 * (timeS + h)) {
                double middle = (low + high) / 2;
                heun(from, slope, middle);
                Set<Why> there = whys();
                if (there.isEmpty()) {
                    low = middle;
                } else {
                    high = middle;
                    whys = there;
                }
            }
            return new End(timeS + high, whys);
        }
    }
}
