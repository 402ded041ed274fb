package liftwright.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.openjdk.jmh.runner.RunnerException;

/** Runs the benchmarks whose names contain a regular expression and prints one table. */
final class Bench {

    private Bench() {}

    public static void main(String[] args)
            throws IOException, InterruptedException, RunnerException {
        boolean listOnly = args.length > 0 && args[0].equals("-n");
        int next = listOnly ? 1 : 0;
        var wanted = Pattern.compile(args.length > next ? args[next] : "");
        var root = Path.of(System.getProperty("liftwright.root", "."));

        var starts = Starts.of(root).stream().filter(s -> wanted.matcher(s.name()).find()).toList();
        var kernels = Kernels.matching(wanted);
        if (listOnly) {
            starts.forEach(s -> System.out.println(s.name()));
            kernels.forEach(System.out::println);
            return;
        }
        if (starts.isEmpty() && kernels.isEmpty()) {
            System.err.println(
                    "no benchmark's name contains \"" + wanted + "\"; list them with -n");
            System.exit(2);
        }
        List<Row> rows = new ArrayList<>();
        if (!starts.isEmpty()) {
            rows.addAll(Starts.measure(starts, root));
        }
        if (!kernels.isEmpty()) {
            rows.addAll(Kernels.measure(kernels));
        }
        System.out.println();
        System.out.print(Row.table(rows));
    }
}
