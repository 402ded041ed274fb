package liftwright.testkit;

import java.util.Objects;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Property tests: one property, many random cases, every one replayable.
 *
 * <p>Each case has its own generator, drawn from the base seed and the case's number, so that a
 * case does not depend on how many numbers the cases before it consumed. System properties:
 *
 * <ul>
 *   <li>{@code -Dseed=5} – the base seed; without it {@value #DEFAULT_SEED}, so that a plain build
 *       is repeatable.
 *   <li>{@code -Dseed=5/17} – case 17 of base seed 5 and no other: what a failure asks for.
 *   <li>{@code -Dliftwright.deep=true} – {@value #DEEP_FACTOR} times the cases.
 * </ul>
 *
 * Maven hands both to the test JVM.
 */
public final class Seeded {

    static final String SEED_PROPERTY = "seed";
    static final String DEEP_PROPERTY = "liftwright.deep";
    static final long DEFAULT_SEED = 20260101L;
    static final int DEEP_FACTOR = 10;

    private Seeded() {}

    /**
     * Runs the property on {@code cases} generators ({@value #DEEP_FACTOR} times as many in a deep
     * run) and stops at the first failure.
     *
     * @param cases how many cases, at least 1
     * @param property fails by throwing anything unchecked; must draw all its randomness from the
     *     generator it is given
     * @throws AssertionError naming the case and the flag that replays it, with the failure as
     *     cause
     */
    public static void check(int cases, Consumer<RandomGenerator> property) {
        check(cases, System.getProperty(SEED_PROPERTY), deep(), property);
    }

    /** Whether this is a deep run: more cases, new seeds. */
    public static boolean deep() {
        return Boolean.getBoolean(DEEP_PROPERTY);
    }

    static void check(
            int cases, @Nullable String seed, boolean deep, Consumer<RandomGenerator> property) {
        Objects.checkIndex(0, cases); // a property that is asked nothing cannot fail
        if (seed != null && seed.indexOf('/') >= 0) {
            int slash = seed.indexOf('/');
            long base = Long.parseLong(seed.substring(0, slash));
            runCase(base, Integer.parseInt(seed.substring(slash + 1)), property);
            return;
        }
        long base = seed == null ? DEFAULT_SEED : Long.parseLong(seed);
        int total = deep ? Math.multiplyExact(cases, DEEP_FACTOR) : cases;
        for (int number = 0; number < total; number++) {
            runCase(base, number, property);
        }
    }

    private static void runCase(long base, int number, Consumer<RandomGenerator> property) {
        try {
            property.accept(generator(base, number));
        } catch (AssertionError | RuntimeException failure) {
            throw new AssertionError(
                    "case %d failed; replay it with -Dseed=%d/%d%n%s"
                            .formatted(number, base, number, failure),
                    failure);
        }
    }

    /**
     * Twice hashed: SplittableRandom walks one 2^64 cycle in fixed steps, so seeds that differ by a
     * multiple of its step would give one stream, shifted.
     */
    private static RandomGenerator generator(long base, int number) {
        long hashed = new SplittableRandom(base).nextLong();
        return new SplittableRandom(new SplittableRandom(hashed ^ number).nextLong());
    }
}
