package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Element;
import liftwright.rig.Rig;

/** Draws what is hidden: kind, part and size. */
final class RandomHidden {

    private static final List<Hidden.Kind> LISTED =
            List.of(Hidden.Kind.values()).stream().filter(Hidden.Kind::listed).toList();
    private static final List<Hidden.Kind> OTHERS =
            List.of(Hidden.Kind.values()).stream().filter(kind -> !kind.listed()).toList();

    private final Rig rig;
    private final TrueLog healthy;
    private final Profile profile;
    private final Instruments instruments;
    private final RandomGenerator random;

    RandomHidden(
            Rig rig,
            TrueLog healthy,
            Profile profile,
            Instruments instruments,
            RandomGenerator random) {
        this.rig = rig;
        this.healthy = healthy;
        this.profile = profile;
        this.instruments = instruments;
        this.random = random;
    }

    Hidden listed() {
        return of(LISTED.get(random.nextInt(LISTED.size())));
    }

    Hidden other() {
        return of(OTHERS.get(random.nextInt(OTHERS.size())));
    }

    /** Sizes even in their logarithm, so that small ones are as common as large ones. */
    private double in(double least, double most) {
        return least * Math.pow(most / least, random.nextDouble());
    }

    private Hidden of(Hidden.Kind kind) {
        return switch (kind) {
            case WEAK_FAN -> from(kind, fan(), in(0.06, 0.4));
            case HUNGRY_FAN -> from(kind, fan(), in(0.1, 0.7));
            case LOST_MAGNETS -> from(kind, fan(), in(0.04, 0.16));
            case BAD_JOINT -> joint();
            case WORN_PACK -> from(kind, pack(), in(1.4, 4));
            case LOW_PACK -> from(kind, pack(), in(0.1, 0.5));
            case HELD_BACK -> from(kind, fan(), profile.top() * in(0.4, 0.92));
            case DEAD_FAN -> dead();
            case WRONG_SCALE -> from(kind, cell(), in(0.04, 0.16));
            case INSTALLATION -> from(kind, Track.ALL, in(0.05, 0.2));
            case BENT_LIP -> from(kind, fan(), in(0.3, 0.8));
            case WET_CONTROLLER -> from(kind, fan(), in(0.3, 0.8));
            case LOOSE_CABLE -> from(kind, cell(), in(0.1, 0.6));
            case RESONANCE -> from(kind, mount(), in(0.12, 0.45));
            case WRONG_CURVE ->
                    from(
                            kind,
                            random.nextBoolean() ? Track.ALL : mount(),
                            random.nextBoolean() ? in(1.25, 2) : in(0.5, 0.8));
        };
    }

    private static Hidden from(Hidden.Kind kind, String part, double size) {
        return new Hidden(kind, part, size, 0);
    }

    private String fan() {
        return rig.fans().get(random.nextInt(rig.fans().size())).id().text();
    }

    private String pack() {
        return rig.packs().get(random.nextInt(rig.packs().size())).id().text();
    }

    private String mount() {
        return rig.fans().get(random.nextInt(rig.fans().size())).mount().name();
    }

    private String cell() {
        List<String> cells =
                instruments.all().stream()
                        .filter(one -> one.signal() == Signal.THRUST)
                        .map(Instruments.Instrument::of)
                        .toList();
        return cells.get(random.nextInt(cells.size()));
    }

    /** A joint that takes from 2 to 15 % of the voltage at the most current of its chain. */
    private Hidden joint() {
        record In(String id, String fed) {}
        List<In> joints = new ArrayList<>();
        for (var chain : rig.wiring().chains()) {
            for (Element one : chain.elements()) {
                if (one instanceof Element.Joint) {
                    joints.add(new In(one.id().text(), chain.to()));
                }
            }
        }
        joints.sort(Comparator.comparing(In::id));
        In joint = joints.get(random.nextInt(joints.size()));
        boolean toFan = rig.fans().stream().anyMatch(fan -> fan.id().text().equals(joint.fed()));
        double amp = 0;
        for (double one :
                healthy.series(Signal.CURRENT, toFan ? joint.fed() : packOf(joint.id()))) {
            amp = Math.max(amp, one);
        }
        double volt = 3.7 * rig.packs().getFirst().series();
        return from(Hidden.Kind.BAD_JOINT, joint.id(), in(0.02, 0.15) * volt / amp);
    }

    private String packOf(String element) {
        for (var pack : rig.packs()) {
            if (element.contains("." + pack.id().text() + ".")) {
                return pack.id().text();
            }
        }
        return rig.packs().getFirst().id().text();
    }

    private Hidden dead() {
        double at =
                random.nextDouble() < 0.4 ? 0 : profile.topFromS() + 0.5 + 2 * random.nextDouble();
        return new Hidden(Hidden.Kind.DEAD_FAN, fan(), 1, at);
    }
}
