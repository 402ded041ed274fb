package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import liftwright.plant.RigSketch;
import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What happens between the ends of a step is read off the cubic through both. */
class HeatWatchTest {

    private final HeatBank bank;
    private final HeatNumbers n;
    private final HeatWatch watch;
    private final HeatState from;
    private final HeatState to;
    private final double[] reachedS;
    private final int magnets;

    HeatWatchTest() {
        RigSketch sketch = new RigSketch();
        sketch.packs.add(RigSketch.pack("p", 1, RigSketch.cellType("cell"), 14, 1));
        sketch.fans.add(RigSketch.fan("fan", 1, RigSketch.fanType("F")));
        Rig rig = sketch.wire("p.1", "fan.1", RigSketch.run("wire", 12, 0.5)).rig();
        ParameterRows rows = new ParameterRows();
        bank = HeatBank.declare(rig, rows);
        n = bank.newNumbers();
        bank.load(rows.table().nominal(), 290, 101_325, n);
        watch = new HeatWatch(bank, n);
        from = n.newState();
        to = n.newState();
        for (HeatState state : new HeatState[] {from, to}) {
            Arrays.fill(state.kelvin, 290);
            Arrays.fill(state.grown, 1);
        }
        reachedS = new double[bank.parts().size()];
        Arrays.fill(reachedS, Double.POSITIVE_INFINITY);
        magnets = 4;
        assertThat(bank.parts().get(magnets).kind()).isEqualTo(HeatPart.Kind.MAGNETS);
    }

    private void magnetsFrom(double startK, double risesKps, double endK, double fallsKps) {
        int place = n.outer(bank.motor(0));
        from.kelvin[place] = startK;
        from.keptW[place] = risesKps * n.capacityJpK[place];
        to.kelvin[place] = endK;
        to.keptW[place] = -fallsKps * n.capacityJpK[place];
    }

    private void step(double fromS, double toS) {
        watch.start(from, fromS);
        watch.step(from, to, fromS, toS, bank.newLoad(n), reachedS);
    }

    /** 4 s (1 − s) over four seconds has its top of one kelvin in the middle. */
    @Test
    void aCrestWithinAStepIsTheHottestMoment() {
        magnetsFrom(340, 1, 340, 1);
        step(10, 14);
        assertThat(watch.hottestK(magnets)).isCloseTo(341, within(1e-9));
        assertThat(watch.hottestAtS(magnets)).isCloseTo(12, within(1e-9));
        assertThat(reachedS[magnets]).isInfinite();
    }

    /** The same half a kelvin below the limit passes it at 10 s + 4 s · (1 − √½)/2. */
    @Test
    void aLimitPassedAndLeftWithinAStepIsFound() {
        double limitK = bank.parts().get(magnets).limitK();
        magnetsFrom(limitK - 0.5, 1, limitK - 0.5, 1);
        step(10, 14);
        assertThat(reachedS[magnets]).isCloseTo(10 + 4 * (1 - Math.sqrt(0.5)) / 2, within(1e-5));
    }

    /** A straight rise meets the limit where it does. */
    @Test
    void aLimitPassedIsFound() {
        double limitK = bank.parts().get(magnets).limitK();
        magnetsFrom(limitK - 1, 0.5, limitK + 1, -0.5);
        step(0, 4);
        assertThat(reachedS[magnets]).isCloseTo(2, within(1e-5));
        assertThat(watch.hottestK(magnets)).isCloseTo(limitK + 1, within(1e-9));
        assertThat(watch.hottestAtS(magnets)).isEqualTo(4);
    }

    /** An early top of a lopsided step, and one that only seems to be there. */
    @Test
    void aLopsidedCrestIsFoundWhereTheCubicHasIt() {
        magnetsFrom(330, 3, 329, 0.2);
        step(0, 2);
        double best = 0;
        double when = 0;
        for (int k = 0; k <= 200_000; k++) {
            double s = k / 200_000.0;
            double left = 1 - s;
            double kelvin = 330 - s * s * (3 - 2 * s) + s * left * (6 * left + 0.4 * s);
            if (kelvin > best) {
                best = kelvin;
                when = 2 * s;
            }
        }
        assertThat(watch.hottestK(magnets)).isCloseTo(best, within(1e-8));
        assertThat(watch.hottestAtS(magnets)).isCloseTo(when, within(1e-4));
    }
}
