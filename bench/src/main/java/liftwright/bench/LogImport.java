package liftwright.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import liftwright.logbook.engine.Engine;
import liftwright.logbook.reading.LogMap;
import liftwright.logbook.reading.LogOutcome;
import liftwright.logbook.reading.LogReading;
import liftwright.logbook.reading.Source;
import liftwright.rig.Rig;

/**
 * Reading a large log in, against the SQL engine's own copy from CSV to Parquet by the same locked
 * process, and the most memory that process took (Linux tells it). A program of its own, since it
 * writes hundreds of megabytes: {@code LogImport [megabytes [rig.yaml [runs]]]}.
 */
final class LogImport {

    private LogImport() {}

    public static void main(String[] args) throws IOException {
        long bytes = 1_000_000L * (args.length > 0 ? Long.parseLong(args[0]) : 200);
        Path file = Path.of(args.length > 1 ? args[1] : "examples/curlew/rig.yaml");
        int runs = args.length > 2 ? Integer.parseInt(args[2]) : 3;
        Rig rig = Examples.rig(Files.readAllBytes(file));
        Path folder = Files.createTempDirectory("liftwright-bench-");
        try {
            measure(log(folder, bytes), rig, folder, runs);
        } finally {
            delete(folder);
        }
    }

    private static void measure(Path log, Rig rig, Path folder, int runs) throws IOException {
        double[] own = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] ours = own.clone();
        for (int run = 0; run < runs; run++) {
            least(own, ownCopy(log, folder));
            least(ours, reading(log, rig, folder));
        }
        for (int k = 0; k < 2; k++) {
            System.out.printf(
                    Locale.ROOT,
                    "%d MB, %s: engine's own copy %.2f s, reading in %.2f s, ratio %.2f; allowed"
                            + " %.2f s%n",
                    Files.size(log) / 1_000_000,
                    k == 0 ? "clock" : "processors",
                    own[k],
                    ours[k],
                    ours[k] / own[k],
                    1.3 * own[k] + 1);
        }
    }

    private static void least(double[] all, double[] one) {
        for (int k = 0; k < all.length; k++) {
            all[k] = Math.min(all[k], one[k]);
        }
    }

    private static double[] ownCopy(Path log, Path folder) throws IOException {
        try (Engine engine = Engine.start(folder)) {
            Path to = engine.scratch().resolve("own.parquet");
            long begin = System.nanoTime();
            engine.run(
                    "COPY (SELECT * FROM read_csv("
                            + engine.path(log)
                            + ")) TO "
                            + engine.path(to)
                            + " (FORMAT parquet)");
            double seconds = (System.nanoTime() - begin) * 1e-9;
            return tell("own copy", seconds, 0, engine);
        }
    }

    private static double[] reading(Path log, Rig rig, Path folder) throws IOException {
        try (Engine engine = Engine.start(folder)) {
            double before = cpuS(ProcessHandle.current());
            long begin = System.nanoTime();
            LogOutcome outcome = LogReading.read(List.of(Source.of(log)), LogMap.NONE, rig, engine);
            double seconds = (System.nanoTime() - begin) * 1e-9;
            if (!(outcome instanceof LogOutcome.Read)) {
                throw new IOException("not read in: " + outcome);
            }
            return tell("reading in", seconds, cpuS(ProcessHandle.current()) - before, engine);
        }
    }

    /** Says what it cost; gives the time on the clock and on the processors, s. */
    private static double[] tell(String what, double seconds, double oursS, Engine engine)
            throws IOException {
        Path status = Path.of("/proc/" + engine.pid() + "/status");
        String most =
                Files.exists(status)
                        ? Files.readAllLines(status).stream()
                                .filter(line -> line.startsWith("VmHWM"))
                                .findFirst()
                                .orElse("")
                                .replaceAll("\\s+", " ")
                        : "";
        double cpuS = oursS + cpuS(ProcessHandle.of(engine.pid()).orElseThrow());
        System.out.printf(
                Locale.ROOT,
                "%s %.2f s, %.2f s of processors, engine's process %s%n",
                what,
                seconds,
                cpuS,
                most);
        return new double[] {seconds, cpuS};
    }

    /** The start of the engine is among it, on both sides. */
    private static double cpuS(ProcessHandle process) {
        return process.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() * 1e-3;
    }

    /** Twenty channels at 500 rows a second. */
    private static Path log(Path folder, long bytes) throws IOException {
        Path log = folder.resolve("log.csv");
        var random = new SplittableRandom(1);
        try (BufferedWriter out = Files.newBufferedWriter(log)) {
            var line = new StringBuilder("time [s],throttle [%],thrust [N]");
            for (int fan = 1; fan <= 6; fan++) {
                line.append(",current fan.").append(fan).append(" [A],voltage fan.").append(fan);
                line.append(" [V],temperature fan.").append(fan).append(" [°C]");
            }
            long written = 0;
            for (long row = 0; written < bytes; row++) {
                line.append('\n');
                out.append(line);
                written += line.length();
                line.setLength(0);
                line.append(row / 500).append('.').append(1000 + row % 500 * 2);
                line.deleteCharAt(line.indexOf(".") + 1);
                for (int c = 0; c < 20; c++) {
                    line.append(',').append(random.nextInt(10, 60)).append('.');
                    line.append(random.nextInt(100, 1000));
                }
            }
            out.newLine();
        }
        return log;
    }

    private static void delete(Path folder) {
        try (var files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
