package liftwright.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.heat.HeatBank;
import liftwright.plant.heat.HeatLoad;
import liftwright.plant.heat.HeatNumbers;
import liftwright.plant.heat.HeatStart;
import liftwright.plant.heat.HeatState;
import liftwright.plant.heat.HeatStep;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Heat in every part of a rig of 24 fans, 12 packs and over a hundred runs, joints and fuses. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class HeatOfMudlark {

    private static final double STEP_S = 0.1;
    private static final double AIR_K = 285;
    private static final double AIR_PA = 101_000;

    private final Rig rig = Examples.rig(Examples.bytes("mudlark"));
    private final Plant plant = Plant.assembleHeated(rig);
    private final double[] nominal = plant.parameters().nominal();
    private final double weightN = plant.weightN(nominal);
    private final Discharge run = plant.discharge();

    private final HeatStep step;
    private final HeatLoad load;
    private final HeatState from;
    private final HeatState to;

    public HeatOfMudlark() {
        ParameterRows rows = new ParameterRows();
        HeatBank bank = HeatBank.declare(rig, rows);
        HeatNumbers numbers = bank.newNumbers();
        bank.load(rows.table().nominal(), AIR_K, AIR_PA, numbers);
        step = new HeatStep(numbers);
        load = bank.newLoad(numbers);
        Arrays.fill(load.chainA, 90);
        Arrays.fill(load.innerW, 60);
        Arrays.fill(load.outerW, 40);
        Arrays.fill(load.toAirWpK, 3);
        from = numbers.newState();
        to = numbers.newState();
        double[] packK = new double[rig.packs().size()];
        Arrays.fill(packK, AIR_K);
        new HeatStart(bank, numbers).rest(packK, from);
        step.settle(from, load);
    }

    /** One step of heat of all parts, both stages and its error. */
    @Benchmark
    public double update() {
        step.predict(from, load, STEP_S, to);
        step.correct(from, load, load, STEP_S, to);
        step.settle(to, load);
        return step.errorK(from, to, STEP_S);
    }

    private void begin() {
        run.load(nominal, new CellDraw.Expected());
        run.stopAtFirst(false);
        run.start();
    }

    /** A hover of a minute and two minutes of soaking. */
    @Benchmark
    public double hover() {
        begin();
        run.follow(new Order.Lift(weightN), 60, at -> {});
        run.follow(new Order.Throttle(0), 120, at -> {});
        return run.hottestK(0);
    }

    /** Ten minutes: hovers of half a minute with pauses as long. */
    @Benchmark
    public double tenMinutes() {
        begin();
        for (int hop = 0; hop < 10; hop++) {
            run.follow(new Order.Lift(weightN), 30, at -> {});
            run.follow(new Order.Throttle(0), 30, at -> {});
        }
        return run.hottestK(0);
    }
}
