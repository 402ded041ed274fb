package liftwright.rig.shape.bind;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.csv.Beside;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.table.BenchTable;
import liftwright.rig.table.CellTest;
import liftwright.rig.table.Tables;

/** Fetches the tables that a rig names, each once, and keeps what they hold. */
public final class Shelf {

    /** Most bytes of all tables of a rig together; files are untrusted. */
    static final int MOST_BYTES = 16 << 20;

    private final Beside beside;
    private final String folder;
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final Slot<BenchTable> benches;
    private final Slot<CellTest> cellTests;
    private int bytes;

    /** The tables of one kind by path; empty for those that were no such table. */
    private record Slot<T>(
            Map<String, Optional<T>> byPath, BiFunction<String, byte[], TableReading<T>> reader) {}

    private Shelf(Beside beside, String folder, Tables known) {
        this.beside = beside;
        this.folder = folder;
        benches = new Slot<>(new HashMap<>(), TableReader::bench);
        cellTests = new Slot<>(new HashMap<>(), TableReader::cellTest);
        known.benches().forEach((path, table) -> benches.byPath.put(path, Optional.of(table)));
        known.cellTests().forEach((path, table) -> cellTests.byPath.put(path, Optional.of(table)));
    }

    /**
     * Of a rig file.
     *
     * @param fileName of the rig file as problems call it; tables are called by their place beside
     *     it
     */
    public static Shelf beside(String fileName, Beside beside) {
        int slash = fileName.lastIndexOf('/');
        return new Shelf(beside, fileName.substring(0, slash + 1), Tables.NONE);
    }

    /** Of a rig that was read before: nothing else is to be had. */
    public static Shelf of(Tables known) {
        return new Shelf(Beside.NOTHING, "", known);
    }

    Optional<BenchTable> bench(String path, Spot spot, Problems problems) {
        return take(benches, path, spot, problems);
    }

    Optional<CellTest> cellTest(String path, Spot spot, Problems problems) {
        return take(cellTests, path, spot, problems);
    }

    /** All that was taken. */
    Tables tables() {
        return new Tables(present(benches), present(cellTests));
    }

    /** The bytes of every file that was read, by path, sorted. */
    public Map<String, byte[]> files() {
        return new TreeMap<>(files);
    }

    private static <T> Map<String, T> present(Slot<T> slot) {
        var present = new HashMap<String, T>();
        slot.byPath.forEach((path, table) -> table.ifPresent(t -> present.put(path, t)));
        return present;
    }

    private <T> Optional<T> take(Slot<T> slot, String path, Spot spot, Problems problems) {
        Optional<T> known = slot.byPath.get(path);
        if (known != null) {
            return known;
        }
        Optional<T> table =
                fetch(path, spot, problems).flatMap(content -> read(slot, path, content, problems));
        slot.byPath.put(path, table);
        return table;
    }

    private <T> Optional<T> read(Slot<T> slot, String path, byte[] content, Problems problems) {
        return switch (slot.reader.apply(path, content)) {
            case TableReading.Whole<T>(var table) -> Optional.of(table);
            case TableReading.Broken<T>(var faults) -> {
                problems.addBeside(named(faults));
                yield Optional.empty();
            }
        };
    }

    private Optional<byte[]> fetch(String path, Spot spot, Problems problems) {
        byte[] before = files.get(path);
        if (before != null) {
            return Optional.of(before);
        }
        return switch (beside.fetch(path)) {
            case Beside.Fetched.Bytes(var content) -> {
                bytes += content.length;
                if (bytes > MOST_BYTES) {
                    problems.add(
                            Code.TOO_LARGE,
                            spot,
                            Problems.quote(path) + ", and with it too much",
                            "tables of at most " + MOST_BYTES + " bytes together",
                            "");
                    yield Optional.empty();
                }
                files.put(path, content);
                yield Optional.of(content);
            }
            case Beside.Fetched.Not(var code, var found, var advice) -> {
                problems.add(
                        code,
                        spot,
                        Problems.quote(path) + ": " + found,
                        "a table beside the rig file",
                        advice);
                yield Optional.empty();
            }
        };
    }

    private List<Problem> named(List<Problem> faults) {
        return faults.stream()
                .map(
                        p ->
                                new Problem(
                                        p.code(),
                                        new Problem.Place(
                                                folder + p.at().file(),
                                                p.at().line(),
                                                p.at().column(),
                                                p.at().path()),
                                        p.found(),
                                        p.expected(),
                                        p.advice()))
                .toList();
    }
}
