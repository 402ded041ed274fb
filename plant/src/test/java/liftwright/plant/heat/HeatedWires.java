package liftwright.plant.heat;

import java.util.random.RandomGenerator;
import liftwright.plant.RigSketch;
import liftwright.rig.Insulation;
import liftwright.rig.Rig;

/**
 * One wire between two joints that feeds one fan from a stiff pack: what tests of single wires run
 * on.
 *
 * @param rig the rig, of one chain
 * @param overload current over the one that warms a long wire to its limit
 * @param ampere about the current
 * @param limitK of its insulation
 * @param good whether its joints are better than it
 */
record HeatedWires(Rig rig, double overload, double ampere, double limitK, boolean good) {

    private static final int[] GAUGES = {24, 22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2};

    /**
     * Thickest wall over the radius of the copper: that of silicone on the thinnest wire in the
     * parts book. Five times the radius, which nobody draws, came out 9 % late at 0.1 s.
     */
    private static final double THICKEST = 2.5;

    /** Element numbers in its chain. */
    static final int JOINT = 0;

    static final int RUN = 1;

    static HeatedWires random(RandomGenerator random) {
        int gauge = GAUGES[random.nextInt(GAUGES.length)];
        Insulation material = WarmSketch.MATERIALS.get(random.nextInt(WarmSketch.MATERIALS.size()));
        double classK =
                273.15
                        + switch (material) {
                            case PVC -> random.nextBoolean() ? 70 : 105;
                            case XLPE -> 90;
                            case ETFE -> 155;
                            case SILICONE -> 180;
                            case FEP -> 205;
                            case PTFE -> 260;
                        };
        double limitK = classK - 20;
        double most = Math.min(1.6e-3, THICKEST * WireReferee.copperRadiusM(gauge));
        double wallM = random.nextDouble(0.25e-3, most);
        int bundle = random.nextInt(3) == 0 ? random.nextInt(2, 8) : 1;
        double airMps = random.nextInt(3) == 0 ? random.nextDouble(0.2, 8) : 0;
        double lengthM = Math.exp(random.nextDouble(Math.log(0.06), Math.log(1.5)));
        double overload = Math.exp(random.nextDouble(Math.log(1.12), Math.log(15)));
        double wire = WireReferee.steadyA(gauge, material, wallM, bundle, airMps, limitK);
        double ampere = overload * wire;
        boolean good = random.nextBoolean();
        double ohm = good ? 0.05e-3 : random.nextDouble(0.1e-3, 1e-3) * Math.min(1, 100 / ampere);
        double rated = good ? 3 * ampere : ampere * random.nextDouble(0.5, 1.5);
        double capacity = random.nextDouble(1, 25);
        RigSketch sketch = WarmSketch.sketch();
        sketch.packs.add(
                RigSketch.pack("p", 1, WarmSketch.cellType("C", WarmSketch.STIFF), 14, 0.95));
        sketch.fans.add(
                RigSketch.fan("f", 1, WarmSketch.fanType("F", WarmSketch.steadyFan(ampere, 57))));
        sketch.wire(
                "p.1",
                "f.1",
                WarmSketch.joint("j1", ohm, rated, capacity),
                WarmSketch.run("w", gauge, 1, lengthM, material, classK, wallM, bundle, airMps),
                WarmSketch.joint("j2", ohm, rated, capacity));
        WarmSketch.oneGroup(sketch);
        return new HeatedWires(sketch.rig(), overload, ampere, limitK, good);
    }
}
