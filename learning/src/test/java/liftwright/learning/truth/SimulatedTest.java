package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntToDoubleFunction;
import java.util.function.Predicate;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.rig.Rig;
import liftwright.trials.RandomTrialRig;

/**
 * A test of a random rig that is not quite as declared, with what is hidden in it. The rig as it
 * truly is comes from a simulator that shares no line with the product and has effects that no fit
 * knows: coefficients that drift with speed, air that differs from fan to fan and comes back round
 * the rig, thrust that is never still, heavy tails of the fans' scatter, iron losses, cells with a
 * drop of their own, throttle in steps, and instruments with faults of their own ({@link
 * Instruments}).
 */
public final class SimulatedTest {

    /** Larger rigs tell nothing more and take longer. */
    private static final int MOST_FANS = 6;

    /** Truths by which it is judged how far a channel wanders with nothing wrong. */
    private static final int HEALTHY = 6;

    /** A channel leaves the healthy ones by at least so many of their standard deviations. */
    private static final double VISIBLE = 2.5;

    private static final int MOST_TRIES = 60;

    private final long seed;
    private final Rig rig;
    private final Profile profile;
    private final List<Hidden> hidden;
    private final double endS;
    private final TrueLog log;
    private final Recording recording;

    private SimulatedTest(
            long seed,
            Rig rig,
            Profile profile,
            Instruments instruments,
            List<Hidden> hidden,
            double endS) {
        this.seed = seed;
        this.rig = rig;
        this.profile = profile;
        this.hidden = List.copyOf(hidden);
        this.endS = endS;
        log = new TrueLog(rig, seed, profile, hidden, endS);
        recording = instruments.read(log);
    }

    /** Of what sort a test is. */
    public enum Sort {
        ONE,
        OTHER,
        HEALTHY,
        TWO
    }

    /** A random one: two in five with one cause, one in five each with another, none, two. */
    public static SimulatedTest draw(long seed) {
        return draw(
                seed,
                switch (new SplittableRandom(seed).nextInt(5)) {
                    case 0, 1 -> Sort.ONE;
                    case 2 -> Sort.OTHER;
                    case 3 -> Sort.HEALTHY;
                    default -> Sort.TWO;
                },
                MOST_FANS);
    }

    /** A random one of a sort, of a rig with so many fans at most. */
    public static SimulatedTest draw(long seed, Sort sort, int mostFans) {
        SplittableRandom random = new SplittableRandom(seed ^ 0x7E57L);
        Rig rig = rig(random, mostFans);
        Profile profile = Profile.draw(rig.fans().size(), random);
        TrueLog healthy = new TrueLog(rig, seed, profile, List.of(), profile.lengthS());
        if (healthy.burns()) {
            return draw(random.nextLong(), sort, mostFans);
        }
        Instruments instruments = Instruments.draw(rig, healthy, profile, seed);
        var draws = new RandomHidden(rig, healthy, profile, instruments, random);
        Visibility seen = new Visibility(rig, profile, instruments, seed, HEALTHY);
        List<Hidden> hidden = new ArrayList<>();
        int wanted = sort == Sort.HEALTHY ? 0 : sort == Sort.TWO ? 2 : 1;
        for (int tries = 0; hidden.size() < wanted; tries++) {
            if (tries == MOST_TRIES) {
                // Instruments that show nothing of anything, or a truth that is no rig.
                return draw(random.nextLong(), sort, mostFans);
            }
            Hidden one = sort == Sort.OTHER ? draws.other() : draws.listed();
            boolean another =
                    hidden.stream()
                            .noneMatch(
                                    other ->
                                            other.kind() == one.kind()
                                                    || other.part().equals(one.part()));
            if (another && seen.of(one) > VISIBLE) {
                hidden.add(one);
            }
        }
        return new SimulatedTest(
                seed, rig, profile, instruments, hidden, endS(profile, hidden, random));
    }

    /** A random one with one thing hidden that is as wanted. */
    public static SimulatedTest draw(long seed, Predicate<Hidden> wanted, int mostFans) {
        SplittableRandom random = new SplittableRandom(seed ^ 0x7E57L);
        Rig rig = rig(random, mostFans);
        Profile profile = Profile.draw(rig.fans().size(), random);
        TrueLog healthy = new TrueLog(rig, seed, profile, List.of(), profile.lengthS());
        if (healthy.burns()) {
            return draw(random.nextLong(), wanted, mostFans);
        }
        Instruments instruments = Instruments.draw(rig, healthy, profile, seed);
        var draws = new RandomHidden(rig, healthy, profile, instruments, random);
        Hidden one = draws.listed();
        while (!wanted.test(one)) {
            one = draws.listed();
        }
        List<Hidden> hidden = List.of(one);
        return new SimulatedTest(
                seed, rig, profile, instruments, hidden, endS(profile, hidden, random));
    }

    /** A test of a given rig and profile with given things hidden; instruments are drawn. */
    public static SimulatedTest of(Rig rig, long seed, Profile profile, List<Hidden> hidden) {
        TrueLog healthy = new TrueLog(rig, seed, profile, List.of(), profile.lengthS());
        return new SimulatedTest(
                seed,
                rig,
                profile,
                Instruments.draw(rig, healthy, profile, seed),
                hidden,
                profile.lengthS());
    }

    private static Rig rig(SplittableRandom random, int mostFans) {
        while (true) {
            // The truth has no screens and no groups of its own: rigs of these tests have none.
            String yaml =
                    RandomTrialRig.yaml(random)
                            .replaceAll("(?m)^    intake: .*\\R", "")
                            .replaceAll("(?m)^  groups:\\R(    g .*\\R)+", "");
            Rig rig = RandomTrialRig.rig(yaml);
            if (rig.fans().size() >= 2 && rig.fans().size() <= mostFans) {
                return rig;
            }
        }
    }

    /** Some logs end where something failed, some for another reason. */
    private static double endS(Profile profile, List<Hidden> hidden, SplittableRandom random) {
        double end = profile.lengthS();
        for (Hidden one : hidden) {
            if (one.fromS() > 0 && random.nextBoolean()) {
                end = Math.min(end, one.fromS() + 0.5 + 2.5 * random.nextDouble());
            }
        }
        if (random.nextDouble() < 0.08) {
            end = Math.min(end, profile.topFromS() + 1 + 3 * random.nextDouble());
        }
        return end;
    }

    /** The greatest temperature that a part of the supply really came to, K. */
    double hottestK(String part) {
        return Arrays.stream(log.series(Signal.TEMPERATURE, part)).max().orElseThrow();
    }

    public long seed() {
        return seed;
    }

    /** As declared. */
    public Rig rig() {
        return rig;
    }

    /** What was recorded. */
    public Recording recording() {
        return recording;
    }

    /** What is hidden; empty in a healthy one. */
    public List<Hidden> hidden() {
        return hidden;
    }

    public Profile profile() {
        return profile;
    }

    /**
     * What a cause takes of lift: with everything as it is but it mended, less that with it, on
     * average over the moments at which total thrust would be at least four fifths of its greatest
     * with nothing wrong, as long as was recorded. Of a load cell what is there less what it shows.
     */
    public double lostN(Hidden cause) {
        return cause.kind().ofInstrument() ? hiddenByCellN(cause) : lostN(log, without(cause));
    }

    /** The share of a cause where all are mended in every order (two of them: both orders). */
    public double shareN(Hidden cause) {
        if (hidden.size() < 2 || cause.kind().ofInstrument()) {
            return lostN(cause);
        }
        TrueLog mended = run(List.of());
        double last = lostN(run(List.of(cause)), mended);
        return (lostN(cause) + last) / 2;
    }

    /** All that is missing against the same rig with nothing wrong. */
    public double lostN() {
        return lostN(log, run(List.of()));
    }

    /** What load cells show less than is there. */
    public double hiddenByCellsN() {
        return hidden.stream()
                .filter(one -> one.kind().ofInstrument())
                .mapToDouble(this::hiddenByCellN)
                .sum();
    }

    private TrueLog without(Hidden cause) {
        return run(hidden.stream().filter(one -> !one.equals(cause)).toList());
    }

    private TrueLog run(List<Hidden> with) {
        return new TrueLog(rig, seed, profile, with, endS);
    }

    private double lostN(TrueLog with, TrueLog mended) {
        return mean(k -> mended.lift()[k] - with.lift()[k], promised());
    }

    /** Total thrust with nothing wrong. */
    private double[] promised() {
        return run(List.of()).series(Signal.THRUST, Track.ALL);
    }

    private double hiddenByCellN(Hidden cause) {
        double[] seen = log.series(Signal.THRUST, cause.part());
        return mean(
                k -> seen[k] - log.shown(Signal.THRUST, cause.part(), seen[k], k * TrueLog.STEP_S),
                promised());
    }

    private double mean(IntToDoubleFunction of, double[] thrust) {
        double lastS =
                recording.all(Signal.THRUST).stream()
                        .mapToDouble(one -> one.samples().timeS(one.samples().size() - 1))
                        .max()
                        .orElse(0);
        int steps = Math.min(thrust.length, (int) (lastS / TrueLog.STEP_S) + 1);
        double most = 0;
        for (int k = 0; k < steps; k++) {
            most = Math.max(most, thrust[k]);
        }
        double sum = 0;
        int count = 0;
        for (int k = 0; k < steps; k++) {
            if (thrust[k] >= 0.8 * most) {
                sum += of.applyAsDouble(k);
                count++;
            }
        }
        return count == 0 ? 0 : sum / count;
    }

    @Override
    public String toString() {
        return "seed " + seed + ", " + rig.fans().size() + " fans, " + hidden;
    }
}
