package liftwright.trials.predict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.rig.Control;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Vec3;
import liftwright.trials.Channel;
import liftwright.trials.Run;

/**
 * The steps of a card on a true rig: throttles in coarse steps, a hand that does not hit its lift,
 * thrust that is never still. Fixed short steps.
 */
final class TrueRun {

    static final double STEP_S = 0.1;

    /** Steps of the throttle over its way. */
    private static final double QUANTUM = 1.0 / 250;

    /** What stands before the part that a reading of the hottest is likely of. */
    private static final String LIKELY = "likely ";

    /** Told after each short step; goes on while it says so. */
    @FunctionalInterface
    interface Crew {
        boolean goesOn(double timeS, int step, boolean ends);
    }

    private final TrueRig rig;
    private final Run run;
    private final boolean[] runs;
    private final double[] up;
    private final double[] group;
    private final double weightN;
    private final double offThrottle;
    private double share;
    private double liftN;
    private double energyJ;

    TrueRun(TrueRig rig, Run run) {
        this.rig = rig;
        this.run = run;
        int fans = rig.fans.size();
        runs = new boolean[fans];
        up = new double[fans];
        for (int k = 0; k < fans; k++) {
            Fan fan = rig.rig.fans().get(k);
            runs[k] = run.fans().contains(fan.id());
            up[k] = up(fan);
        }
        group = RandomCard.groupShares(rig.rig);
        weightN = rig.massKg * 9.80665;
        offThrottle = 0.002 * rig.draw.normal();
    }

    private static double up(Fan fan) {
        Vec3 jet = fan.blows();
        for (Fan.Lean lean : fan.leans()) {
            jet = jet.plus(lean.towards().times(Math.tan(lean.angle().si())));
        }
        return jet.z() / Math.sqrt(jet.x() * jet.x() + jet.y() * jet.y() + jet.z() * jet.z());
    }

    /** Runs it; whether it came to its end. */
    boolean go(Crew crew) {
        double timeS = 0;
        double fromLevel = 0;
        for (int step = 0; step < run.steps().size(); step++) {
            Run.Step at = run.steps().get(step);
            double to =
                    switch (at.level()) {
                        case Run.Level.Throttle(double throttle) -> throttle;
                        case Run.Level.OfWeight(double ofWeight) ->
                                ofWeight * (1 + 0.012 * rig.draw.normal());
                    };
            int count = (int) Math.round((at.riseS() + at.holdS()) / STEP_S);
            for (int k = 1; k <= count; k++) {
                double part = Math.min(1, k * STEP_S / at.riseS());
                told(at.level(), fromLevel + part * (to - fromLevel));
                rig.step(STEP_S);
                rig.packs.forEach(pack -> energyJ += pack.terminalV() * pack.amp * STEP_S);
                timeS += STEP_S;
                if (!crew.goesOn(timeS, step, k == count)) {
                    return false;
                }
            }
            fromLevel = to;
        }
        return true;
    }

    /** The fans are told nothing any more; everything goes on to warm. */
    void rest(double forS, Runnable each) {
        for (int k = 0; k < forS / STEP_S; k++) {
            rig.solve((fan, volt) -> fan.off());
            rig.step(STEP_S);
            each.run();
        }
    }

    private void told(Run.Level level, double now) {
        switch (level) {
            case Run.Level.Throttle _ -> throttle(now);
            case Run.Level.OfWeight _ -> {
                if (rig.rig.control().kind() == Control.Kind.FLIGHT_COMPUTER) {
                    shareOut(now * weightN);
                } else {
                    seek(now * weightN);
                }
            }
        }
        liftN = 0;
        for (TrueFan fan : rig.fans) {
            liftN += up[fan.number] * fan.thrustN;
        }
    }

    private void throttle(double now) {
        share = now;
        double coarse = Math.clamp(Math.rint((now + offThrottle) / QUANTUM) * QUANTUM, 0, 1);
        rig.solve(
                (fan, volt) -> {
                    if (runs[fan.number]) {
                        fan.atDuty(volt, coarse * group[fan.number]);
                    } else {
                        fan.off();
                    }
                });
    }

    private void seek(double wantedN) {
        for (int k = 0; k < 4; k++) {
            throttle(Math.max(share, 0.02));
            double sum = 0;
            for (TrueFan fan : rig.fans) {
                sum += up[fan.number] * fan.thrustN;
            }
            share = Math.clamp(Math.max(share, 0.02) * Math.sqrt(wantedN / sum), 0, 1);
        }
    }

    private void shareOut(double wantedN) {
        double squares = 0;
        for (int k = 0; k < up.length; k++) {
            squares += runs[k] ? up[k] * up[k] : 0;
        }
        double each = wantedN / squares;
        rig.solve(
                (fan, volt) -> {
                    if (runs[fan.number]) {
                        fan.atThrust(volt, each * up[fan.number]);
                    } else {
                        fan.off();
                    }
                });
    }

    /** The true value of a reading now. */
    double value(Channel channel) {
        return switch (channel.field()) {
            case "card-thrust" -> rig.fans.stream().mapToDouble(fan -> fan.thrustN).sum();
            case "card-mount-thrust" ->
                    rig.fans.stream()
                            .filter(fan -> mount(fan).equals(channel.part()))
                            .mapToDouble(fan -> fan.thrustN)
                            .sum();
            case "card-tether-load" -> Math.max(0, weightN - liftN);
            case "card-energy" -> energyJ;
            case "card-pack-current" -> most(rig.packs.stream().map(pack -> pack.amp).toList());
            case "card-cell-voltage" -> least(true);
            case "card-charge-left" -> least(false);
            default -> ofFansAndWires(channel);
        };
    }

    private double ofFansAndWires(Channel channel) {
        String part = channel.part();
        int from = part.lastIndexOf(LIKELY);
        String likely = from < 0 ? part : part.substring(from + LIKELY.length());
        return switch (channel.field()) {
            case "card-fan-speed" ->
                    worst(
                            likely,
                            fan -> fan.speedRadps,
                            type -> type.rotor().topSpeed().map(q -> q.si()));
            case "card-winding-current" ->
                    worst(
                            likely,
                            fan -> fan.windingA,
                            type -> type.controller().currentLimit().map(q -> q.si()));
            case "card-controller" -> worst(likely, fan -> fan.junctionK, type -> Optional.of(1.0));
            case "card-winding" ->
                    worst(
                            likely,
                            fan -> fan.windingK,
                            type -> type.motor().heating().windingClassK().map(q -> q.si()));
            case "card-magnets" ->
                    worst(
                            likely,
                            fan -> fan.caseK,
                            type -> Optional.of(type.motor().heating().grade().mostK().orElse(0)));
            case "card-cells" -> most(used().stream().map(pack -> pack.coreK).toList());
            case "card-wire" -> hottest(likely);
            case "card-joint" -> hottest(likely);
            default -> throw new IllegalArgumentException(channel.field());
        };
    }

    private List<TruePack> used() {
        List<TruePack> found = new ArrayList<>();
        for (int k = 0; k < rig.packs.size(); k++) {
            if (rig.trees.get(k).stream().anyMatch(this::feeds)) {
                found.add(rig.packs.get(k));
            }
        }
        return found;
    }

    /** Whether a fan that runs hangs on a branch. */
    private boolean feeds(TrueRig.Branch branch) {
        return (branch.fan >= 0 && runs[branch.fan]) || branch.next.stream().anyMatch(this::feeds);
    }

    private double least(boolean voltage) {
        return used().stream()
                .mapToDouble(pack -> voltage ? pack.leastCellV() : pack.chargeLeft())
                .min()
                .orElseThrow();
    }

    private String mount(TrueFan fan) {
        return rig.rig.fans().get(fan.number).mount().name();
    }

    private static double most(List<Double> of) {
        return of.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    @FunctionalInterface
    private interface Limit {
        Optional<Double> of(FanType type);
    }

    private double worst(String likely, ToDoubleFunction<TrueFan> value, Limit limit) {
        Optional<Double> wanted =
                rig.rig.fans().stream()
                        .filter(fan -> fan.id().text().equals(likely))
                        .map(fan -> limit.of(fan.type()))
                        .findFirst()
                        .orElseThrow();
        return rig.fans.stream()
                .filter(fan -> runs[fan.number] && limit.of(fan.type).equals(wanted))
                .mapToDouble(value)
                .max()
                .orElseThrow();
    }

    /** Hottest of the kind and class of one element, in chains that carry current. */
    private double hottest(String likely) {
        TrueElement named = Objects.requireNonNull(rig.elements.get(likely), likely);
        return rig.branches.stream()
                .filter(this::feeds)
                .flatMap(branch -> branch.elements.stream())
                .filter(one -> alike(one.declared, named.declared))
                .mapToDouble(one -> one.kelvin)
                .max()
                .orElse(named.kelvin);
    }

    private static boolean alike(Element one, Element other) {
        return switch (one) {
            case Element.Run run ->
                    other instanceof Element.Run that
                            && that.covering().classK() == run.covering().classK();
            case Element.Joint _ -> other instanceof Element.Joint;
            case Element.Fuse _, Element.Pole _ -> false;
        };
    }

    /** Faults that can be put into the truth, so that something goes further than predicted. */
    void spoil(int which, double by) {
        switch (which) {
            case 0 -> rig.packs.forEach(pack -> pack.worn = by);
            case 1 -> rig.fans.forEach(fan -> fan.hungry = by);
            case 2 ->
                    rig.elements.values().stream()
                            .filter(one -> one.declared instanceof Element.Joint)
                            .forEach(one -> one.worn = by * by);
            default ->
                    rig.elements.values().stream()
                            .filter(one -> one.declared instanceof Element.Run)
                            .forEach(one -> one.worn = by);
        }
    }

    @Override
    public String toString() {
        return "true run of " + Arrays.toString(runs);
    }
}
