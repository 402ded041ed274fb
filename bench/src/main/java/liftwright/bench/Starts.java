package liftwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Whole commands, each in a process of its own, from the call to its end: what somebody waits for
 * who types it. The reference is an empty {@code main} on the same JVM without any option. Subjects
 * and reference take turns, so that a busy moment of the machine meets all of them.
 */
final class Starts {

    private static final int ROUNDS = 11;

    /**
     * @param name for the table
     * @param command the process
     * @param exitCodes what it may end with and still have done its work
     * @param budget what it must reach, in words
     */
    record Start(String name, List<String> command, List<Integer> exitCodes, String budget) {}

    private static final class Times {
        private final double[] firstS = new double[ROUNDS];
        private final double[] endS = new double[ROUNDS];
    }

    private Starts() {}

    static List<Start> of(Path root) {
        String launcher = root.resolve("liftwright").toString();
        String mudlark = root.resolve("examples/mudlark/rig.yaml").toString();
        return List.of(
                new Start("start help", List.of(launcher, "--help"), List.of(0), ""),
                new Start(
                        "start check mudlark",
                        List.of(launcher, "check", mudlark),
                        List.of(0, 1),
                        "0.35 s, ratio 10"),
                new Start(
                        "start review mudlark",
                        List.of(launcher, "review", mudlark),
                        List.of(0, 1),
                        "2 s, ratio 20; first line 0.7 s"));
    }

    static List<Row> measure(List<Start> starts, Path root)
            throws IOException, InterruptedException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var classes = root.resolve("bench/target/classes").toString();
        var empty =
                new Start(
                        "start empty main",
                        List.of(java, "-cp", classes, "liftwright.bench.EmptyMain"),
                        List.of(0),
                        "");
        var all = new ArrayList<Start>();
        all.add(empty);
        all.addAll(starts);
        var times = all.stream().map(_ -> new Times()).toList();
        var broken = new boolean[all.size()];
        for (int round = -1; round < ROUNDS; round++) { // round -1 warms the disk's cache
            for (int i = 0; i < all.size(); i++) {
                if (!broken[i]) {
                    broken[i] = !run(all.get(i), times.get(i), round);
                }
            }
        }
        var rows = new ArrayList<Row>();
        double reference = median(times.getFirst().endS);
        for (int i = 0; i < all.size(); i++) {
            if (broken[i]) {
                continue;
            }
            double[] end = times.get(i).endS;
            rows.add(row(all.get(i).name(), end, reference, all.get(i).budget()));
            if (i > 0) {
                rows.add(row("    first line", times.get(i).firstS, reference, ""));
            }
        }
        return rows;
    }

    private static Row row(String name, double[] seconds, double reference, String budget) {
        Arrays.sort(seconds);
        double quartiles = seconds[ROUNDS * 3 / 4] - seconds[ROUNDS / 4];
        return new Row(
                name,
                median(seconds),
                quartiles / 2,
                "empty main",
                median(seconds) / reference,
                budget,
                null);
    }

    /** Whether the command did its work. */
    private static boolean run(Start start, Times times, int round)
            throws IOException, InterruptedException {
        long called = System.nanoTime();
        var process =
                new ProcessBuilder(start.command())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        process.getOutputStream().close();
        long first = 0;
        try (InputStream out = process.getInputStream()) {
            if (out.read() >= 0) {
                first = System.nanoTime();
            }
            out.transferTo(OutputStream.nullOutputStream());
        }
        int code = process.waitFor();
        long end = System.nanoTime();
        if (!start.exitCodes().contains(code)) {
            System.err.println("bench: " + start.name() + " ended with " + code + ": left out");
            return false;
        }
        if (round >= 0) {
            times.firstS[round] = (first == 0 ? end - called : first - called) * 1e-9;
            times.endS[round] = (end - called) * 1e-9;
        }
        return true;
    }

    private static double median(double[] seconds) {
        double[] sorted = seconds.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
