package liftwright.bench;

import java.util.concurrent.TimeUnit;
import liftwright.numerics.Work;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.Workspace;
import liftwright.review.LiftAnswer;
import liftwright.review.LiftQuestion;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** Lift of a rig of 24 fans and 12 packs at full throttle, on one thread. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LiftOfMudlark {

    private static final Settings SETTINGS = new Settings(7, 256, 256, 1, false);

    private final Rig rig = Examples.rig(Examples.bytes("mudlark"));
    private final Plant plant = Plant.assemble(rig);
    private final Workspace workspace = plant.workspace();
    private final SteadyState state = plant.state();
    private final double[] nominal = plant.parameters().nominal();

    @Setup
    public void look() {
        plant.solve(nominal, Effects.ALL, workspace, state);
        if (!state.converged() || state.liftN() <= 0) {
            throw new IllegalStateException("Mudlark does not lift: nothing to measure");
        }
    }

    /** As a question does it: assembled from the rig, solved once. */
    @Benchmark
    public double nominal() {
        var fresh = Plant.assemble(rig);
        var p = fresh.parameters().nominal();
        fresh.solve(p, Effects.ALL, workspace, state);
        return state.liftN() / fresh.weightN(p);
    }

    /** One operating point; allocates nothing. */
    @Benchmark
    public double solve() {
        plant.solve(nominal, Effects.ALL, workspace, state);
        return state.liftN();
    }

    /** The question itself, bands of 256 draws and findings, without remedies. */
    @Benchmark
    public LiftAnswer bands() {
        return LiftQuestion.ask(rig, "none", SETTINGS, Work.quiet()).orElseThrow();
    }
}
