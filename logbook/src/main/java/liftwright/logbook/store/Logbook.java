package liftwright.logbook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.EntryReading;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.plant.recording.Recording;
import liftwright.plant.recording.Samples;
import liftwright.plant.recording.Track;
import liftwright.rig.file.Disk;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/**
 * The logbook of a rig: {@code rig.logbook} beside {@code rig.yaml}. What is added is there whole
 * or not at all and is never edited; what is read is held against its digest first.
 */
public final class Logbook {

    static final String TESTS = "tests";
    static final String TEST_FILE = "test.yaml";
    static final String RIG = "rig";

    private final Path folder;
    private final Disk disk;

    private Logbook(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /** That of a rig file; it need not be there yet. */
    public static Logbook at(Path rigFile) {
        return at(rigFile, new Disk());
    }

    /** As the other one, step by step on {@code disk}. */
    public static Logbook at(Path rigFile, Disk disk) {
        String name = String.valueOf(rigFile.getFileName());
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        return new Logbook(rigFile.toAbsolutePath().resolveSibling(stem + ".logbook"), disk);
    }

    public Path folder() {
        return folder;
    }

    /**
     * What can be read of the tests.
     *
     * @param tests in the order of their days
     * @param flaws why others cannot
     */
    public record Listing(List<StoredTest> tests, List<Flaw> flaws) {
        public Listing {
            tests = List.copyOf(tests);
            flaws = List.copyOf(flaws);
        }
    }

    /** Tests whose {@code test.yaml} is as it was written, in the order of their days. */
    public List<StoredTest> tests() throws IOException {
        return listing().tests();
    }

    /** The same, with why others cannot be listed. Their samples are not looked at. */
    public Listing listing() throws IOException {
        var tests = new ArrayList<StoredTest>();
        var flaws = new ArrayList<>(Folders.strangers(among(), TESTS));
        for (var entry : Folders.entries(among()).entrySet()) {
            read(entry.getKey(), entry.getValue(), flaws).ifPresent(tests::add);
        }
        return new Listing(tests, flaws);
    }

    private Path among() {
        return folder.resolve(TESTS);
    }

    private static Optional<StoredTest> read(EntryId id, Path at, List<Flaw> flaws)
            throws IOException {
        return new EntryFolder<>(TESTS, TEST_FILE, EntryReading::test, TestEntry::date)
                .read(id, at, flaws)
                .map(read -> new StoredTest(id, read.entry(), read.digest(), at));
    }

    /** What it holds besides tests. */
    public Records records() {
        return new Records(this, disk);
    }

    /**
     * Names all files of a test, each of which is as it was written.
     *
     * @throws SpoiltException where one is not, or where there is no such test
     */
    public String digest(EntryId id) throws IOException {
        Path at = Folders.entries(among()).get(id);
        String shown = TESTS + "/" + id.text();
        Optional<Digests> digests = at == null ? Optional.empty() : Digests.of(at);
        if (at == null || digests.isEmpty()) {
            throw new SpoiltException(List.of(Digests.told(Flaw.Kind.MISSING, shown)));
        }
        List<Flaw> flaws = digests.get().flaws(at, shown);
        if (!flaws.isEmpty()) {
            throw new SpoiltException(flaws);
        }
        return digests.get().digest();
    }

    /**
     * One test; empty where there is none of that name.
     *
     * @throws SpoiltException where it is there and not as it was written
     * @throws IOException where the disk does not give it
     */
    public Optional<StoredTest> test(EntryId id) throws IOException {
        Path at = Folders.entries(among()).get(id);
        if (at == null) {
            return Optional.empty();
        }
        var flaws = new ArrayList<Flaw>();
        Optional<StoredTest> test = read(id, at, flaws);
        if (test.isEmpty()) {
            throw new SpoiltException(flaws);
        }
        return test;
    }

    /**
     * What a test's channels showed, each on the clock of the test.
     *
     * @param test of this logbook
     * @param reader of tables
     * @param most samples of a channel, about
     * @throws SpoiltException where a table is not as it was written
     */
    public Recording recording(StoredTest test, SamplesOf reader, int most) throws IOException {
        var tracks = new ArrayList<Track>();
        for (SampleTable table : test.entry().tables()) {
            Path file = whole(test, table.file());
            Map<String, Samples> read =
                    reader.read(
                            file,
                            table.channels().stream().map(SampleTable.Channel::name).toList(),
                            most);
            for (SampleTable.Channel channel : table.channels()) {
                Optional.ofNullable(read.get(channel.name()))
                        .map(samples -> shifted(samples, table.clock().shiftS()))
                        .map(channel::with)
                        .ifPresent(tracks::add);
            }
        }
        return new Recording(tracks);
    }

    private static Samples shifted(Samples samples, double shiftS) {
        if (shiftS == 0) {
            return samples;
        }
        double[] timesS = new double[samples.size()];
        double[] values = new double[samples.size()];
        for (int k = 0; k < timesS.length; k++) {
            timesS[k] = samples.timeS(k) + shiftS;
            values[k] = samples.si(k);
        }
        return new Samples(timesS, values);
    }

    /** The rig as it was: the snapshot of its file and its tables. */
    public RigReading rigOf(StoredTest test) throws IOException {
        String named = test.entry().rig().file();
        Path rig = whole(test, RIG + "/" + named);
        RigReading reading =
                RigReading.read(named, RigFiles.read(rig), new Folder(test.folder().resolve(RIG)));
        if (!reading.digest().equals(test.entry().rig().digest())) {
            throw new SpoiltException(
                    List.of(
                            Flaw.of(
                                    Flaw.Kind.CHANGED,
                                    TESTS + "/" + test.id().text() + "/" + RIG,
                                    "is another rig than was written")));
        }
        return reading;
    }

    /**
     * A file of a test, whole as it was written.
     *
     * @param name below the test's folder
     * @throws SpoiltException where it is not
     */
    public Path whole(StoredTest test, String name) throws IOException {
        Optional<Digests> digests = Digests.of(test.folder());
        String shown = TESTS + "/" + test.id().text() + "/" + name;
        Optional<Flaw.Kind> flaw =
                digests.isPresent() && digests.get().byName().containsKey(name)
                        ? digests.get().flaw(test.folder(), name)
                        : Optional.of(Flaw.Kind.TOO_MANY);
        if (flaw.isPresent()) {
            throw new SpoiltException(List.of(Digests.told(flaw.get(), shown)));
        }
        return test.folder().resolve(name);
    }

    /**
     * Adds a test.
     *
     * @param entry what is known of it
     * @param rig as it is now, with the tables beside it
     * @param files that the entry names: tables, rejected rows, sources
     * @param stopped asked now and then; when it says so nothing is added
     * @return the test as it stands in the logbook: it lasts through a loss of power
     * @throws IOException if any of it fails; no test is then listed, or, where only the last step
     *     failed, the whole test
     */
    public StoredTest add(
            TestEntry entry, RigReading rig, List<NewFile> files, BooleanSupplier stopped)
            throws IOException {
        byte[] text = EntryReading.text(entry).getBytes(StandardCharsets.UTF_8);
        EntryReading<TestEntry> again = EntryReading.test(TEST_FILE, text);
        if (!again.entry().equals(Optional.of(entry))) {
            throw new IOException(
                    "this test could not be read back, so it was not written: " + again.problems());
        }
        var all = new ArrayList<NewFile>();
        all.add(NewFile.Said.of(TEST_FILE, text));
        all.addAll(Snapshots.of(entry.rig(), rig));
        all.addAll(files);
        EntryId id = new FreshFolder(among(), disk, stopped).add(entry.date(), all);
        return test(id).orElseThrow(() -> new IOException(id + " is gone again"));
    }

    /** Everything that is not as it was written, every file of it looked at. */
    public List<Flaw> check() throws IOException {
        if (Files.isSymbolicLink(folder)) {
            return List.of(Digests.told(Flaw.Kind.LINK, String.valueOf(folder.getFileName())));
        }
        return new Checking(folder).flaws(listing(), records().flaws());
    }

    /** Whether there is a logbook at all. */
    public boolean isThere() {
        return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS);
    }
}
