package liftwright.plant;

import static liftwright.plant.RigSketch.about;
import static liftwright.plant.RigSketch.each;
import static liftwright.plant.RigSketch.si;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import liftwright.plant.supply.CellDraw;
import liftwright.quantity.Quantity;
import liftwright.rig.CellType;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** Cells of one pack are unlike, and the weakest ends the run. */
class UnlikeCellsTest {

    private static final int DRAWS = 2000;
    private static final int SERIES = 14;
    private static final double CAPACITY = 28_800;

    private static Rig rig(Quantity capacity, Quantity resistance, int packs) {
        RigSketch sketch = new RigSketch();
        CellType like = RigSketch.cellType("cell");
        CellType cell =
                new CellType(
                        "cell",
                        "LiPo",
                        Optional.of(capacity),
                        Optional.of(resistance),
                        List.of(),
                        Optional.empty(),
                        CellType.Ageing.NONE,
                        si(0),
                        si(0.165),
                        like.openCircuit(),
                        si(0),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
        for (int k = 1; k <= packs; k++) {
            sketch.packs.add(RigSketch.pack("p", k, cell, SERIES, 1));
            sketch.fans.add(RigSketch.fan("fan", k, RigSketch.fanType("F")));
            sketch.wire("p." + k, "fan." + k, RigSketch.joint("j" + k, 0.001));
        }
        return sketch.rig();
    }

    private static Discharge hover(Plant plant, double[] p, CellDraw draw) {
        Discharge run = plant.discharge();
        run.load(p, draw);
        run.start();
        run.follow(new Order.Throttle(0.7), 40, at -> {});
        assertThat(run.failed()).isFalse();
        return run;
    }

    /**
     * The least of 14 normal deviates is 1.703 standard deviations below their mean on average
     * (Harter 1961, Expected values of normal order statistics, Biometrika 48, table for n = 14,
     * from memory to the third digit); about the pack's own mean it is the same.
     */
    @Test
    void theWeakestCellIsTheOneWithLeastChargeOrMostResistance() {
        Plant plant = Plant.assemble(rig(each(CAPACITY, 0.03), si(0.0009), 1));
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        double[] p = plant.parameters().nominal();
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Discharge run = hover(plant, p, new CellDraw.Drawn(5, draw, asDeclared));
            double passed = run.state().passedAs(0);
            // Least charge left gives the least capacity, and so how far it is below the mean.
            double capacity = passed / (1 - run.leastChargeLeft(0));
            sum += (CAPACITY - capacity) / (0.015 * CAPACITY);
        }
        assertThat(sum / DRAWS).isCloseTo(1.703, within(0.05));
    }

    @Test
    void aCellOfMoreResistanceIsLowerByItsOwnDropAlone() {
        double spread = 0.10;
        Plant plant = Plant.assemble(rig(si(CAPACITY), each(0.0009, spread), 1));
        Plant alike = Plant.assemble(rig(si(CAPACITY), si(0.0009), 1));
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        Discharge mean = hover(alike, alike.parameters().nominal(), new CellDraw.Expected());
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            Discharge run =
                    hover(
                            plant,
                            plant.parameters().nominal(),
                            new CellDraw.Drawn(9, draw, asDeclared));
            double lower = mean.leastCellV(0) - run.leastCellV(0);
            sum += lower / (run.packA(0) * 0.0009 * spread / 2);
        }
        assertThat(sum / DRAWS).isCloseTo(1.703, within(0.06));
    }

    /** Of 154 cells the weakest is expected near −2.6 standard deviations (normal scores). */
    @Test
    void theDeclaredValuesTooHaveAWeakestCell() {
        Plant plant = Plant.assemble(rig(each(CAPACITY, 0.03), si(0.0009), 11));
        Discharge run = hover(plant, plant.parameters().nominal(), new CellDraw.Expected());
        double least = Double.POSITIVE_INFINITY;
        for (int pack = 0; pack < 11; pack++) {
            double capacity = run.state().passedAs(pack) / (1 - run.leastChargeLeft(pack));
            least = Math.min(least, (capacity - CAPACITY) / (0.015 * CAPACITY));
        }
        // About its pack's mean, which itself lies a little off.
        assertThat(least).isCloseTo(-2.6, within(0.45));
    }

    @Test
    void cellsWithASharedErrorAreAlike() {
        Plant plant = Plant.assemble(rig(about(CAPACITY, 0.03), about(0.0009, 0.1), 1));
        Plant alike = Plant.assemble(rig(si(CAPACITY), si(0.0009), 1));
        double[] asDeclared = new double[plant.parameters().inputs().size()];
        Arrays.fill(asDeclared, 1);
        Discharge mean = hover(alike, alike.parameters().nominal(), new CellDraw.Expected());
        Discharge run =
                hover(plant, plant.parameters().nominal(), new CellDraw.Drawn(3, 0, asDeclared));
        assertThat(run.leastCellV(0)).isCloseTo(mean.leastCellV(0), within(1e-9));
        assertThat(run.leastChargeLeft(0)).isCloseTo(mean.leastChargeLeft(0), within(1e-12));
    }
}
