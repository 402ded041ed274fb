package liftwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import liftwright.plant.LossPoint;
import liftwright.plant.Losses;
import liftwright.plant.Plant;
import liftwright.plant.fault.CutClass;
import liftwright.plant.fault.Effect;
import liftwright.plant.fault.Faults;
import liftwright.rig.Rig;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Losses of a rig of 24 fans and 12 packs with a flight computer: for each the network with all
 * survivors at full throttle, trims and all reserves with yaw held and free. On one thread.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class LossesOfMudlark {

    private final Rig rig = steered();
    private final Plant plant = Plant.assemble(rig);
    private final double[] p = plant.parameters().nominal();
    private final Losses losses = plant.losses(Losses.Charge.JUDGED);
    private final Losses.Worker worker = losses.worker();
    private final List<Effect> singlesAndPairs = new ArrayList<>();
    private final List<Effect> triples = new ArrayList<>();
    private final List<Effect> classPairs = new ArrayList<>();
    private int next;

    /** Mudlark with a flight computer in place of its throttle. */
    private static Rig steered() {
        String text = new String(Examples.bytes("mudlark"), StandardCharsets.UTF_8);
        String other = text.replace("kind: shared throttle", "kind: flight computer");
        if (other.equals(text)) {
            throw new IllegalStateException("Mudlark has no shared throttle");
        }
        return Examples.rig(other.getBytes(StandardCharsets.UTF_8));
    }

    @Setup
    public void build() {
        List<Effect> singles = new ArrayList<>();
        IntStream.range(0, rig.fans().size()).forEach(fan -> singles.add(Effect.dead(fan)));
        IntStream.range(0, rig.packs().size()).forEach(pack -> singles.add(Effect.lost(pack)));
        singlesAndPairs.addAll(singles);
        pairs(singles, singlesAndPairs);
        for (int one = 0; one < rig.fans().size(); one++) {
            for (int two = one + 1; two < rig.fans().size(); two++) {
                for (int three = two + 1; three < rig.fans().size(); three++) {
                    triples.add(Effect.dead(one, two, three));
                }
            }
        }
        List<Effect> classes =
                CutClass.of(Faults.of(rig)).stream()
                        .map(CutClass::effect)
                        .filter(effect -> !effect.isNone() && effect.stuckDuty().isEmpty())
                        .filter(effect -> effect.reversedFans().length == 0)
                        .filter(effect -> effect.exchangedChannels().isEmpty())
                        .filter(effect -> effect.deadFans().length < rig.fans().size())
                        .toList();
        pairs(classes, classPairs);
        worker.load(p);
        if (singlesAndPairs.size() != 666 || triples.size() != 2024 || classPairs.size() < 600) {
            throw new IllegalStateException("not the rig to measure: " + classPairs.size());
        }
        singlesAndPairs();
    }

    private static void pairs(List<Effect> singles, List<Effect> out) {
        for (int one = 0; one < singles.size(); one++) {
            for (int other = one + 1; other < singles.size(); other++) {
                out.add(singles.get(one).and(singles.get(other)));
            }
        }
    }

    private double all(List<Effect> effects) {
        double sum = 0;
        for (Effect effect : effects) {
            if (!worker.lose(effect)) {
                throw new IllegalStateException("no operating point after " + effect);
            }
            LossPoint.Trims held = worker.trims(true, worker.weightN());
            LossPoint.Trims free = worker.trims(false, worker.weightN());
            if (held.gap() > 1e-9 || free.gap() > 1e-9) {
                throw new IllegalStateException("not proved after " + effect);
            }
            sum += worker.liftN() + held.reserves().size() + free.reserves().size();
        }
        return sum;
    }

    /** 36 singles and 630 pairs. */
    @Benchmark
    public double singlesAndPairs() {
        return all(singlesAndPairs);
    }

    /** 2024 triples of fans. */
    @Benchmark
    public double fanTriples() {
        return all(triples);
    }

    /** All pairs of classes of losses that come to the same. */
    @Benchmark
    public double classPairs() {
        return all(classPairs);
    }

    /** One loss with all that is told of it: currents in the trim of least power, limits, index. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public LossPoint told() {
        next = (next + 1) % singlesAndPairs.size();
        return worker.at(p, singlesAndPairs.get(next));
    }
}
