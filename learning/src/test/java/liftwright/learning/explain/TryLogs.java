package liftwright.learning.explain;

import liftwright.learning.truth.SimulatedTest;
import liftwright.numerics.Work;

/** By hand: what is said of simulated logs. */
public final class TryLogs {
    public static void main(String[] args) {
        long from = Long.parseLong(args[0]);
        long to = Long.parseLong(args[1]);
        for (long seed = from; seed < to; seed++) {
            SimulatedTest test = SimulatedTest.draw(seed);
            long start = System.nanoTime();
            StringBuilder hidden = new StringBuilder();
            test.hidden()
                    .forEach(
                            one ->
                                    hidden.append(
                                            String.format(
                                                    "%s %s %.3g @%.0f %.1fN; ",
                                                    one.kind(),
                                                    one.part(),
                                                    one.size(),
                                                    one.fromS(),
                                                    test.shareN(one))));
            try {
                Explained explained = Explain.of(test.rig(), test.recording(), 1, Work.quiet());
                System.out.printf(
                        "%d fans %d packs %d ch %d | %s%n    %s %s | %s | miss %.1f of true %.1f | %.1f s%n",
                        seed,
                        test.rig().fans().size(),
                        test.rig().packs().size(),
                        test.recording().tracks().size(),
                        hidden,
                        explained.finding(),
                        explained.named().stream().map(TryLogs::words).toList(),
                        explained.ranked().stream().limit(5).map(TryLogs::words).toList(),
                        explained.missingN(),
                        test.lostN(),
                        (System.nanoTime() - start) / 1e9);
            } catch (RuntimeException e) {
                System.out.println(seed + " " + hidden + " FAILED " + e);
                e.printStackTrace(System.out);
            }
        }
    }

    private static String words(Explained.Weighed one) {
        return String.format(
                "%s %s %.2f %.1f[%.1f %.1f] lf%.0f %s",
                one.cause().kind(),
                one.cause().part(),
                one.share(),
                one.sizeN(),
                one.lowN(),
                one.highN(),
                one.logFactor(),
                one.size());
    }
}
