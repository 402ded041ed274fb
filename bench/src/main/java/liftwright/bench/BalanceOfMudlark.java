package liftwright.bench;

import java.util.concurrent.TimeUnit;
import liftwright.numerics.Work;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.review.BalanceAnswer;
import liftwright.review.BalanceQuestion;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** What turns a rig of 24 fans, 12 packs and a posed wearer at lift-off. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BalanceOfMudlark {

    private static final Settings SETTINGS = new Settings(7, 256, 256, 2, false);

    private final Rig rig = Examples.rig(Examples.bytes("mudlark"));
    private final Balancing balancing = Balancing.of(rig);
    private final Balancing.Worker worker = balancing.worker();
    private final double[] declared = balancing.parameters().nominal();

    @Setup
    public void look() {
        if (!worker.liftOff(declared).lifts()) {
            throw new IllegalStateException("Mudlark does not lift: nothing to measure");
        }
    }

    /** As a question does it: assembled from the rig, lift-off found once. */
    @Benchmark
    public HoverPoint nominal() {
        Balancing fresh = Balancing.of(rig);
        return fresh.worker().liftOff(fresh.parameters().nominal());
    }

    /** One lift-off with its ledger. */
    @Benchmark
    public HoverPoint liftOff() {
        return worker.liftOff(declared);
    }

    /** The question itself, bands of 256 draws on two threads and findings, without remedies. */
    @Benchmark
    public BalanceAnswer bands() {
        return BalanceQuestion.ask(rig, "none", SETTINGS, Work.quiet()).orElseThrow();
    }
}
