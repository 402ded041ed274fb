package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import liftwright.plant.recording.Recording;
import liftwright.rig.Rig;

/**
 * Several tests of one random rig, some days apart, in which a joint gets worse by as much from
 * test to test, or nothing does. The rig is not quite as declared, the same in all of them; what is
 * flown differs, and instruments are off by other amounts each time.
 */
public final class SimulatedLogbook {

    /** Tries for what does not burn the rig. */
    private static final int MOST_TRIES = 20;

    private final Rig rig;
    private final List<Recording> recordings = new ArrayList<>();
    private final List<Double> ohm = new ArrayList<>();
    private final String joint;

    /**
     * @param rises whether a joint does
     * @param tests how many
     */
    public SimulatedLogbook(long seed, boolean rises, int tests, int mostFans) {
        SplittableRandom random = new SplittableRandom(seed ^ 0x10C8L);
        SimulatedTest like = like(random, mostFans);
        TrueLog healthy = healthy(like, seed);
        for (int tries = 0; healthy.burns(); tries++) {
            Objects.checkIndex(tries, MOST_TRIES);
            like = like(random, mostFans);
            healthy = healthy(like, seed);
        }
        rig = like.rig();
        Hidden worst = like.hidden().getFirst();
        joint = rises ? worst.part() : "";
        List<Instruments.Instrument> with =
                Instruments.draw(rig, healthy, like.profile(), seed).all();
        for (int k = 0; k < tests; k++) {
            double size = rises ? worst.size() * k / (tests - 1) : 0;
            List<Hidden> hidden =
                    size > 0
                            ? List.of(new Hidden(Hidden.Kind.BAD_JOINT, joint, size, 0))
                            : List.of();
            Profile profile = Profile.draw(rig.fans().size(), random);
            TrueLog log = new TrueLog(rig, seed, profile, hidden, profile.lengthS());
            for (int tries = 0; log.burns(); tries++) {
                Objects.checkIndex(tries, MOST_TRIES);
                profile = Profile.draw(rig.fans().size(), random);
                log = new TrueLog(rig, seed, profile, hidden, profile.lengthS());
            }
            recordings.add(new Instruments(with, rig, profile, random.nextLong()).read(log));
            ohm.add(size);
        }
    }

    private static SimulatedTest like(SplittableRandom random, int mostFans) {
        return SimulatedTest.draw(
                random.nextLong(), one -> one.kind() == Hidden.Kind.BAD_JOINT, mostFans);
    }

    private static TrueLog healthy(SimulatedTest like, long seed) {
        return new TrueLog(like.rig(), seed, like.profile(), List.of(), like.profile().lengthS());
    }

    /** As declared. */
    public Rig rig() {
        return rig;
    }

    public List<Recording> recordings() {
        return List.copyOf(recordings);
    }

    /** What the joint had on top in each test, Ω. */
    public List<Double> ohm() {
        return List.copyOf(ohm);
    }

    /** The joint that gets worse; empty where none does. */
    public String joint() {
        return joint;
    }

    /**
     * Whether a part carries the same current as the joint: nothing but warmth tells them apart.
     */
    public boolean isLikeJoint(String part) {
        return rig.wiring().chains().stream()
                .map(chain -> chain.elements().stream().map(one -> one.id().text()).toList())
                .anyMatch(ids -> ids.contains(joint) && ids.contains(part));
    }
}
