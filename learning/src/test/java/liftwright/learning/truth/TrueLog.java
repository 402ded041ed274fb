package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.DoubleSupplier;
import java.util.function.Predicate;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.trials.predict.TrueElement;
import liftwright.trials.predict.TrueFan;
import liftwright.trials.predict.TruePack;
import liftwright.trials.predict.TrueRig;

/**
 * A test as it truly went, in short fixed steps: thrust that flickers, throttle in steps, air that
 * comes back round the rig, and what is hidden. What is drawn does not depend on what is hidden, so
 * that a cause can be switched off and nothing else changes.
 */
final class TrueLog {

    static final double STEP_S = 0.1;

    private static final double QUANTUM = 1.0 / 250;

    private final Rig declared;
    private final TrueRig rig;
    private final Profile profile;
    private final List<Wrong> wrongs = new ArrayList<>();
    private final double[] up;
    private final double[] wander;
    private final double returns;
    private final double returnS;
    private final double offThrottle;
    private final SplittableRandom flicker;
    private final Map<String, double[]> series = new HashMap<>();
    private final Map<String, DoubleSupplier> channels = new HashMap<>();
    private final int steps;
    private final double[] lift;
    private double back;

    /**
     * @param endS where the log ends
     */
    TrueLog(Rig declared, long seed, Profile profile, List<Hidden> hidden, double endS) {
        this.declared = declared;
        this.profile = profile;
        rig = new TrueRig(declared, seed);
        flicker = new SplittableRandom(seed ^ 0x5DEECE66DL);
        int fans = rig.fans.size();
        up = declared.fans().stream().mapToDouble(TrueLog::up).toArray();
        wander = new double[fans];
        returns = 0.02 * flicker.nextDouble();
        returnS = 5 + 20 * flicker.nextDouble();
        offThrottle = 0.002 * flicker.nextGaussian();
        for (Hidden one : hidden) {
            wrongs.add(new Wrong(one, declared, rig, profile, seed));
        }
        steps = (int) Math.round(endS / STEP_S);
        lift = new double[steps];
        lay();
        go();
    }

    private static double up(Fan fan) {
        Vec3 jet = fan.blows();
        for (Fan.Lean lean : fan.leans()) {
            jet = jet.plus(lean.towards().times(Math.tan(lean.angle().si())));
        }
        return jet.z() / Math.sqrt(jet.x() * jet.x() + jet.y() * jet.y() + jet.z() * jet.z());
    }

    private void lay() {
        for (TrueFan fan : rig.fans) {
            String id = declared.fans().get(fan.number).id().text();
            lay(Signal.THRUST, id, () -> fan.thrustN);
            lay(Signal.SPEED, id, () -> fan.speedRadps);
            lay(Signal.CURRENT, id, () -> fan.busA);
            lay(Signal.WINDING_CURRENT, id, () -> fan.windingA);
        }
        for (TrueRig.Branch branch : rig.branches) {
            if (branch.fan >= 0) {
                String id = declared.fans().get(branch.fan).id().text();
                lay(Signal.VOLTAGE, id, () -> branch.farV);
            }
        }
        for (TruePack pack : rig.packs) {
            String id = pack.declared.id().text();
            lay(Signal.CURRENT, id, () -> pack.amp);
            lay(Signal.VOLTAGE, id, pack::terminalV);
            lay(Signal.CELL_VOLTAGE, id, pack::leastCellV);
            lay(Signal.CHARGE_USED, id, pack::passedAs);
        }
        for (TrueElement element : rig.elements.values()) {
            lay(Signal.TEMPERATURE, element.declared.id().text(), () -> element.kelvin);
        }
        lay(Signal.THRUST, Track.ALL, () -> thrustN(fan -> true));
        lay(Signal.TETHER_LOAD, Track.ALL, () -> Math.max(0, rig.massKg * 9.80665 - liftN()));
        declared.fans().stream()
                .map(fan -> fan.mount().name())
                .distinct()
                .forEach(
                        mount ->
                                lay(
                                        Signal.THRUST,
                                        mount,
                                        () ->
                                                thrustN(
                                                        fan ->
                                                                declared.fans()
                                                                        .get(fan.number)
                                                                        .mount()
                                                                        .name()
                                                                        .equals(mount))));
    }

    private double liftN() {
        double sum = 0;
        for (TrueFan fan : rig.fans) {
            sum += up[fan.number] * fan.thrustN;
        }
        return sum;
    }

    private double thrustN(Predicate<TrueFan> of) {
        double sum = 0;
        for (TrueFan fan : rig.fans) {
            sum += of.test(fan) ? fan.thrustN : 0;
        }
        return sum;
    }

    private void lay(Signal signal, String of, DoubleSupplier value) {
        channels.put(signal.name() + " " + of, value);
        series.put(signal.name() + " " + of, new double[steps]);
    }

    private void go() {
        for (int k = 0; k < steps; k++) {
            double timeS = k * STEP_S;
            air();
            wrongs.forEach(wrong -> wrong.now(timeS));
            rig.solve((fan, volt) -> tell(fan, volt, timeS));
            lift[k] = liftN();
            int at = k;
            channels.forEach(
                    (name, value) ->
                            Objects.requireNonNull(series.get(name))[at] = value.getAsDouble());
            rig.step(STEP_S);
        }
    }

    /** What was blown comes back and thins; what a fan meets is never still. */
    private void air() {
        double share = 0;
        for (TrueFan fan : rig.fans) {
            share += fan.duty / rig.fans.size();
        }
        back += STEP_S / returnS * (share * share - back);
        double kept = Math.exp(-STEP_S / 0.6);
        for (TrueFan fan : rig.fans) {
            int n = fan.number;
            wander[n] = kept * wander[n] + Math.sqrt(1 - kept * kept) * flicker.nextGaussian();
            fan.air = (1 - returns * back) * (1 + 0.006 * wander[n]);
        }
    }

    private void tell(TrueFan fan, double volt, double timeS) {
        double told = profile.at(fan.number, timeS);
        double duty =
                told <= 0
                        ? 0
                        : Math.clamp(Math.rint((told + offThrottle) / QUANTUM) * QUANTUM, 0, 1);
        for (Wrong wrong : wrongs) {
            duty = wrong.duty(fan, duty);
        }
        if (duty <= 0) {
            fan.off();
        } else {
            fan.atDuty(volt, duty);
        }
    }

    int steps() {
        return steps;
    }

    double endS() {
        return steps * STEP_S;
    }

    double airK() {
        return rig.airK;
    }

    double pressurePa() {
        return rig.pressurePa;
    }

    double[] lift() {
        return lift;
    }

    /** Numbers of the fans that hang on each pack. */
    List<List<Integer>> fed() {
        List<List<Integer>> found = new ArrayList<>();
        for (List<TrueRig.Branch> tree : rig.trees) {
            List<Integer> fans = new ArrayList<>();
            tree.forEach(branch -> fed(branch, fans));
            found.add(fans);
        }
        return found;
    }

    private static void fed(TrueRig.Branch branch, List<Integer> fans) {
        if (branch.fan >= 0) {
            fans.add(branch.fan);
        }
        branch.next.forEach(next -> fed(next, fans));
    }

    /** Ids of the joints. */
    List<String> joints() {
        return rig.elements.values().stream()
                .filter(one -> one.declared instanceof Element.Joint)
                .map(one -> one.declared.id().text())
                .sorted()
                .toList();
    }

    /** Whether this truth runs away in its own heat: nobody can test such a rig. */
    boolean burns() {
        return !Double.isFinite(Arrays.stream(lift).sum());
    }

    /** One value for each step. */
    double[] series(Signal signal, String of) {
        return Objects.requireNonNull(
                series.get(signal.name() + " " + of), () -> signal + " of " + of);
    }

    /** What the instrument of a channel makes of a value that is there. */
    double shown(Signal signal, String of, double value, double timeS) {
        double shown = value;
        for (Wrong wrong : wrongs) {
            shown = wrong.shown(signal, of, shown, timeS);
        }
        return shown;
    }
}
