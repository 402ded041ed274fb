package liftwright.review.referee;

import java.util.EnumSet;
import java.util.Set;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/**
 * How long a rig hovers before anything gives out, its heat included: charge, slow voltage and the
 * temperatures of cells, controllers and motors of each pack and its fans as one set of ordinary
 * differential equations, stepped by a library's adaptive integrator. At each moment one throttle
 * is found by bisection so that the rig weighs nothing. Nothing of the program that it judges is
 * called.
 *
 * <p>For rigs whose packs share nothing, whose cells are alike, and whose wires, joints and fuses
 * are so generous that they reach no limit: their copper warms by a coarse law that hardly matters.
 */
final class RefereeHeat {

    /** What can come first. */
    enum Why {
        RESERVE,
        CELL_VOLTAGE,
        CELL_CURRENT,
        CUT_OFF,
        FULL_THROTTLE,
        EMPTY,
        SWITCHES,
        WINDING,
        MAGNETS,
        CELLS
    }

    /**
     * @param whys all that happen within the last step's remainder
     */
    record End(double timeS, Set<Why> whys) {}

    /** Limits that no rig of these tests declares otherwise: common practice, °C. */
    static final double SWITCHES_C = 100;

    static final double WINDING_C = 120;
    static final double MAGNETS_C = 80;
    static final double CELLS_C = 60;

    private static final double G = 9.80665;
    private static final int PER_PACK = 10;

    /** On-resistance of switches, 1.65 at 125 °C over that at 25 °C: common practice. */
    private static final double SWITCH_PER_K = 0.0065;

    private static final double CHUNK_S = 10;

    private final RefereeHover hover;
    private final RefereeRig rig;
    private final int packs;
    private final double airC;

    private final double thrustPerSpeed2;
    private final double torquePerSpeed2;
    private final double kv;
    private final double windingOhm;
    private final double onOhm;
    private final double noLoad;
    private final double limit;
    private final double branchOhm;
    private final double trunkOhm;
    private final double jointsOhm;
    private final double[] effectOfPack;
    private final double weightN;
    private final double capacityAs;
    private final double cellOhm;
    private final double slowOhm;
    private final double slowF;

    // Heat of one controller, one motor, one cell.
    private final double sinkJpK;
    private final double toSinkWpK;
    private final double sinkAirWpK;
    private final double windingJpK;
    private final double caseJpK;
    private final double toCaseWpK;
    private final double caseAirWpK;
    private final double coreJpK;
    private final double canJpK;
    private final double toCanWpK;
    private final double canAirWpK;
    private final double fullSpeed;
    private final double wireJpK;
    private final double wireAirWpK;
    private final double trunkJpK;
    private final double trunkAirWpK;

    private double laterK;

    // What follows from a state.
    private double throttle = 0.7;
    private double liftAtFullN;
    private final double[] currentA;
    private final double[] fanV;
    private final double[] windingA;
    private final double[] speed;
    private final double[] dutyOf;

    RefereeHeat(RefereeHover hover, RefereeDraw draw) {
        this.hover = hover;
        rig = hover.rig();
        if (rig.oneBus()) {
            throw new IllegalArgumentException("packs that share a bus are not for this referee");
        }
        packs = rig.fansOfPack().size();
        airC = rig.temperatureC();
        var fan = rig.fan();
        double density =
                RefereeLift.density(rig.elevationM(), rig.temperatureC(), rig.humidity()) / 1.225;
        double omega = fan.speedRpm() * Math.PI / 30;
        thrustPerSpeed2 = draw.of("thrust", fan.thrustN()) / (omega * omega) * density;
        torquePerSpeed2 =
                draw.of("shaft power", fan.shaftPowerW()) / (omega * omega * omega) * density;
        kv = draw.of("speed constant", fan.speedConstantRpmPerV()) * Math.PI / 30;
        windingOhm = draw.of("winding resistance", fan.windingMilliohm()) / 1000;
        onOhm = draw.of("on-resistance", fan.onMilliohm()) / 1000;
        noLoad = draw.of("no-load current", fan.noLoadA());
        limit = fan.currentLimitA().orElse(Double.MAX_VALUE);
        branchOhm = wireOhm(draw, "branch", rig.branch());
        trunkOhm = wireOhm(draw, "trunk", rig.trunk());
        jointsOhm = (rig.trunkJointMilliohm() + rig.fuseMilliohm()) / 1000;
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
        double fanKg = draw.of("mass", fan.massKg());
        double cellKg = draw.of("cell mass", rig.cell().massG()) / 1000;
        weightN = weightN(draw, fanKg, cellKg);

        double warm =
                Math.exp(hover.coefficientK() * (1 / (hover.celsius() + 273.15) - 1 / 298.15));
        capacityAs = draw.of("capacity", hover.capacityAh()) * 3600;
        cellOhm = draw.of("resistance", hover.resistanceMilliohm()) / 1000;
        slowOhm = draw.of("settling", rig.cell().settlingMilliohm()) / 1000;
        slowF = hover.settlingS() / slowOhm;
        if (!(warm > 0)) {
            throw new IllegalStateException("no warmth");
        }

        // By mass, as nobody declared anything; the doubts are rectangles.
        double controllerKg = fan.controllerKg();
        double wholeJpK = bound(draw, "controller capacity", 500 * controllerKg, 0.4);
        sinkJpK = wholeJpK - bound(draw, "junction capacity", 0.02 * 500 * controllerKg, 0.5);
        toSinkWpK = bound(draw, "junction to sink", 15 / 0.12 * controllerKg, 0.5);
        sinkAirWpK = bound(draw, "sink to air", 15 * controllerKg, 0.5);
        double declaredKg = fan.massKg().value();
        windingJpK = bound(draw, "winding capacity", 60 * declaredKg, 0.4);
        caseJpK = bound(draw, "case capacity", 215 * declaredKg, 0.4);
        toCaseWpK = bound(draw, "winding to case", 2 * declaredKg, 0.5);
        caseAirWpK = bound(draw, "case to air", 5.4 * declaredKg, 0.5);
        double declaredCellKg = rig.cell().massG().value() / 1000;
        double cellJpK = bound(draw, "cell heat", 1000 * declaredCellKg, 0.15);
        coreJpK = 0.9 * cellJpK;
        canJpK = 0.1 * cellJpK;
        toCanWpK = bound(draw, "core to can", 12 * declaredCellKg, 0.5);
        canAirWpK = bound(draw, "can to air", 0.6 * declaredCellKg, 0.5);

        double fullV = rig.series() * rig.cell().volt().getLast();
        fullSpeed = fullSpeed(fullV);
        double metres = rig.branch().lengthMm().value() / 1000;
        wireJpK = 2 * metres * mm2(rig.branch().gauge()) * 1e-6 * 3.45e6 * 1.3;
        wireAirWpK = 2 * metres * Math.PI * 5e-3 * 14;
        double trunkM = rig.trunk().lengthMm().value() / 1000;
        trunkJpK = 2 * trunkM * mm2(rig.trunk().gauge()) * 1e-6 * 3.45e6 * 1.3;
        trunkAirWpK = 2 * trunkM * Math.PI * 7e-3 * 14;

        currentA = new double[packs];
        fanV = new double[packs];
        windingA = new double[packs];
        speed = new double[packs];
        dutyOf = new double[packs];
    }

    private static double bound(RefereeDraw draw, String name, double value, double share) {
        return draw.of(name, new Doubtful(value, "", share, share, true, false));
    }

    /** Solid copper, ASTM B258. */
    private static double mm2(int gauge) {
        double mm = 0.127 * Math.pow(92, (36 - gauge) / 39.0);
        return Math.PI / 4 * mm * mm;
    }

    /** FAA AC 43.13-1B Chg 1, table 11-9: Ω per 1,000 ft at 20 °C. */
    private double wireOhm(RefereeDraw draw, String name, RefereeRig.Wire wire) {
        double perKft =
                switch (wire.gauge()) {
                    case 6 -> 0.44;
                    case 8 -> 0.70;
                    case 10 -> 1.26;
                    case 12 -> 2.02;
                    default -> throw new IllegalArgumentException("AWG " + wire.gauge());
                };
        return 2 * draw.of(name + " length", wire.lengthMm()) / 1000 * perKft / 304.8;
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

    private double weightN(RefereeDraw draw, double fanKg, double cellKg) {
        double kg = rig.fans() * (fanKg + rig.fan().controllerKg());
        kg += packs * (rig.series() * cellKg + draw.of("extra mass", rig.extraMass()));
        for (int i = 0; i < rig.partsKg().size(); i++) {
            kg += draw.of("part " + i, rig.partsKg().get(i));
        }
        return kg * G;
    }

    /** At full duty of its group on full packs without sag, cold. */
    private double fullSpeed(double fullV) {
        double low = 0;
        double high = kv * fullV;
        double ohm = windingOhm + onOhm;
        for (int tries = 0; tries < 100; tries++) {
            double at = (low + high) / 2;
            double winding = noLoad + kv * torquePerSpeed2 * at * at;
            if (winding <= limit && at / kv + ohm * winding <= rig.share() * fullV) {
                low = at;
            } else {
                high = at;
            }
        }
        return low;
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

    private double warmth(double coreC) {
        return Math.exp(hover.coefficientK() * (1 / (coreC + 273.15) - 1 / 298.15));
    }

    private double left(double[] y, int k) {
        return hover.charge() - y[PER_PACK * k] / capacityAs;
    }

    /** One fan of pack k on a voltage; leaves its figures. */
    private double busA(double[] y, int k, double volt, double duty) {
        int at = PER_PACK * k;
        double warmKv = kv / (1 - 0.0011 * (y[at + 7] - 20));
        double ohm =
                windingOhm * (1 + 0.00393 * (y[at + 6] - 20))
                        + onOhm * (1 + SWITCH_PER_K * (y[at + 4] - 25));
        double d = duty;
        double a = ohm * warmKv * torquePerSpeed2;
        double c = ohm * noLoad - d * volt;
        double turns =
                c >= 0 ? 0 : 2 * -c / (1 / warmKv + Math.sqrt(1 / (warmKv * warmKv) - 4 * a * c));
        double winding =
                c >= 0 ? d * volt / ohm : noLoad + warmKv * torquePerSpeed2 * turns * turns;
        if (winding > limit) {
            winding = limit;
            turns = Math.sqrt((limit - noLoad) / (warmKv * torquePerSpeed2));
            d = (ohm * limit + turns / warmKv) / volt;
        }
        speed[k] = turns;
        windingA[k] = winding;
        dutyOf[k] = d;
        return (d + RefereeLift.SWITCHING * (1 - d)) * winding + rig.fan().fixedW() / volt;
    }

    /** Terminal voltage of equal fans behind a source, from the last one found there. */
    private double terminalV(double[] y, int k, double emf, double loadOhm, double duty) {
        double before = emf;
        double missBefore = -loadOhm * busA(y, k, emf, duty);
        double at = fanV[k] > 0 && fanV[k] < emf ? fanV[k] : emf + missBefore;
        for (int tries = 0; tries < 100; tries++) {
            double miss = emf - loadOhm * busA(y, k, at, duty) - at;
            if (Math.abs(miss) < 1e-11 * emf) {
                return at;
            }
            double next = at - miss * (at - before) / (miss - missBefore);
            before = at;
            missBefore = miss;
            at = next > 0.2 * emf && next < emf ? next : (at + emf) / 2;
        }
        throw new IllegalStateException("no operating point");
    }

    /** Lift at a throttle; leaves currents and voltages. */
    private double liftN(double[] y, double share) {
        double lift = 0;
        for (int k = 0; k < packs; k++) {
            int at = PER_PACK * k;
            int fans = rig.fansOfPack().get(k);
            double copper = 1 + 0.00393 * (y[at + 8] - 20);
            double instant =
                    rig.interconnectMilliohm() / 1000 + rig.series() * cellOhm * warmth(y[at + 2]);
            double emf = rig.series() * (restV(left(y, k)) - y[at + 1]);
            double trunkCopper = 1 + 0.00393 * (y[at + 9] - 20);
            double source = instant + trunkOhm * trunkCopper + jointsOhm;
            double branch = branchOhm * copper + rig.branchJointMilliohm() / 1000;
            double loadOhm = source * fans + branch;
            fanV[k] = terminalV(y, k, emf, loadOhm, share * rig.share());
            currentA[k] = fans * busA(y, k, fanV[k], share * rig.share());
            lift += effectOfPack[k] * thrustPerSpeed2 * speed[k] * speed[k];
        }
        return lift;
    }

    /** Finds the throttle by false position; leaves all that follows from the state. */
    private void settle(double[] y) {
        double wanted = Math.sqrt(weightN);
        double low = Math.max(0, throttle - 0.01);
        double high = Math.min(1, throttle + 0.01);
        double lowMiss = Math.sqrt(liftN(y, low)) - wanted;
        if (lowMiss > 0) {
            low = 0;
            lowMiss = -wanted;
        }
        double highMiss = Math.sqrt(liftN(y, high)) - wanted;
        if (highMiss < 0 && high < 1) {
            high = 1;
            highMiss = Math.sqrt(liftN(y, 1)) - wanted;
        }
        liftAtFullN = high == 1 ? Math.pow(highMiss + wanted, 2) : weightN * 2;
        if (highMiss < 0) {
            throttle = 1;
            return;
        }
        int side = 0;
        for (int tries = 0; tries < 200 && high - low > 1e-12; tries++) {
            double at = high - highMiss * (high - low) / (highMiss - lowMiss);
            double miss = Math.sqrt(liftN(y, at)) - wanted;
            throttle = at;
            if (Math.abs(miss) < 1e-9 * wanted) {
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
        liftN(y, high);
        throttle = high;
    }

    private double junctionW(int k, double junctionC) {
        double i = windingA[k];
        return i * i * onOhm * (1 + SWITCH_PER_K * (junctionC - 25))
                + RefereeLift.SWITCHING * fanV[k] * i * (1 - dutyOf[k])
                + rig.fan().fixedW();
    }

    /**
     * With junctions as warm as what they lose makes them: they follow within a tenth of a second,
     * which no limit of minutes feels.
     */
    private void settleWarm(double[] y) {
        settle(y);
        for (int k = 0; k < packs; k++) {
            int at = PER_PACK * k;
            for (int again = 0; again < 4; again++) {
                y[at + 4] = y[at + 5] + junctionW(k, y[at + 4]) / toSinkWpK;
            }
        }
        settle(y);
    }

    private double[] slope(double[] y) {
        settleWarm(y);
        double[] d = new double[y.length];
        for (int k = 0; k < packs; k++) {
            int at = PER_PACK * k;
            int fans = rig.fansOfPack().get(k);
            double warm = warmth(y[at + 2]);
            double amps = currentA[k];
            d[at] = amps;
            d[at + 1] = (amps - y[at + 1] / (slowOhm * warm)) / slowF;
            // A cell: core, then can; what links and leads lose goes into the cans.
            double cellW = amps * amps * cellOhm * warm + y[at + 1] * y[at + 1] / (slowOhm * warm);
            double linkW = amps * amps * rig.interconnectMilliohm() / 1000 / rig.series();
            double outW = toCanWpK * (y[at + 2] - y[at + 3]);
            d[at + 2] = (cellW - outW) / coreJpK;
            d[at + 3] = (linkW + outW - canAirWpK * (y[at + 3] - airC)) / canJpK;
            // A controller: junction, then sink.
            double share = Math.max(0.04, Math.pow(speed[k] / fullSpeed, 0.7));
            double i = windingA[k];
            double toSinkW = junctionW(k, y[at + 4]);
            d[at + 5] = (toSinkW - share * sinkAirWpK * (y[at + 5] - airC)) / sinkJpK;
            // A motor: winding, then case with its magnets.
            double warmKv = kv / (1 - 0.0011 * (y[at + 7] - 20));
            double copperW = i * i * windingOhm * (1 + 0.00393 * (y[at + 6] - 20));
            double ironW = noLoad * speed[k] / warmKv;
            double toCaseW = toCaseWpK * (y[at + 6] - y[at + 7]);
            d[at + 6] = (copperW - toCaseW) / windingJpK;
            d[at + 7] = (ironW + toCaseW - share * caseAirWpK * (y[at + 7] - airC)) / caseJpK;
            double fanA = amps / fans;
            d[at + 8] =
                    (fanA * fanA * branchOhm * (1 + 0.00393 * (y[at + 8] - 20))
                                    - wireAirWpK * (y[at + 8] - airC))
                            / wireJpK;
            d[at + 9] =
                    (amps * amps * trunkOhm * (1 + 0.00393 * (y[at + 9] - 20))
                                    - trunkAirWpK * (y[at + 9] - airC))
                            / trunkJpK;
        }
        return d;
    }

    private Set<Why> whys(double[] y) {
        settleWarm(y);
        Set<Why> whys = EnumSet.noneOf(Why.class);
        for (int k = 0; k < packs; k++) {
            int at = PER_PACK * k;
            double left = left(y, k);
            double now = currentA[k];
            double volt = fanV[k];
            double cellV = restV(left) - y[at + 1] - cellOhm * warmth(y[at + 2]) * now;
            add(whys, Why.RESERVE, left <= hover.reserve());
            add(whys, Why.EMPTY, left <= 0);
            add(whys, Why.CELL_VOLTAGE, cellV <= hover.leastCellV());
            add(whys, Why.CELL_CURRENT, hover.peakA().filter(most -> now >= most).isPresent());
            add(whys, Why.CUT_OFF, hover.cutOffV().filter(least -> volt <= least).isPresent());
            add(whys, Why.CELLS, y[at + 2] >= CELLS_C + laterK);
            add(whys, Why.SWITCHES, y[at + 4] >= SWITCHES_C + laterK);
            add(whys, Why.WINDING, y[at + 6] >= WINDING_C + laterK);
            add(whys, Why.MAGNETS, y[at + 7] >= MAGNETS_C + laterK);
        }
        add(whys, Why.FULL_THROTTLE, liftAtFullN <= weightN);
        return whys;
    }

    private static void add(Set<Why> whys, Why why, boolean holds) {
        if (holds) {
            whys.add(why);
        }
    }

    private double[] start() {
        double[] y = new double[PER_PACK * packs];
        for (int k = 0; k < packs; k++) {
            for (int i = 2; i < PER_PACK; i++) {
                y[PER_PACK * k + i] = i < 4 ? hover.celsius() : airC;
            }
        }
        return y;
    }

    /** The same with every limit of temperature so much higher, K. */
    End first(double atMostS, double higherK) {
        laterK = higherK;
        throttle = 0.7;
        End end = first(atMostS);
        laterK = 0;
        return end;
    }

    /** The first limit of a hover, at most so long, s. */
    End first(double atMostS) {
        OrdinaryDifferentialEquation equations = equations();
        var integrator = new DormandPrince853Integrator(1e-6, CHUNK_S, 1e-3, 1e-6);
        double[] y = start();
        double timeS = 0;
        Set<Why> whys = whys(y);
        while (whys.isEmpty() && timeS < atMostS) {
            double[] next = to(integrator, equations, y, CHUNK_S);
            Set<Why> there = whys(next);
            if (there.isEmpty()) {
                y = next;
                timeS += CHUNK_S;
                continue;
            }
            double low = 0;
            double high = CHUNK_S;
            while (high - low > 2e-3) {
                double middle = (low + high) / 2;
                Set<Why> at = whys(to(integrator, equations, y, middle));
                if (at.isEmpty()) {
                    low = middle;
                } else {
                    high = middle;
                    there = at;
                }
            }
            return new End(timeS + high, there);
        }
        return new End(timeS, whys);
    }

    /**
     * Time within every limit, as a question of so long a hover and the two minutes after it judges
     * it: the first limit's; where only the rest reaches one, a little less than what is asked.
     */
    double withinLimitsS(double demandS, double atMostS) {
        double firstS = first(atMostS).timeS();
        return firstS >= demandS && restReaches(demandS) ? 0.99 * demandS : firstS;
    }

    /** Whether the rest after a hover of that length, which reaches no limit, reaches one. */
    private boolean restReaches(double hoverS) {
        double[] y = start();
        var integrator = new DormandPrince853Integrator(1e-6, CHUNK_S, 1e-3, 1e-6);
        OrdinaryDifferentialEquation flying = equations();
        double timeS = 0;
        while (timeS < hoverS) {
            double h = Math.min(CHUNK_S, hoverS - timeS);
            y = to(integrator, flying, y, h);
            timeS += h;
        }
        double h = 0.1;
        for (double restS = 0; restS < 120; restS += h) {
            for (int k = 0; k < packs; k++) {
                int at = PER_PACK * k;
                double coreOut = toCanWpK * (y[at + 2] - y[at + 3]);
                double pairW = y[at + 1] * y[at + 1] / (slowOhm * warmth(y[at + 2]));
                y[at + 1] -= h * y[at + 1] / (slowOhm * warmth(y[at + 2])) / slowF;
                y[at + 2] += h * (pairW - coreOut) / coreJpK;
                y[at + 3] += h * (coreOut - canAirWpK * (y[at + 3] - airC)) / canJpK;
                y[at + 4] = y[at + 5] + rig.fan().fixedW() / toSinkWpK;
                y[at + 5] +=
                        h * (rig.fan().fixedW() - 0.04 * sinkAirWpK * (y[at + 5] - airC)) / sinkJpK;
                double out = toCaseWpK * (y[at + 6] - y[at + 7]);
                y[at + 6] -= h * out / windingJpK;
                y[at + 7] += h * (out - 0.04 * caseAirWpK * (y[at + 7] - airC)) / caseJpK;
                if (y[at + 2] >= CELLS_C
                        || y[at + 4] >= SWITCHES_C
                        || y[at + 6] >= WINDING_C
                        || y[at + 7] >= MAGNETS_C) {
                    return true;
                }
            }
        }
        return false;
    }

    private OrdinaryDifferentialEquation equations() {
        return new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return PER_PACK * packs;
            }

            @Override
            public double[] computeDerivatives(double t, double[] y) {
                return slope(y);
            }
        };
    }

    private static double[] to(
            DormandPrince853Integrator integrator,
            OrdinaryDifferentialEquation equations,
            double[] from,
            double forS) {
        return integrator.integrate(equations, new ODEState(0, from), forS).getPrimaryState();
    }
}
