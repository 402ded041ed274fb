package liftwright.learning.truth;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.trials.predict.TrueFan;
import liftwright.trials.predict.TruePack;
import liftwright.trials.predict.TrueRig;

/** What is hidden, at work in a true rig. */
final class Wrong {

    private final Hidden hidden;
    private final TrueRig rig;
    private final Profile profile;
    private final List<Integer> fans;
    private final SplittableRandom random;
    private double mostDuty = 1;
    private double nextS;
    private boolean stalled;
    private boolean begun;
    private double timeS;

    Wrong(Hidden hidden, Rig declared, TrueRig rig, Profile profile, long seed) {
        this.hidden = hidden;
        this.rig = rig;
        this.profile = profile;
        random = new SplittableRandom(seed * 31 + hidden.kind().name().hashCode());
        List<Fan> all = declared.fans();
        fans =
                rig.fans.stream()
                        .map(fan -> fan.number)
                        .filter(
                                n ->
                                        hidden.part().equals("all")
                                                || all.get(n).id().text().equals(hidden.part())
                                                || all.get(n).mount().name().equals(hidden.part()))
                        .toList();
    }

    /** Sets what changes by itself. */
    void now(double timeS) {
        this.timeS = timeS;
        if (timeS < hidden.fromS()) {
            return;
        }
        if (!begun) {
            begun = true;
            begin();
        }
        if (timeS >= nextS) {
            nextS = timeS + 0.5 + 2.5 * random.nextDouble();
            mostDuty = random.nextDouble() < 0.35 ? 1 : 1 - hidden.size() * random.nextDouble();
        }
        for (int n : fans) {
            shape(rig.fans.get(n));
        }
    }

    private void begin() {
        double size = hidden.size();
        switch (hidden.kind()) {
            case WEAK_FAN, INSTALLATION -> fans.forEach(n -> rig.fans.get(n).weak *= 1 - size);
            case HUNGRY_FAN -> fans.forEach(n -> rig.fans.get(n).hungry *= 1 + size);
            case LOST_MAGNETS -> fans.forEach(n -> rig.fans.get(n).fast *= 1 + size);
            case BAD_JOINT ->
                    Objects.requireNonNull(rig.elements.get(hidden.part())).addedOhm += size;
            case WORN_PACK -> pack().worn *= size;
            case LOW_PACK -> pack().missing += size;
            case HELD_BACK,
                    DEAD_FAN,
                    WRONG_SCALE,
                    BENT_LIP,
                    WET_CONTROLLER,
                    LOOSE_CABLE,
                    RESONANCE,
                    WRONG_CURVE -> {}
        }
    }

    private TruePack pack() {
        return rig.packs.stream()
                .filter(pack -> pack.declared.id().text().equals(hidden.part()))
                .findFirst()
                .orElseThrow();
    }

    private void shape(TrueFan fan) {
        double size = hidden.size();
        double share = fan.speedRadps / fan.fullRadps;
        switch (hidden.kind()) {
            case BENT_LIP -> {
                stalled = stalled ? share > 0.42 : share > 0.62;
                fan.weak = stalled ? 1 - size * (0.4 + 0.6 * share) : 1;
                fan.hungry = stalled ? 1 - 0.35 * size * share : 1 + 0.3 * size * (1 - share);
            }
            case RESONANCE -> {
                double middle = 0.72 * profile.top();
                double off = (profile.at(fan.number, timeS) - middle) / (0.14 * profile.top());
                double shakes = size * Math.exp(-off * off);
                fan.weak = 1 - shakes * (1 + 0.3 * random.nextGaussian());
                fan.hungry = 1 + 0.5 * shakes;
            }
            case WEAK_FAN,
                    HUNGRY_FAN,
                    LOST_MAGNETS,
                    BAD_JOINT,
                    WORN_PACK,
                    LOW_PACK,
                    HELD_BACK,
                    DEAD_FAN,
                    WRONG_SCALE,
                    INSTALLATION,
                    WET_CONTROLLER,
                    LOOSE_CABLE,
                    WRONG_CURVE -> {}
        }
    }

    /** Duty that a fan gets where it is told one. */
    double duty(TrueFan fan, double duty) {
        if (!begun || !fans.contains(fan.number)) {
            return duty;
        }
        return switch (hidden.kind()) {
            case HELD_BACK -> Math.min(duty, hidden.size());
            case DEAD_FAN -> 0;
            case WET_CONTROLLER -> Math.min(duty, mostDuty);
            case WRONG_CURVE -> Math.pow(duty, hidden.size());
            case WEAK_FAN,
                    HUNGRY_FAN,
                    LOST_MAGNETS,
                    BAD_JOINT,
                    WORN_PACK,
                    LOW_PACK,
                    WRONG_SCALE,
                    INSTALLATION,
                    BENT_LIP,
                    LOOSE_CABLE,
                    RESONANCE ->
                    duty;
        };
    }

    /** What a channel shows of what is there; contact jumps by a fixed pattern of its own. */
    double shown(Signal signal, String of, double value, double atS) {
        boolean mine = hidden.part().equals(Track.ALL) || hidden.part().equals(of);
        if (signal != Signal.THRUST || !mine || atS < hidden.fromS()) {
            return value;
        }
        return switch (hidden.kind()) {
            case WRONG_SCALE -> value * (1 - hidden.size());
            case LOOSE_CABLE -> value * contactAt(atS);
            default -> value;
        };
    }

    private double contactAt(double atS) {
        var of = new SplittableRandom(((long) (atS / 1.7)) * 7919 + hidden.part().hashCode());
        of.nextLong();
        return of.nextDouble() < 0.5 ? 1 : 1 - hidden.size() * of.nextDouble();
    }
}
