package liftwright.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import liftwright.numerics.Work;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.supply.CellDraw;
import liftwright.review.EnduranceAnswer;
import liftwright.review.EnduranceQuestion;
import liftwright.review.Settings;
import liftwright.review.Task;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Hover of a rig of 24 fans and 12 packs of 14 unlike cells until its first limit. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class EnduranceOfMudlark {

    private static final int DRAWS = 256;
    private static final Settings SETTINGS = new Settings(7, DRAWS, DRAWS, 2, false);
    private static final double LONG_S = 20_000;

    private final Rig rig = Examples.rig(Examples.bytes("mudlark"));
    private final Plant plant = Plant.assemble(rig);
    private final double[] nominal = plant.parameters().nominal();
    private final double[] drawn = nominal.clone();
    private final double[] asDeclared = ones(plant.parameters().inputs().size());
    private final Discharge run = plant.discharge();

    private static double[] ones(int count) {
        double[] ones = new double[count];
        Arrays.fill(ones, 1);
        return ones;
    }

    private double hover(double[] p, CellDraw draw) {
        run.load(p, draw);
        run.stopAtFirst(true);
        run.start();
        run.follow(new Order.Lift(plant.weightN(p)), LONG_S, at -> {});
        return run.firstS();
    }

    /** One hover at the declared values. */
    @Benchmark
    public double nominal() {
        return hover(nominal, new CellDraw.Expected());
    }

    /** Hovers of 256 draws, one thread. */
    @Benchmark
    public double draws() {
        double sum = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            plant.parameters().draw(7, draw, drawn);
            sum += hover(drawn, new CellDraw.Drawn(7, draw, asDeclared));
        }
        return sum;
    }

    /** The question itself, bands of 256 draws on two threads and findings, without remedies. */
    @Benchmark
    public EnduranceAnswer bands() {
        return EnduranceQuestion.ask(rig, "none", new Task.Hover(), SETTINGS, Work.quiet())
                .orElseThrow();
    }
}
