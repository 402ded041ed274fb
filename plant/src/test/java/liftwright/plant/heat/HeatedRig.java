package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.Element;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/**
 * A whole rig that warms as one set of equations: charge, slow voltages, temperatures of all wires,
 * joints, controllers, motors and cells, and the states of fuses are one vector; at each instant
 * the network is solved with everything as warm as that vector says. Knows rigs of exact values,
 * coefficients, one throttle, no intakes; straight from the records.
 */
final class HeatedRig implements Extrapolation.Model {

    private final Rig rig;
    private final double airK;
    private final HotLines lines;
    private final HotNetwork now;
    private final HotPack[] packs;
    private final TwoNodes bodies = new TwoNodes();
    private final int fanAt;
    private final int packAt;
    private final int fuseAt;
    private final int size;
    private final List<FuseAt> fuses = new ArrayList<>();
    private final List<WornAt> worn = new ArrayList<>();
    private final List<Boolean> growing = new ArrayList<>();

    private record FuseAt(int chain, Element.Fuse fuse) {}

    /** A joint that grows worse above its limit. */
    private record WornAt(int chain, int place, double perS) {}

    /** Slots of a fan. */
    private static final int FAN = 4;

    HeatedRig(Rig rig, RefereeGrid grid, AirTable film) {
        this.rig = rig;
        airK = rig.site().temperature().orElseThrow().si();
        double pascal = rig.site().pressure().orElseThrow().si();
        lines = new HotLines(rig, grid, film, airK, pascal);
        now = new HotNetwork(rig, pascal / (287.05307 * airK));
        fanAt = lines.end();
        packAt = fanAt + FAN * now.fans.length;
        packs = new HotPack[rig.packs().size()];
        for (int k = 0; k < packs.length; k++) {
            packs[k] = new HotPack(rig.packs().get(k), packAt + HotPack.SIZE * k, airK);
        }
        fuseAt = packAt + HotPack.SIZE * packs.length;
        for (int c = 0; c < rig.wiring().chains().size(); c++) {
            List<Element> elements = rig.wiring().chains().get(c).elements();
            for (int k = 0; k < elements.size(); k++) {
                if (elements.get(k) instanceof Element.Fuse fuse) {
                    fuses.add(new FuseAt(c, fuse));
                }
                if (elements.get(k) instanceof Element.Joint joint
                        && joint.wear().growthPerS().isPresent()) {
                    double rate = joint.wear().growthPerS().get().si();
                    worn.add(new WornAt(c, lines.place(c, k), rate));
                    growing.add(false);
                }
            }
        }
        size = fuseAt + fuses.size() + worn.size();
    }

    double[] start() {
        double[] y = new double[size];
        Arrays.fill(y, 0, packAt, airK);
        Arrays.fill(y, fuseAt + fuses.size(), size, 1);
        for (int k = 0; k < rig.packs().size(); k++) {
            double kelvin = rig.packs().get(k).temperature().map(q -> q.si()).orElse(airK);
            y[packAt + HotPack.SIZE * k] = kelvin;
            y[packAt + HotPack.SIZE * k + 1] = kelvin;
        }
        return y;
    }

    /** All fans at one duty from now on. */
    void throttle(double share) {
        now.throttle(share);
    }

    /** All fans at the duty that gives a sum of thrusts from now on. */
    void lift(double newton) {
        now.lift(newton);
    }

    /** Takes a chain out. */
    void open(int chain) {
        now.network.open[chain] = true;
    }

    int fuses() {
        return fuses.size();
    }

    int chainOfFuse(int fuse) {
        return fuses.get(fuse).chain;
    }

    boolean isOpen(int chain) {
        return now.network.open[chain];
    }

    int fuseComponent(int fuse) {
        return fuseAt + fuse;
    }

    /** Hottest place of an element; see {@link HotLines#elementK}. */
    double elementK(double[] y, int chain, int element) {
        return lines.elementK(y, chain, element);
    }

    double junctionK(double[] y, int fan) {
        return y[fanAt + FAN * fan];
    }

    double sinkK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 1];
    }

    double windingK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 2];
    }

    double caseK(double[] y, int fan) {
        return y[fanAt + FAN * fan + 3];
    }

    double coreK(double[] y, int pack) {
        return y[packAt + HotPack.SIZE * pack];
    }

    double passedAs(double[] y, int pack) {
        return y[packAt + HotPack.SIZE * pack + 2];
    }

    /** What all cells have given; see {@link HotPack#givenJ}. */
    double givenJ(double[] y) {
        double sum = 0;
        for (HotPack pack : packs) {
            sum += pack.givenJ(y);
        }
        return sum;
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public double allowed(int component) {
        if (component < packAt) {
            return 2e-3;
        }
        if (component >= fuseAt) {
            return 1e-5;
        }
        int pack = (component - packAt) / HotPack.SIZE;
        return switch ((component - packAt) % HotPack.SIZE) {
            case 0, 1 -> 2e-3;
            case 2 -> 1e-6 * rig.packs().get(pack).cell().capacity().orElseThrow().si();
            default -> 1e-5;
        };
    }

    /** The operating point at a state. */
    private void operate(double[] y) {
        for (int k = 0; k < worn.size(); k++) {
            WornAt joint = worn.get(k);
            lines.of(joint.chain).worn(joint.place, y[fuseAt + fuses.size() + k]);
        }
        for (int c = 0; c < now.chainOhm.length; c++) {
            now.chainOhm[c] = lines.ohm(y, c);
        }
        for (int k = 0; k < packs.length; k++) {
            now.emfV[k] = packs[k].emfV(y);
            now.packOhm[k] = packs[k].ohm(y);
        }
        for (int f = 0; f < now.fans.length; f++) {
            now.fans[f].warm(junctionK(y, f), windingK(y, f), caseK(y, f));
        }
        now.operate();
    }

    /** Speeds at an instant, rad/s. */
    double speed(double[] y, int fan) {
        operate(y);
        return now.fans[fan].speed;
    }

    @Override
    public void slope(double[] y, double[] f) {
        operate(y);
        Arrays.fill(f, 0);
        lines.slope(now.network.branchA, y, f);
        for (int k = 0; k < now.fans.length; k++) {
            HotFan fan = now.fans[k];
            int at = fanAt + FAN * k;
            var cooling = rig.fans().get(k).type().controller().cooling();
            var heating = rig.fans().get(k).type().motor().heating();
            double stream = now.stream(k);
            double inner = cooling.junctionToSink().si() * (y[at] - y[at + 1]);
            double junction = cooling.junctionHeatCapacity().si();
            f[at] = (fan.controllerW(now.volt(k)) - inner) / junction;
            f[at + 1] =
                    (inner - cooling.toAir().si() * stream * (y[at + 1] - airK))
                            / (cooling.heatCapacity().si() - junction);
            double through = heating.windingToCase().si() * (y[at + 2] - y[at + 3]);
            f[at + 2] = (fan.windingW() - through) / heating.windingHeatCapacity().si();
            f[at + 3] =
                    (fan.ironW() + through - heating.caseToAir().si() * stream * (y[at + 3] - airK))
                            / heating.caseHeatCapacity().si();
        }
        for (int k = 0; k < packs.length; k++) {
            packs[k].slope(now.network.packA[k], y, f);
        }
        for (int k = 0; k < fuses.size(); k++) {
            double tau = fuses.get(k).fuse.timeConstant().si();
            double gain =
                    FuseReferee.gain(fuses.get(k).fuse, now.network.branchA[fuses.get(k).chain]);
            f[fuseAt + k] = (gain - y[fuseAt + k]) / tau;
        }
        for (int k = 0; k < worn.size(); k++) {
            f[fuseAt + fuses.size() + k] = growing.get(k) ? worn.get(k).perS : 0;
        }
    }

    int growingJoints() {
        return worn.size();
    }

    /** How far such a joint is above its limit, K. */
    double aboveK(double[] y, int joint) {
        WornAt of = worn.get(joint);
        double limitK = rig.limits().si(LimitName.JOINT_TEMPERATURE);
        return y[lines.of(of.chain).of(of.place)] - limitK;
    }

    boolean grows(int joint) {
        return growing.get(joint);
    }

    /** Whether it grows from now on. */
    void grows(int joint, boolean does) {
        growing.set(joint, does);
    }

    @Override
    public void factor(double[] y, double h) {
        operate(y);
        lines.factor(now.network.branchA, y, h);
        bodies.begin(h);
        for (int k = 0; k < now.fans.length; k++) {
            var cooling = rig.fans().get(k).type().controller().cooling();
            var heating = rig.fans().get(k).type().motor().heating();
            double stream = now.stream(k);
            double junction = cooling.junctionHeatCapacity().si();
            bodies.add(
                    fanAt + FAN * k,
                    junction,
                    cooling.heatCapacity().si() - junction,
                    cooling.junctionToSink().si(),
                    cooling.toAir().si() * stream);
            bodies.add(
                    fanAt + FAN * k + 2,
                    heating.windingHeatCapacity().si(),
                    heating.caseHeatCapacity().si(),
                    heating.windingToCase().si(),
                    heating.caseToAir().si() * stream);
        }
        for (HotPack pack : packs) {
            pack.factor(bodies);
        }
    }

    @Override
    public void solve(double[] f) {
        lines.solve(f);
        bodies.solve(f);
    }
}
