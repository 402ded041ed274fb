package liftwright.app.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.reading.Clocked;
import liftwright.logbook.reading.Imported;
import liftwright.logbook.reading.Note;
import liftwright.logbook.reading.Rejected;
import liftwright.logbook.reading.Shift;
import liftwright.logbook.reading.Source;
import liftwright.logbook.store.NewFile;

/**
 * Logs that were read in, as a test that can be added to a logbook.
 *
 * @param entry with its tables
 * @param files that it names
 */
public record TestKeeping(TestEntry entry, List<NewFile> files) {

    private static final int MOST_NOTES = 100;
    private static final int LONGEST_NAME = 100;

    public TestKeeping {
        files = List.copyOf(files);
    }

    /**
     * @param said what is known of the test besides its logs; its tables do not matter
     * @param sources as they were read, in their order
     * @param imported what came of them; its files must stay until the test is added
     */
    public static TestKeeping of(TestEntry said, List<Source> sources, Imported imported) {
        Map<String, Source> byName = new HashMap<>();
        sources.forEach(one -> byName.putIfAbsent(one.name(), one));
        Map<String, Rejected> aside = new HashMap<>();
        imported.rejected().forEach(one -> aside.put(one.source(), one));
        var tables = new ArrayList<SampleTable>();
        var files = new ArrayList<NewFile>();
        for (Clocked table : imported.tables()) {
            int k = tables.size() + 1;
            Optional<Rejected> rejected = Optional.ofNullable(aside.get(table.source()));
            SampleTable kept = table(k, table, rejected, notes(imported, table.source()));
            tables.add(kept);
            files.add(new NewFile.Copied(kept.file(), table.parquet()));
            Source source = byName.getOrDefault(table.source(), sources.get(k - 1));
            files.add(new NewFile.Copied(kept.source(), source.file()));
            rejected.ifPresent(
                    rows ->
                            files.add(
                                    new NewFile.Copied(
                                            kept.rejected().orElseThrow(), rows.file())));
        }
        return new TestKeeping(
                new TestEntry(
                        said.card(),
                        said.date(),
                        said.people(),
                        said.weather(),
                        said.note(),
                        said.cost(),
                        said.hours(),
                        said.media(),
                        said.instruments(),
                        said.rig(),
                        tables),
                files);
    }

    private static List<String> notes(Imported imported, String source) {
        return imported.notes().stream()
                .filter(note -> note.source().equals(source))
                .map(Note::text)
                .limit(MOST_NOTES)
                .toList();
    }

    private static SampleTable table(
            int k, Clocked table, Optional<Rejected> rejected, List<String> notes) {
        return new SampleTable(
                "samples-" + k + ".parquet",
                "source/" + k + "-" + plain(table.source()),
                rejected.map(_ -> "rejected-" + k + ".csv"),
                table.rows(),
                rejected.map(Rejected::count).orElse(0L),
                table.firstS(),
                table.lastS(),
                clock(table.shift()),
                table.channels().stream()
                        .map(
                                channel ->
                                        new SampleTable.Channel(
                                                channel.signal(),
                                                channel.of(),
                                                channel.errorSi(),
                                                channel.errorShare()))
                        .toList(),
                notes);
    }

    private static SampleTable.Clock clock(Shift shift) {
        return switch (shift) {
            case Shift.Own() -> SampleTable.Clock.OWN;
            case Shift.Found(var byS, var toleranceS, var confidence, var by) ->
                    new SampleTable.Clock(
                            byS, Optional.of(confidence), by + ", within " + toleranceS + " s");
            case Shift.Unknown(var why, var bestS, var confidence) ->
                    new SampleTable.Clock(
                            shift.seconds(),
                            Optional.of(confidence),
                            "not aligned: " + why + " (best " + bestS + " s)");
        };
    }

    /** The last step of a path, with nothing in it that a name of a file should not have. */
    private static String plain(String named) {
        String path = named.replace('\\', '/');
        String name =
                path.substring(path.lastIndexOf('/') + 1).replaceAll("[^\\p{L}\\p{Nd}._-]", "_");
        return name.length() > LONGEST_NAME ? name.substring(name.length() - LONGEST_NAME) : name;
    }
}
