package liftwright.plant.heat;

import java.util.Arrays;
import java.util.List;
import liftwright.rig.Rig;

/** A {@link HeatedRig} in time, with what is asked of the product: limits, peaks, fuses. */
final class HeatedRigRun {

    final HeatedRig model;
    final Extrapolation run;
    final double[] reachedS;
    final double[] hottestK;
    final double[] openedS;
    private final Rig rig;
    private final List<HeatPart> parts;

    HeatedRigRun(Rig rig, List<HeatPart> parts, RefereeGrid grid) {
        this.rig = rig;
        this.parts = parts;
        model = new HeatedRig(rig, grid, AirTable.STANDARD);
        run = new Extrapolation(model, model.start());
        reachedS = new double[parts.size()];
        Arrays.fill(reachedS, Double.POSITIVE_INFINITY);
        hottestK = new double[parts.size()];
        openedS = new double[model.fuses()];
        Arrays.fill(openedS, Double.POSITIVE_INFINITY);
    }

    void throttle(double share) {
        model.throttle(share);
        run.restart();
    }

    void lift(double newton) {
        model.lift(newton);
        run.restart();
    }

    /** Temperature of a part, K. */
    double kelvin(double[] y, int part) {
        HeatPart of = parts.get(part);
        return switch (of.kind()) {
            case WIRE, JOINT, FUSE, POLE ->
                    model.elementK(y, of.owner(), HeatedRigs.element(rig, of.owner(), of.id()));
            case SWITCHES -> model.junctionK(y, of.owner());
            case CONTROLLER -> model.sinkK(y, of.owner());
            case WINDING -> model.windingK(y, of.owner());
            case MAGNETS -> model.caseK(y, of.owner());
            case CELLS -> model.coreK(y, of.owner());
        };
    }

    double nowK(int part) {
        return kelvin(run.state(), part);
    }

    void go(double forS) {
        double until = run.timeS() + forS;
        while (run.timeS() < until) {
            run.step(until);
            grow();
            open();
            for (int part = 0; part < reachedS.length; part++) {
                int of = part;
                double limitK = parts.get(part).limitK();
                if (reachedS[part] == Double.POSITIVE_INFINITY
                        && run.reached(y -> kelvin(y, of), limitK)) {
                    reachedS[part] = run.when(y -> kelvin(y, of), limitK);
                }
                hottestK[part] = Math.max(hottestK[part], kelvin(run.state(), part));
            }
        }
    }

    /** The first joint that passed its limit either way within the step ends it there. */
    private void grow() {
        int first = -1;
        double when = Double.POSITIVE_INFINITY;
        for (int joint = 0; joint < model.growingJoints(); joint++) {
            int of = joint;
            double sign = model.grows(joint) ? -1 : 1;
            if (run.reached(y -> sign * model.aboveK(y, of), 1e-9)) {
                double whenS = run.when(y -> sign * model.aboveK(y, of), 1e-9);
                first = whenS < when ? joint : first;
                when = Math.min(when, whenS);
            }
        }
        if (first >= 0) {
            run.backTo(when);
            model.grows(first, !model.grows(first));
            run.restart();
        }
    }

    /** The first fuse that opened within the step ends it there. */
    private void open() {
        int first = -1;
        double when = Double.POSITIVE_INFINITY;
        for (int fuse = 0; fuse < openedS.length; fuse++) {
            int at = model.fuseComponent(fuse);
            if (openedS[fuse] == Double.POSITIVE_INFINITY && run.reached(y -> y[at], 1)) {
                double whenS = run.when(y -> y[at], 1);
                if (whenS < when) {
                    when = whenS;
                    first = fuse;
                }
            }
        }
        if (first >= 0) {
            openedS[first] = when;
            run.backTo(when);
            model.open(model.chainOfFuse(first));
            run.restart();
        }
    }
}
