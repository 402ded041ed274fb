package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import liftwright.physics.FanUnit;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.FanType;
import liftwright.rig.Rig;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CurrentKind;
import org.junit.jupiter.api.Test;

/** A rig whose fan is known by rows of a stand lifts what the fan that was measured lifts. */
class MeasuredFanTest {

    private static final FanType TRUTH =
            RigSketch.fanType("F", FanType.Data.MEASURED, Optional.empty(), RigSketch.si(1));

    private static Rig rig(FanType type) {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("C"), 14, 1));
        sketch.fans.add(RigSketch.fan("f", 1, type));
        sketch.wire("p.1", "f.1", RigSketch.joint("j", 0.002));
        return sketch.rig();
    }

    /** What a stand reads off the true fan; air of 15 °C and 1013.25 hPa. */
    private static BenchTable table(RandomGenerator random, double drift) {
        double[] unit = new double[FanUnit.COEFFICIENTS];
        unit[FanUnit.THRUST] = 92 / Math.pow(2722.7, 2);
        unit[FanUnit.TORQUE] = 4600 / Math.pow(2722.7, 3);
        unit[FanUnit.KV] = 54.45;
        unit[FanUnit.RESISTANCE] = 0.012 + 0.002;
        unit[FanUnit.NO_LOAD] = 2.5;
        unit[FanUnit.SWITCHING] = 0.08;
        unit[FanUnit.FIXED] = 5;
        unit[FanUnit.CURRENT_LIMIT] = Double.POSITIVE_INFINITY;
        unit[FanUnit.THRUST_DRIFT] = drift;
        unit[FanUnit.REFERENCE_SPEED] = 2722.7;
        List<BenchTable.Row> rows = new ArrayList<>();
        for (double volt : new double[] {42, 47, 52}) {
            for (double duty : new double[] {0.4, 0.5, 0.6, 0.8, 1}) {
                double[] point = new double[FanUnit.RESULTS];
                FanUnit.operate(unit, 0, volt, duty, point, 0);
                double speed = point[FanUnit.SPEED];
                rows.add(
                        new BenchTable.Row(
                                rows.size() + 2,
                                OptionalDouble.of(volt),
                                OptionalDouble.of(duty),
                                OptionalDouble.of(
                                        point[FanUnit.BUS_CURRENT]
                                                * (1 + 0.005 * random.nextGaussian())),
                                OptionalDouble.of(speed),
                                FanUnit.thrustN(unit, 0, speed)
                                        * (1 + 0.005 * random.nextGaussian()),
                                OptionalDouble.empty(),
                                OptionalDouble.of(288.15),
                                OptionalDouble.of(101325),
                                OptionalDouble.empty(),
                                Optional.empty()));
            }
        }
        return new BenchTable("f.csv", CurrentKind.BUS, rows);
    }

    private static FanType measured(BenchTable table) {
        return new FanType(
                TRUTH.name(),
                TRUTH.ducted(),
                TRUTH.tip(),
                TRUTH.hub(),
                TRUTH.exitArea(),
                TRUTH.mass(),
                TRUTH.data(),
                new FanType.Performance.Measured(table, Optional.empty()),
                new FanType.Motor(
                        Optional.empty(), Optional.empty(), Optional.empty(), OptionalInt.of(5)),
                TRUTH.rotor(),
                TRUTH.controller(),
                TRUTH.intake(),
                TRUTH.swirl(),
                TRUTH.scatter(),
                TRUTH.installation(),
                TRUTH.lot(),
                TRUTH.extremes());
    }

    private static double thrustN(Plant plant, double[] p) {
        SteadyState state = plant.state();
        plant.solve(p, Effects.ALL, plant.workspace(), state);
        assertThat(state.converged()).isTrue();
        assertThat(state.closure()).isCloseTo(0, within(1e-9));
        return state.fanThrustN(0);
    }

    @Test
    void liftsWhatTheMeasuredFanLifts() {
        Plant declared = Plant.assemble(rig(TRUTH));
        double wanted = thrustN(declared, declared.parameters().nominal());
        Plant plant = Plant.assemble(rig(measured(table(new SplittableRandom(3), 0))));
        double found = thrustN(plant, plant.parameters().nominal());
        assertThat(found / wanted).isCloseTo(1, within(0.01));
    }

    /** The measured drift reaches the operating point: away from the reference it matters. */
    @Test
    void driftReachesTheOperatingPoint() {
        Plant plant = Plant.assemble(rig(measured(table(new SplittableRandom(3), 0.2))));
        ParameterTable table = plant.parameters();
        double[] p = table.nominal();
        int drift = table.indexOf("fan types/F/bench/drift of thrust over speed");
        assertThat(p[drift]).isCloseTo(0.2, within(0.03));
        double with = thrustN(plant, p);
        p[drift] = 0;
        assertThat(with / thrustN(plant, p)).isGreaterThan(1.01);
    }

    /** Drawn together: thrust at a voltage is far better known than its coefficients apart. */
    @Test
    void drawsKeepWhatWasFittedTogether() {
        Plant plant = Plant.assemble(rig(measured(table(new SplittableRandom(5), 0))));
        ParameterTable table = plant.parameters();
        assertThat(table.inputs())
                .anyMatch(input -> input.at().toString().equals("fan types/F/bench"));
        int ohm = table.indexOf("fan types/F/bench/winding resistance");
        int constant = table.indexOf("fan types/F/bench/speed constant");
        double[] p = new double[table.size()];
        double both = 0;
        double one = 0;
        double other = 0;
        for (int k = 0; k < 2000; k++) {
            table.draw(9, k, p);
            double x = Math.log(p[ohm] / table.nominal()[ohm]);
            double y = Math.log(p[constant] / table.nominal()[constant]);
            both += x * y;
            one += x * x;
            other += y * y;
        }
        assertThat(both / Math.sqrt(one * other)).isGreaterThan(0.5);
        assertThat(Math.sqrt(other / 2000)).isLessThan(0.02);
    }
}
