package liftwright.review.wiring;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import liftwright.physics.FuseCurve;
import liftwright.review.wiring.FaultNet.Place;
import liftwright.review.wiring.FaultNet.Spot;
import liftwright.rig.Element;

/**
 * One run with a fault right behind it, fed through it from one side: the fault whose resistance is
 * swept, so that the run carries every current from its steady limit to the prospective one.
 *
 * @param run it is about
 * @param fault where
 * @param near whether the run is fed from its chain's first node
 * @param boltedA current through the run into a dead short, A
 */
record FaultCase(Place<Element.Run> run, Spot fault, boolean near, double boltedA) {

    /** Below this share of the first current a fault counts as cut off. */
    private static final double CUT = 1e-6;

    /** Both faults of a run, where anything flows through it at all. */
    static List<FaultCase> of(FaultNet net, Place<Element.Run> run) {
        List<FaultCase> cases = new ArrayList<>();
        for (boolean near : new boolean[] {true, false}) {
            Spot fault = new Spot(run.chain(), near ? run.place() + 1 : run.place());
            FaultNet.Flow flow = net.solve(fault, 0, Set.of());
            double ampere = flow.through(fault, run.chain(), run.place());
            if (ampere > 1) { // what leaks through an idle side is nothing
                cases.add(new FaultCase(run, fault, near, ampere));
            }
        }
        return cases;
    }

    /** Current through the run, A. */
    double ampere(FaultNet.Flow flow) {
        return flow.through(fault, run.chain(), run.place());
    }

    /**
     * Whether a fuse stands in the way of this current: whether the run carries less once it is
     * open.
     */
    boolean isCutBy(FaultNet net, Place<Element.Fuse> fuse) {
        double without = ampere(net.solve(fault, 0, Set.of(fuse)));
        return without < (1 - 1e-3) * boltedA;
    }

    /** Resistances of the fault at which the run carries evenly spaced currents, greatest last. */
    double[] faultOhms(FaultNet net, double leastA, int steps) {
        double openV = net.solve(fault, 1e9, Set.of()).volt();
        FaultNet.Flow bolted = net.solve(fault, 0, Set.of());
        double inside = openV / (Math.abs(bolted.nearA()) + Math.abs(bolted.farA()));
        double[] ohms = new double[steps + 1];
        for (int k = 0; k < steps; k++) {
            double ampere = leastA * Math.pow(boltedA / leastA, (double) k / steps);
            ohms[k] = inside * (boltedA / ampere - 1);
        }
        return ohms;
    }

    /**
     * What became of the run.
     *
     * @param harmed whether it was harmed before the current ended, or because it never did
     * @param firstA current through it at first, A
     * @param endedS when the current was cut off, or the harm done, s
     */
    record End(boolean harmed, double firstA, double endedS) {}

    /**
     * Runs one fault to its end: fuses open one after the other, currents move over to those that
     * are left, the run warms meanwhile.
     *
     * @param curve of each fuse, as late as it may be
     * @param course of the run, as it was before the fault; used up
     */
    End run(
            FaultNet net,
            double faultOhm,
            List<Place<Element.Fuse>> fuses,
            Function<Place<Element.Fuse>, FuseCurve> curve,
            WireHarm.Course course) {
        Set<Place<Element.Fuse>> open = new HashSet<>();
        double[] theta = new double[fuses.size()];
        double firstA = 0;
        while (true) {
            FaultNet.Flow flow = net.solve(fault, faultOhm, open);
            double ampere = ampere(flow);
            if (open.isEmpty()) {
                firstA = ampere;
            }
            if (ampere < Math.max(CUT * firstA, 1e-3)) {
                return new End(false, firstA, course.timeS());
            }
            double nextS = Double.POSITIVE_INFINITY;
            int next = -1;
            for (int k = 0; k < fuses.size(); k++) {
                Place<Element.Fuse> fuse = fuses.get(k);
                if (!open.contains(fuse)) {
                    FuseCurve own = curve.apply(fuse);
                    double opensS =
                            FuseCurve.opensAfterS(
                                    theta[k],
                                    own.gain(flow.through(fault, fuse.chain(), fuse.place())),
                                    own.timeConstantS());
                    if (opensS < nextS) {
                        nextS = opensS;
                        next = k;
                    }
                }
            }
            if (course.carry(ampere, nextS)) {
                return new End(true, firstA, course.timeS());
            }
            if (next < 0 || nextS > WireHarm.HORIZON_S) {
                return new End(false, firstA, Double.POSITIVE_INFINITY);
            }
            for (int k = 0; k < fuses.size(); k++) {
                FuseCurve own = curve.apply(fuses.get(k));
                double gain =
                        own.gain(flow.through(fault, fuses.get(k).chain(), fuses.get(k).place()));
                theta[k] = FuseCurve.after(theta[k], gain, nextS, own.timeConstantS());
            }
            open.add(fuses.get(next));
        }
    }
}
