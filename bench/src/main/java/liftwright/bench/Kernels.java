package liftwright.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.BenchmarkList;
import org.openjdk.jmh.runner.BenchmarkListEntry;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.format.OutputFormatFactory;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * The JMH benchmarks of this module, each as a multiple of the {@link Yardstick} of the same run.
 */
final class Kernels {

    private static final String YARDSTICK = Yardstick.class.getName() + ".yardstick";

    /** What each must reach; a kernel that is not named has no budget. */
    private static final Map<String, String> BUDGETS =
            Map.ofEntries(
                    Map.entry("RigReading.read", "5 ms"),
                    Map.entry("HeatOfMudlark.update", "3 µs"),
                    Map.entry("HeatOfMudlark.tenMinutes", "0.5 s"),
                    Map.entry("LiftOfMudlark.nominal", "10 ms"),
                    Map.entry("LiftOfMudlark.bands", "20 ms"),
                    Map.entry("EnduranceOfMudlark.nominal", "10 ms"),
                    Map.entry("EnduranceOfMudlark.bands", "100 ms on two threads"),
                    Map.entry("BalanceOfMudlark.nominal", "10 ms"),
                    Map.entry("BalanceOfMudlark.bands", "20 ms"),
                    Map.entry("PageOfMudlark.nominal", "10 ms"),
                    Map.entry("PageOfMudlark.tried", "25 ms"),
                    Map.entry("LossesOfMudlark.singlesAndPairs", "30 ms"),
                    Map.entry("LossesOfMudlark.fanTriples", "200 ms"),
                    Map.entry("LossesOfMudlark.classPairs", "0.3 s"),
                    Map.entry(
                            "LossProgrammes.ours",
                            "a twentieth of ojAlgoCold, a fifth of ojAlgoWarm"),
                    Map.entry("Trims.mostLift", "a twentieth of library"),
                    Map.entry("DriveOfMudlark.heated", "1.4 ms with the body: 700 × real time"),
                    Map.entry("FlightOfCurlew.whole", "0.18 s: 200 × real time"),
                    Map.entry("FlightOfMudlark.whole", "0.11 s: 200 × real time"),
                    Map.entry("FlightSteps.ours", "a fifth of libraryRungeKutta"),
                    Map.entry("NetworkStep.ours trees", "3 µs, a third of sparseCholesky"),
                    Map.entry("NetworkStep.ours crossTied", "15 µs, a third of sparseCholesky"));

    /** A whole flight goes through so much code that the compiler takes 20 of them for it. */
    private static final Set<String> SLOW_TO_WARM =
            Set.of(
                    "liftwright.bench.FlightOfCurlew.whole",
                    "liftwright.bench.FlightOfMudlark.whole");

    private static final int WARM_UP_S = 3;
    private static final int LONG_WARM_UP_S = 10;

    private Kernels() {}

    static List<String> matching(Pattern wanted) {
        var silent = OutputFormatFactory.createFormatInstance(System.err, VerboseMode.SILENT);
        return BenchmarkList.defaultList().getAll(silent, List.of()).stream()
                .map(BenchmarkListEntry::getUsername)
                .distinct()
                .filter(name -> wanted.matcher(shortName(name)).find())
                .sorted()
                .toList();
    }

    static List<Row> measure(List<String> names) throws RunnerException {
        Set<String> all = new HashSet<>(names);
        all.add(YARDSTICK);
        System.err.println(
                "bench: " + all.size() + " kernels, about 16 s each, whole flights 30 s");
        List<RunResult> results = new ArrayList<>();
        Map<Boolean, List<String>> slow =
                all.stream().collect(Collectors.partitioningBy(SLOW_TO_WARM::contains));
        for (var each : slow.entrySet()) {
            if (!each.getValue().isEmpty()) {
                results.addAll(run(each.getValue(), each.getKey() ? LONG_WARM_UP_S : WARM_UP_S));
            }
        }
        Set<String> lost = new HashSet<>(all);
        results.forEach(result -> lost.remove(result.getParams().getBenchmark()));
        lost.stream()
                .sorted()
                .forEach(name -> System.err.println("bench: " + shortName(name) + " failed"));
        double reference =
                results.stream()
                        .filter(r -> r.getParams().getBenchmark().equals(YARDSTICK))
                        .mapToDouble(r -> seconds(r.getPrimaryResult()))
                        .findFirst()
                        .orElseThrow();
        var rows = new ArrayList<Row>();
        for (RunResult each : results) {
            var time = each.getPrimaryResult();
            var allocated = each.getSecondaryResults().get("gc.alloc.rate.norm");
            var params = each.getParams();
            String name =
                    params.getParamsKeys().stream()
                            .map(params::getParam)
                            .reduce(
                                    shortName(params.getBenchmark()),
                                    (whole, value) -> whole + " " + value);
            rows.add(
                    new Row(
                            name,
                            seconds(time),
                            seconds(time) * time.getScoreError() / time.getScore(),
                            "yardstick",
                            seconds(time) / reference,
                            BUDGETS.getOrDefault(name, ""),
                            allocated == null ? null : allocated.getScore()));
        }
        return rows;
    }

    private static Collection<RunResult> run(List<String> names, int warmUpS)
            throws RunnerException {
        var options =
                new OptionsBuilder()
                        .forks(2)
                        .warmupIterations(warmUpS)
                        .warmupTime(TimeValue.seconds(1))
                        .measurementIterations(5)
                        .measurementTime(TimeValue.seconds(1))
                        .jvmArgsAppend("-Dliftwright.root=" + System.getProperty("liftwright.root"))
                        .addProfiler(GCProfiler.class)
                        .verbosity(VerboseMode.SILENT);
        names.forEach(name -> options.include("^" + Pattern.quote(name) + "$"));
        return new Runner(options.build()).run();
    }

    private static double seconds(Result<?> result) {
        return switch (result.getScoreUnit()) {
            case "ns/op" -> result.getScore() * 1e-9;
            case "us/op" -> result.getScore() * 1e-6;
            case "ms/op" -> result.getScore() * 1e-3;
            case "s/op" -> result.getScore();
            default -> throw new IllegalStateException("not a time: " + result.getScoreUnit());
        };
    }

    private static String shortName(String name) {
        return name.substring("liftwright.bench.".length());
    }
}
