package liftwright.logbook.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.RandomEntries;
import liftwright.logbook.entry.SampleTable;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.entry.TestEntry.Snapshot;
import liftwright.plant.recording.Samples;
import liftwright.rig.file.FailingDisk;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tests in a logbook: whole or not at all, and as they were written. */
class LogbookTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");

    @TempDir private Path home;
    private RigReading rig;

    @BeforeEach
    void aRig() throws IOException {
        Files.copy(CURLEW, home.resolve("rig.yaml"));
        rig =
                RigReading.read(
                        "rig.yaml", Files.readAllBytes(home.resolve("rig.yaml")), new Folder(home));
        assertThat(rig.rig()).isPresent();
    }

    private Logbook logbook(Path place) {
        return Logbook.at(place.resolve("rig.yaml"));
    }

    private TestEntry entry(RandomGenerator random) {
        return new RandomEntries(random).test(new Snapshot("rig.yaml", rig.digest(), 1));
    }

    /** What the entry names, with bytes of no matter what. */
    static List<NewFile> files(TestEntry entry, RandomGenerator random) {
        var files = new ArrayList<NewFile>();
        for (SampleTable table : entry.tables()) {
            Stream.concat(Stream.of(table.file(), table.source()), table.rejected().stream())
                    .forEach(name -> files.add(NewFile.Said.of(name, bytes(random))));
        }
        return files;
    }

    private static byte[] bytes(RandomGenerator random) {
        byte[] bytes = new byte[1 + random.nextInt(300)];
        random.nextBytes(bytes);
        return bytes;
    }

    private StoredTest add(Logbook logbook, long seed) throws IOException {
        var random = new SplittableRandom(seed);
        TestEntry entry = entry(random);
        return logbook.add(entry, rig, files(entry, random), () -> false);
    }

    @Test
    void whatIsAddedIsThereAsItWasSaid() throws IOException {
        Logbook logbook = logbook(home);
        assertThat(logbook.tests()).isEmpty();
        assertThat(logbook.check()).isEmpty();
        var added = new ArrayList<StoredTest>();
        for (int k = 0; k < 30; k++) {
            added.add(add(logbook, k));
        }
        assertThat(logbook.tests()).containsExactlyInAnyOrderElementsOf(added);
        assertThat(logbook.tests()).extracting(StoredTest::id).isSorted();
        assertThat(logbook.check()).isEmpty();
        StoredTest first = logbook.test(added.getFirst().id()).orElseThrow();
        assertThat(logbook.rigOf(first).rig()).isEqualTo(rig.rig());
        assertThat(logbook.test(new EntryId(first.id().date(), 777))).isEmpty();
    }

    @Test
    void channelsAreReadOnTheClockOfTheTest() throws IOException {
        Logbook logbook = logbook(home);
        StoredTest test = add(logbook, 5);
        var recording =
                logbook.recording(
                        test,
                        (_, columns, most) ->
                                columns.stream()
                                        .collect(
                                                Collectors.toMap(
                                                        column -> column,
                                                        column ->
                                                                new Samples(
                                                                        new double[] {0, most},
                                                                        new double[] {
                                                                            column.length(), 2
                                                                        }))),
                        9);
        for (SampleTable table : test.entry().tables()) {
            for (SampleTable.Channel channel : table.channels()) {
                var track = recording.track(channel.signal(), channel.of()).orElseThrow();
                assertThat(track.samples().firstS()).isEqualTo(table.clock().shiftS());
                assertThat(track.samples().lastS()).isEqualTo(9 + table.clock().shiftS());
                assertThat(track.samples().si(0)).isEqualTo(channel.name().length());
            }
        }
        assertThat(recording.tracks()).isNotEmpty();
    }

    @Test
    void whereverTheDiskFailsATestIsThereWholeOrNotAtAll(@TempDir Path places) throws IOException {
        int failed = 0;
        boolean more = true;
        for (int at = 0; more; at++) {
            Path place = Files.createDirectory(places.resolve("at " + at));
            Logbook whole = logbook(place);
            StoredTest first = add(whole, 1);
            var disk = new FailingDisk(at, true);
            try {
                add(Logbook.at(place.resolve("rig.yaml"), disk), 2);
                more = false;
                assertThat(disk.steps()).isGreaterThan(10);
            } catch (IOException e) {
                failed++;
            }
            List<StoredTest> tests = whole.tests();
            assertThat(tests).contains(first);
            assertThat(tests.size()).isBetween(1, 2);
            assertThat(whole.check()).as("at " + at).isEmpty();
            assertThat(add(whole, 3)).isIn(whole.tests());
        }
        assertThat(failed).as("writes, forces, one rename").isGreaterThan(10);
    }

    /** As if power went: nothing of the program's runs any more, not even to clean up. */
    @Test
    void whatAnInterruptedAdditionLeavesIsToldAndDoesNoHarm() throws IOException {
        Logbook logbook = logbook(home);
        StoredTest first = add(logbook, 1);
        Path remains =
                Files.createDirectory(
                        logbook.folder().resolve("tests").resolve(FreshFolder.TEMPORARY + "1"));
        Files.writeString(remains.resolve("test.yaml"), "liftwright test: 1");
        assertThat(logbook.tests()).containsExactly(first);
        assertThat(logbook.check())
                .singleElement()
                .satisfies(flaw -> assertThat(flaw.kind()).isEqualTo(Flaw.Kind.REMAINS));
        assertThat(logbook.check()).allMatch(Flaw::isHarmless);
        add(logbook, 2);
        assertThat(logbook.tests()).hasSize(2);
        assertThat(remains).isDirectory();
    }

    @Test
    void writersAtOnceDoNotClash() throws Exception {
        var added = new CopyOnWriteArrayList<StoredTest>();
        var failures = new CopyOnWriteArrayList<Exception>();
        var threads = new ArrayList<Thread>();
        for (int t = 0; t < 4; t++) {
            threads.add(
                    Thread.ofPlatform()
                            .start(
                                    () -> {
                                        try {
                                            for (int k = 0; k < 8; k++) {
                                                added.add(add(logbook(home), 9));
                                            }
                                        } catch (IOException | RuntimeException e) {
                                            failures.add(e);
                                        }
                                    }));
        }
        for (Thread thread : threads) {
            thread.join();
        }
        assertThat(failures).isEmpty();
        assertThat(added).hasSize(32).doesNotHaveDuplicates();
        assertThat(logbook(home).tests()).containsExactlyInAnyOrderElementsOf(added);
        assertThat(added.stream().map(test -> test.id().number()).sorted().toList())
                .isEqualTo(Stream.iterate(1, n -> n + 1).limit(32).toList());
    }

    @Test
    void stoppedMeansNothingWasAdded() throws IOException {
        Logbook logbook = logbook(home);
        var random = new SplittableRandom(4);
        TestEntry entry = entry(random);
        List<NewFile> files = files(entry, random);
        var asked = new int[1];
        assertThatThrownBy(() -> logbook.add(entry, rig, files, () -> asked[0]++ > 3))
                .isInstanceOf(IOException.class);
        assertThat(logbook.tests()).isEmpty();
        assertThat(logbook.check()).isEmpty();
    }

    /** Any byte of any file, and the list of digests is one of them. */
    @Test
    void aSingleChangedByteIsNoticed() throws IOException {
        Logbook logbook = logbook(home);
        for (int k = 0; k < 3; k++) {
            add(logbook, 40 + k);
        }
        List<Path> files;
        try (var all = Files.walk(logbook.folder())) {
            files = all.filter(Files::isRegularFile).sorted().toList();
        }
        assertThat(files.size()).isGreaterThan(12);
        Seeded.check(
                400,
                random -> {
                    Path file = files.get(random.nextInt(files.size()));
                    try {
                        tamper(file, random, () -> logbook.check());
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
        assertThat(logbook.check()).isEmpty();
    }

    /** Asks for the flaws while one byte of a file is another. */
    private static void tamper(Path file, RandomGenerator random, Asked asked) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        byte[] other = bytes.clone();
        other[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        Files.write(file, other);
        try {
            assertThat(asked.flaws()).as("%s", file).isNotEmpty();
        } finally {
            Files.write(file, bytes);
        }
    }

    private interface Asked {
        List<Flaw> flaws() throws IOException;
    }

    @Test
    void whatIsMissingCopiedOrTooManyIsTold() throws IOException {
        Logbook logbook = logbook(home);
        StoredTest test = add(logbook, 6);
        Path tests = logbook.folder().resolve("tests");
        Files.writeString(test.folder().resolve("extra.txt"), "later", UTF_8);
        assertThat(logbook.check())
                .extracting(Flaw::kind, Flaw::file)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                Flaw.Kind.TOO_MANY, "tests/" + test.id() + "/extra.txt"));
        Files.delete(test.folder().resolve("extra.txt"));
        Files.delete(test.folder().resolve("rig/rig.yaml"));
        assertThat(logbook.check()).extracting(Flaw::kind).containsExactly(Flaw.Kind.MISSING);
        assertThatThrownBy(() -> logbook.rigOf(test)).isInstanceOf(SpoiltException.class);
        Files.copy(home.resolve("rig.yaml"), test.folder().resolve("rig/rig.yaml"));
        assertThat(logbook.check()).isEmpty();
        Files.move(test.folder(), tests.resolve(test.id().date() + "-4"));
        assertThat(logbook.check())
                .extracting(Flaw::kind)
                .containsExactly(Flaw.Kind.MISSING, Flaw.Kind.MISSING, Flaw.Kind.MISSING);
        Files.move(tests.resolve(test.id().date() + "-4"), tests.resolve("1999-01-01-1"));
        assertThat(logbook.check()).extracting(Flaw::kind).containsExactly(Flaw.Kind.CHANGED);
        assertThat(logbook.tests()).isEmpty();
    }

    @Test
    void linksLeadNowhere(@TempDir Path elsewhere) throws IOException {
        Logbook logbook = logbook(home);
        StoredTest test = add(logbook, 7);
        Path other = elsewhere.resolve("other");
        Files.writeString(other, "not yours");
        Path table = test.folder().resolve(test.entry().tables().getFirst().file());
        byte[] bytes = Files.readAllBytes(table);
        Files.delete(table);
        Files.createSymbolicLink(table, other);
        assertThat(logbook.check()).extracting(Flaw::kind).contains(Flaw.Kind.LINK);
        assertThatThrownBy(() -> logbook.recording(test, (_, _, _) -> Map.of(), 9))
                .isInstanceOf(SpoiltException.class);
        // Also where it leads to the very same bytes.
        Files.write(other, bytes);
        assertThatThrownBy(() -> logbook.recording(test, (_, _, _) -> Map.of(), 9))
                .isInstanceOf(SpoiltException.class);
        Files.delete(table);
        Files.write(table, bytes);
        assertThat(logbook.check()).isEmpty();
        Files.createSymbolicLink(logbook.folder().resolve("tests/2020-01-01-1"), test.folder());
        assertThat(logbook.tests()).containsExactly(test);
        assertThat(logbook.check()).extracting(Flaw::kind).containsExactly(Flaw.Kind.LINK);
    }

    @Test
    void namesThatLeadElsewhereAreRefused() {
        Logbook logbook = logbook(home);
        TestEntry entry = entry(new SplittableRandom(8));
        for (String name :
                List.of(
                        "../rig.yaml",
                        "/etc/x",
                        "a/../../b",
                        "",
                        "a//b",
                        "C:x",
                        "a\\b",
                        "digests.txt",
                        "test.yaml")) {
            assertThatThrownBy(
                            () ->
                                    logbook.add(
                                            entry,
                                            rig,
                                            List.of(NewFile.Said.of(name, new byte[] {1})),
                                            () -> false))
                    .as(name)
                    .isInstanceOf(IOException.class);
        }
        assertThat(home.resolve("rig.logbook/tests")).isEmptyDirectory();
    }
}
