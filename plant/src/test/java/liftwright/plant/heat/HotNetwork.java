package liftwright.plant.heat;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Fan;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/** Packs, chains and fans of a rig at an instant, at one duty or at one sum of thrusts. */
final class HotNetwork {

    final DenseNetwork network;
    final HotFan[] fans;

    /** To be set before {@link #operate}. */
    final double[] emfV;

    final double[] packOhm;
    final double[] chainOhm;
    private final int[] fanNode;
    private final double[] fullRadps;
    private double throttle;
    private double liftN = -1;

    HotNetwork(Rig rig, double density) {
        List<String> names = new ArrayList<>();
        List<DenseNetwork.Branch> branches = new ArrayList<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            branches.add(
                    new DenseNetwork.Branch(node(names, chain.from()), node(names, chain.to())));
        }
        fans = new HotFan[rig.fans().size()];
        fullRadps = new double[fans.length];
        fanNode = new int[fans.length];
        for (int f = 0; f < fans.length; f++) {
            Fan fan = rig.fans().get(f);
            fans[f] = new HotFan(fan.type(), density / 1.225);
            fanNode[f] = node(names, fan.id().text());
        }
        int packs = rig.packs().size();
        int[] packNode = new int[packs];
        for (int k = 0; k < packs; k++) {
            packNode[k] = node(names, rig.packs().get(k).id().text());
        }
        network =
                new DenseNetwork(
                        names.size(),
                        branches.toArray(new DenseNetwork.Branch[0]),
                        packNode,
                        fanNode);
        emfV = new double[packs];
        packOhm = new double[packs];
        chainOhm = new double[branches.size()];
        fullSpeeds(rig);
    }

    private static int node(List<String> names, String name) {
        if (!names.contains(name)) {
            names.add(name);
        }
        return names.indexOf(name);
    }

    /**
     * Speeds to which the cooling streams refer: full duty on full packs, nothing sagging, cold.
     */
    private void fullSpeeds(Rig rig) {
        double volt = 0;
        for (Pack pack : rig.packs()) {
            volt =
                    Math.max(
                            volt,
                            pack.series()
                                    * pack.cell().openCircuit().orElseThrow().volt().getLast());
        }
        for (int f = 0; f < fans.length; f++) {
            fans[f].warm(298.15, 293.15, 293.15);
            fans[f].operate(volt, 1);
            fullRadps[f] = fans[f].speed;
        }
    }

    /** All fans at one duty from now on. */
    void throttle(double share) {
        throttle = share;
        liftN = -1;
    }

    /** All fans at the duty that gives a sum of thrusts from now on. */
    void lift(double newton) {
        liftN = newton;
    }

    /** Solves with what {@link #emfV}, {@link #packOhm}, {@link #chainOhm} and fans say. */
    void operate() {
        if (liftN < 0) {
            solve(throttle);
            return;
        }
        double low = 0;
        double high = 1;
        double near = Math.clamp(throttle, 0.05, 0.999);
        // From where it was last: a bracket, then halves of it made small by the secant.
        double at = near;
        double miss = missing(at);
        double step = 1e-4;
        while (true) {
            double next = Math.clamp(miss > 0 ? at + step : at - step, 1e-3, 1);
            double nextMiss = missing(next);
            if (Math.signum(nextMiss) != Math.signum(miss) || next == 1) {
                low = Math.min(at, next);
                high = Math.max(at, next);
                break;
            }
            at = next;
            miss = nextMiss;
            step *= 4;
        }
        double lowMiss = missing(low);
        double highMiss = missing(high);
        if (highMiss > 0) {
            throw new AssertionError("the reference cannot lift");
        }
        for (int k = 0; k < 100 && high - low > 1e-11; k++) {
            double secant = low + (high - low) * lowMiss / (lowMiss - highMiss);
            double middle = k % 3 == 2 ? (low + high) / 2 : secant;
            double m = missing(middle);
            if (m > 0) {
                low = middle;
                lowMiss = m;
            } else {
                high = middle;
                highMiss = m;
            }
            if (Math.abs(m) < 1e-9 * liftN) {
                break;
            }
        }
        throttle = (low + high) / 2;
    }

    private double missing(double share) {
        throttle = share;
        solve(share);
        double sum = 0;
        for (HotFan fan : fans) {
            sum += fan.thrust * fan.speed * fan.speed;
        }
        return liftN - sum;
    }

    private void solve(double share) {
        network.solve(emfV, packOhm, chainOhm, (fan, volt) -> fans[fan].busA(volt, share));
        boolean[] live = network.live();
        for (int f = 0; f < fans.length; f++) {
            if (live[fanNode[f]]) {
                fans[f].operate(network.volt[fanNode[f]], share);
            } else {
                fans[f].dead();
            }
        }
    }

    /** Voltage at a fan, V. */
    double volt(int fan) {
        return network.volt[fanNode[fan]];
    }

    /** (Ω/Ω_full)^0.7, at least 0.04. */
    double stream(int fan) {
        return Math.max(0.04, Math.pow(fans[fan].speed / fullRadps[fan], 0.7));
    }
}
