package liftwright.review;

import java.util.Locale;

/**
 * How much work a question may do.
 *
 * @param seed of every draw; the same seed gives the same answer on any number of threads
 * @param firstDraws draws that every band starts with, ≥ 64
 * @param mostDraws draws a close verdict may be pursued to, ≥ {@code firstDraws}
 * @param threads worker threads, ≥ 1
 * @param remedies whether to look for remedies where the verdict is not "holds"
 */
public record Settings(long seed, int firstDraws, int mostDraws, int threads, boolean remedies) {

    public Settings {
        if (firstDraws < 64 || mostDraws < firstDraws || threads < 1) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "draws %d to %d on %d threads",
                            firstDraws,
                            mostDraws,
                            threads));
        }
    }

    /** 1,024 draws, pursued to 16,384 where the limit is close to an end of the band. */
    public static Settings standard() {
        return new Settings(
                20260101L, 1024, 16_384, Runtime.getRuntime().availableProcessors(), true);
    }

    public Settings withSeed(long other) {
        return new Settings(other, firstDraws, mostDraws, threads, remedies);
    }

    public Settings withThreads(int count) {
        return new Settings(seed, firstDraws, mostDraws, count, remedies);
    }

    public Settings withoutRemedies() {
        return new Settings(seed, firstDraws, mostDraws, threads, false);
    }
}
