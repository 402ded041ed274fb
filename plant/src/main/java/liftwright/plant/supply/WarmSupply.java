package liftwright.plant.supply;

import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatLoad;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.heat.HeatState;
import liftwright.plant.heat.HeatStep;

/**
 * The heat of a supply in its step: hands temperatures to what has a resistance, gathers what makes
 * heat at a solved point, and moves temperatures with it. For one thread.
 */
public final class WarmSupply {

    /** Error of one step allowed in a temperature, K. */
    private static final double ERROR_K = 0.02;

    /** Error of one step allowed in the state of a fuse. */
    private static final double FUSE_ERROR = 2e-4;

    /** What the errors allowed are multiplied with. */
    private double allowed = 1;

    private final HeatBank bank;
    private final HeatNumbers numbers;
    private final HeatStep step;
    private final Warmed loads;
    private final HeatLoad present;
    private final HeatLoad near;
    private final HeatLoad far;
    private final HeatLoad found;

    /**
     * @param numbers filled before each run
     * @param loads what hangs on the supply
     */
    public WarmSupply(HeatBank bank, HeatNumbers numbers, Warmed loads) {
        this.bank = bank;
        this.numbers = numbers;
        this.loads = loads;
        step = new HeatStep(numbers);
        present = bank.newLoad(numbers);
        near = bank.newLoad(numbers);
        far = bank.newLoad(numbers);
        found = bank.newLoad(numbers);
    }

    /**
     * Allows other errors than usual, to see what a run owes to its steps.
     *
     * @param share of the usual ones, &gt; 0
     */
    public void allow(double share) {
        allowed = share;
    }

    /** What makes heat at the present moment. */
    HeatLoad present() {
        return present;
    }

    /** What made it at the start of the last step. */
    HeatLoad near() {
        return near;
    }

    HeatState newState() {
        return numbers.newState();
    }

    private static HeatState heat(SupplyState at) {
        return at.heat().orElseThrow();
    }

    /** Resistances as warm as everything is. */
    void take(SupplyState at, NetworkState network, Cells cells) {
        HeatState heat = heat(at);
        numbers.resistance(heat, network.chainOhm);
        for (int pack = 0; pack < cells.packs(); pack++) {
            at.warmth[pack] = cells.warmth(pack, numbers.innerK(heat, bank.meanCell(pack)));
        }
        loads.warm(heat);
    }

    /** Gathers what makes heat at the point just solved, and what each body keeps of it. */
    private void tell(SupplyState at, NetworkState network, Cells cells, HeatLoad out) {
        System.arraycopy(network.chainA, 0, out.chainA, 0, out.chainA.length);
        double given = 0;
        for (int pack = 0; pack < cells.packs(); pack++) {
            double current = network.packA(pack);
            double passed = at.passedAs[pack];
            double slow = cells.slowW(pack, passed, at.slowV, at.warmth[pack]);
            int count = cells.series[pack] * cells.parallel[pack];
            double links = current * current * cells.interconnectOhm[pack];
            double fast = current * current * network.packOhm[pack] - links;
            int mean = bank.meanCell(pack);
            int most = bank.warmestCell(pack);
            double worse = cells.share[cells.mostResistance(pack)];
            out.innerW[mean] = fast / count + slow;
            out.innerW[most] = worse * fast / count + slow;
            out.outerW[mean] = links / count;
            out.outerW[most] = links / count;
            out.toAirWpK[mean] = numbers.fullAirWpK(bank.meanCell(pack));
            out.toAirWpK[most] = numbers.fullAirWpK(bank.meanCell(pack));
            out.packW[pack] = fast + links + count * slow;
            given += network.emfV[pack] * current + count * slow;
        }
        out.givenW = given;
        loads.tell(network, out);
        numbers.gains(out);
    }

    /** The present moment, solved. */
    void settle(SupplyState at, NetworkState network, Cells cells) {
        tell(at, network, cells, present);
        step.settle(heat(at), present);
    }

    /**
     * A step over a time in which charge has moved already: from the present load to the one at the
     * point last solved. What has a resistance is then as warm as the end.
     *
     * @param scratch its temperatures are overwritten
     * @param at settled; in: temperatures at the start, all else at the end
     */
    void follow(SupplyState scratch, SupplyState at, double h, NetworkState network, Cells cells) {
        heat(scratch).copyFrom(heat(at));
        tell(at, network, cells, far);
        step.predict(heat(scratch), present, h, heat(at));
        step.correct(heat(scratch), present, far, h, heat(at));
        take(at, network, cells);
        settle(at, network, cells);
    }

    /** A step begins at the present moment. */
    void begin() {
        near.copyFrom(present);
    }

    void predict(SupplyState start, double h, SupplyState end) {
        step.predict(heat(start), near, h, heat(end));
    }

    /** The far end as predicted, solved. */
    void meet(SupplyState end, NetworkState network, Cells cells) {
        tell(end, network, cells, far);
    }

    void correct(SupplyState start, double h, SupplyState end) {
        step.correct(heat(start), near, far, h, heat(end));
    }

    /**
     * The far end as corrected, solved.
     *
     * @return error of the step over what is allowed
     */
    double close(SupplyState start, SupplyState end, double h, NetworkState network, Cells cells) {
        tell(end, network, cells, found);
        step.settle(heat(end), found);
        double kelvin = step.errorK(heat(start), heat(end), h) / ERROR_K;
        return Math.max(kelvin, step.fuseError(far, found, h) / FUSE_ERROR) / allowed;
    }

    /** The step is over: its far end is the present. */
    void arrive() {
        present.copyFrom(found);
    }

    /** The present at a share of the last step, found by a shorter step. */
    void look(SupplyState start, double share, double lastS, SupplyState at) {
        HeatState to = heat(at);
        if (share * lastS == 0) {
            to.copyFrom(heat(start));
            present.copyFrom(near);
            return;
        }
        present.between(near, far, share);
        step.predict(heat(start), near, share * lastS, to);
        step.correct(heat(start), near, present, share * lastS, to);
        step.settle(to, present);
    }
}
