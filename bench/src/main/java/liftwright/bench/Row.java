package liftwright.bench;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One line of the table.
 *
 * @param name what was measured
 * @param seconds median or mean time of one run, s
 * @param spreadSeconds half the width of its error bar, s: quartiles for whole processes, 99.9 %
 *     for kernels
 * @param reference what the ratio is against
 * @param ratio time over the reference's time in the same run
 * @param budget what it must reach, in words, or nothing
 * @param bytesPerRun allocated heap of one run, bytes; absent for whole processes
 */
record Row(
        String name,
        double seconds,
        double spreadSeconds,
        String reference,
        double ratio,
        String budget,
        @Nullable Double bytesPerRun) {

    static String table(List<Row> rows) {
        var text = new StringBuilder();
        text.append(line("what", "time", "±", "ratio", "to", "bytes", "budget"));
        for (Row row : rows) {
            text.append(
                    line(
                            row.name,
                            time(row.seconds),
                            time(row.spreadSeconds),
                            String.format(Locale.ROOT, "%.2f", row.ratio),
                            row.reference,
                            row.bytesPerRun == null
                                    ? ""
                                    : String.format(Locale.ROOT, "%.0f", row.bytesPerRun),
                            row.budget));
        }
        return text.toString();
    }

    private static String line(
            String what,
            String time,
            String spread,
            String ratio,
            String to,
            String bytes,
            String budget) {
        String line =
                String.format(
                        Locale.ROOT,
                        "%-31s %9s %9s %8s  %-12s %10s  %s",
                        what,
                        time,
                        spread,
                        ratio,
                        to,
                        bytes,
                        budget);
        return line.stripTrailing() + "\n";
    }

    /** Three digits in the unit that fits. */
    static String time(double seconds) {
        double size = Math.abs(seconds);
        if (size >= 1) {
            return String.format(Locale.ROOT, "%.2f s", seconds);
        }
        if (size >= 1e-3) {
            return String.format(Locale.ROOT, "%.1f ms", seconds * 1e3);
        }
        if (size >= 1e-6) {
            return String.format(Locale.ROOT, "%.1f µs", seconds * 1e6);
        }
        return String.format(Locale.ROOT, "%.1f ns", seconds * 1e9);
    }
}
