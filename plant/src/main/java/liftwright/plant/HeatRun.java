package liftwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.heat.HeatStart;
import liftwright.plant.heat.HeatState;
import liftwright.plant.heat.HeatWatch;
import liftwright.plant.supply.Cells;
import liftwright.plant.supply.Circuit;
import liftwright.plant.supply.NetworkState;
import liftwright.plant.supply.SupplyState;
import liftwright.plant.supply.SupplyStepper;
import liftwright.plant.supply.WarmSupply;
import liftwright.plant.supply.Warmed;
import liftwright.rig.Pack;
import liftwright.rig.table.StartState;

/** The heat of one run: what it starts with, what is watched, which fuses are open. */
final class HeatRun {

    /** What hangs on the supply and warms, loaded before each run. */
    interface Warming extends Warmed {
        /**
         * Takes the vector of a run. The units are loaded, cold.
         *
         * @param fullV voltage of each fan with full packs and no current, V; 0 without supply
         */
        void load(double[] p, double[] fullV);
    }

    private final Assembler parts;
    private final HeatBank bank;
    private final Workspace own;
    private final HeatNumbers numbers;
    private final Warming fans;
    private final WarmSupply supply;
    private final HeatStart starts;
    private final HeatWatch watch;
    private final List<Pack> packs;
    private final double[] packK;

    /**
     * @param bank what warms in the rig of {@code parts}
     * @param own scratch of the run
     */
    HeatRun(Assembler parts, HeatBank bank, Workspace own, Circuit circuit) {
        this(
                parts,
                bank,
                own,
                numbers -> new WarmFans(parts.fans, own.units, bank, numbers, circuit));
    }

    /** The same with other loads on the supply. */
    HeatRun(Assembler parts, HeatBank bank, Workspace own, Function<HeatNumbers, Warming> loads) {
        this.parts = parts;
        this.bank = bank;
        this.own = own;
        numbers = bank.newNumbers();
        fans = loads.apply(numbers);
        packs = parts.rig.packs();
        supply = new WarmSupply(bank, numbers, fans);
        starts = new HeatStart(bank, numbers);
        watch = new HeatWatch(bank, numbers);
        packK = new double[packs.size()];
    }

    WarmSupply supply() {
        return supply;
    }

    HeatWatch watch() {
        return watch;
    }

    int parts() {
        return watch.parts();
    }

    /** Takes the numbers of a vector, after the plant has: the units are cold. */
    void load(double[] p) {
        double airK = parts.air.temperatureK(p);
        NetworkState supply = own.network;
        parts.packs.rest(p, false, supply.emfV);
        parts.packs.resistance(p, airK, false, false, supply.packOhm);
        parts.network.rest(supply);
        double[] fullV = new double[parts.rig.fans().size()];
        for (int fan = 0; fan < fullV.length; fan++) {
            fullV[fan] = supply.loadTerminalV(fan);
        }
        bank.load(p, airK, parts.air.pressurePa(p), numbers);
        fans.load(p, fullV);
    }

    static HeatState heat(SupplyState state) {
        return state.heat().orElseThrow();
    }

    /** Everything as declared. */
    void start(SupplyState state, Cells cells) {
        for (int pack = 0; pack < packK.length; pack++) {
            packK[pack] = cells.startK(pack);
        }
        starts.rest(packK, heat(state));
        watch.start(heat(state), state.timeS());
    }

    /** The same with what an earlier run left behind. */
    void start(SupplyState state, Cells cells, StartState from) {
        start(state, cells);
        for (StartState.Row row : from.rows()) {
            if (!starts.take(row, heat(state))) {
                throw new IllegalArgumentException(
                        "nothing that warms is called " + row.part() + " " + row.place().word());
            }
            if (row.charge().isPresent()) {
                double left = row.charge().getAsDouble();
                for (int pack = 0; pack < packK.length; pack++) {
                    if (packs.get(pack).id().text().equals(row.part())) {
                        double gone = cells.startCharge(pack) - left;
                        state.passed(pack, gone * cells.packCapacityAs(pack));
                    }
                }
            }
        }
        watch.start(heat(state), state.timeS());
    }

    /**
     * The present as another run can start from it.
     *
     * @param openedS when each fuse opened; infinite for one that did not
     */
    StartState now(SupplyState state, Cells cells, double[] openedS) {
        double[] left = new double[packK.length];
        for (int pack = 0; pack < left.length; pack++) {
            left[pack] =
                    cells.startCharge(pack) - state.passedAs(pack) / cells.packCapacityAs(pack);
        }
        return new StartState("", new ArrayList<>(starts.rows(heat(state), left, openedS)));
    }

    /** What flows now. */
    void settle(SupplyState state, SupplyStepper stepper) {
        watch.settle(heat(state), stepper.load());
    }

    /** A step, or what is left of it, is over. */
    void step(double fromS, SupplyState state, SupplyStepper stepper, double[] reachedS) {
        watch.step(
                heat(stepper.start()), heat(state), fromS, state.timeS(), stepper.load(), reachedS);
    }

    /** How far a part is below its limit, K. */
    double roomK(SupplyState state, int part) {
        return watch.limitK(part) - watch.nowK(heat(state), part);
    }

    /** How far a fuse is from opening; infinite for any other part. */
    double fuseRoom(SupplyState state, SupplyStepper stepper, int part) {
        return watch.isFuse(part)
                ? watch.fuseRoom(heat(state), stepper.load(), part)
                : Double.POSITIVE_INFINITY;
    }

    /** Soonest that a fuse opens if currents stay as they are, s; infinite where none does. */
    double opensInS(SupplyState state, SupplyStepper stepper) {
        return watch.opensInS(heat(state), stepper.load());
    }

    /** Chain of a fuse. */
    int chain(int part) {
        return bank.parts().get(part).owner();
    }
}
