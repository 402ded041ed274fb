package liftwright.logbook.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CopyOnWriteArrayList;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.Note;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.entry.PartSheet;
import liftwright.logbook.entry.RandomEntries;
import liftwright.rig.file.FailingDisk;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts, packs, incidents and notes: nothing acknowledged is lost, nothing half is read. */
class RecordsTest {

    private static RandomEntries random(long seed) {
        return new RandomEntries(new SplittableRandom(seed));
    }

    private static Logbook at(Path home) {
        return Logbook.at(home.resolve("rig.yaml"));
    }

    /** Each thing that can be written, on a disk of one's own. */
    private interface Writing {
        void on(Records records, long seed) throws IOException;
    }

    private static final List<Writing> WRITINGS =
            List.of(
                    (records, seed) -> records.add(random(0).pack(), random(seed).row()),
                    (records, seed) -> records.add("left.1", random(seed).inspection()),
                    (records, seed) -> records.add(random(seed).incident(), List.of(), () -> false),
                    (records, seed) ->
                            records.add(
                                    random(seed)
                                            .note(EntryId.parse("2026-03-14-1").orElseThrow())));

    /** Everything that is there, as it reads. */
    private static List<Object> all(Records records) throws IOException {
        var all = new ArrayList<Object>();
        records.packs().values().forEach(sheet -> all.addAll(sheet.rows()));
        records.parts().values().forEach(sheet -> all.addAll(sheet.inspections()));
        records.incidents().forEach(one -> all.add(one.entry()));
        all.addAll(records.notes(EntryId.parse("2026-03-14-1").orElseThrow()));
        return all;
    }

    @Test
    void whereverTheDiskFailsWhatWasThereStays(@TempDir Path places) throws IOException {
        int failed = 0;
        for (int w = 0; w < WRITINGS.size(); w++) {
            boolean more = true;
            for (int at = 0; more; at++) {
                Path home = Files.createDirectory(places.resolve(w + " at " + at));
                Logbook whole = at(home);
                WRITINGS.get(w).on(whole.records(), 1);
                WRITINGS.get(w).on(whole.records(), 2);
                List<Object> before = all(whole.records());
                assertThat(before).hasSize(2);
                Logbook failing = Logbook.at(home.resolve("rig.yaml"), new FailingDisk(at, true));
                try {
                    WRITINGS.get(w).on(failing.records(), 3);
                    more = false;
                } catch (IOException e) {
                    failed++;
                }
                List<Object> after = all(whole.records());
                assertThat(after).as(w + " at " + at).containsAll(before);
                assertThat(after.size()).isBetween(2, 3);
                assertThat(whole.check()).as(w + " at " + at).isEmpty();
                WRITINGS.get(w).on(whole.records(), 4);
                assertThat(all(whole.records())).hasSize(after.size() + 1);
            }
        }
        assertThat(failed).as("writes, forces and renames of four kinds").isGreaterThan(15);
    }

    @Test
    void aSingleChangedByteIsNoticed(@TempDir Path home) throws IOException {
        Logbook logbook = at(home);
        for (Writing writing : WRITINGS) {
            for (int k = 0; k < 3; k++) {
                writing.on(logbook.records(), k);
            }
        }
        assertThat(logbook.check()).isEmpty();
        List<Path> files;
        try (var found = Files.walk(logbook.folder())) {
            files =
                    found.filter(Files::isRegularFile)
                            .filter(file -> !file.getFileName().toString().equals(".lock"))
                            .sorted()
                            .toList();
        }
        assertThat(files.size()).isGreaterThan(8);
        Seeded.check(
                300,
                random -> {
                    Path file = files.get(random.nextInt(files.size()));
                    try {
                        byte[] bytes = Files.readAllBytes(file);
                        byte[] other = bytes.clone();
                        other[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                        Files.write(file, other);
                        assertThat(logbook.check()).as("%s", file).isNotEmpty();
                        Files.write(file, bytes);
                    } catch (IOException e) {
                        throw new UncheckedIOException(e);
                    }
                });
        assertThat(logbook.check()).isEmpty();
    }

    @Test
    void rowsOfWritersAtOnceAreAllThere(@TempDir Path home) throws Exception {
        var failures = new CopyOnWriteArrayList<Exception>();
        var threads = new ArrayList<Thread>();
        for (int t = 0; t < 4; t++) {
            long seed = 10L * t;
            threads.add(
                    Thread.ofPlatform()
                            .start(
                                    () -> {
                                        try {
                                            for (int k = 0; k < 5; k++) {
                                                for (Writing writing : WRITINGS) {
                                                    writing.on(at(home).records(), seed + k);
                                                }
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
        assertThat(all(at(home).records())).hasSize(4 * 5 * WRITINGS.size());
        assertThat(at(home).check()).isEmpty();
    }

    @Test
    void nothingIsPutBehindWhatWasChanged(@TempDir Path home) throws IOException {
        Records records = at(home).records();
        PackSheet head = random(0).pack();
        records.add(head, random(1).row());
        Path file = at(home).folder().resolve("packs/p.1.yaml");
        Files.writeString(file, Files.readString(file) + "  - date: 2026-01-01\n");
        String changed = Files.readString(file);
        assertThatThrownBy(() -> records.add(head, random(2).row()))
                .isInstanceOf(SpoiltException.class)
                .hasMessage("packs/p.1.yaml: holds other bytes than were written");
        assertThat(Files.readString(file)).isEqualTo(changed);
        assertThatThrownBy(() -> records.pack("p.1")).isInstanceOf(SpoiltException.class);
    }

    @Test
    void namesThatLeadElsewhereAreRefused(@TempDir Path home) throws IOException {
        Records records = at(home).records();
        PartSheet.Inspection inspection = random(3).inspection();
        for (String id :
                List.of("../x", "/x", "a/b", "..", ".x", "", "a\\b", "x..y", "C:x", "a\u0000")) {
            assertThat(Records.isGoodId(id)).as(id).isFalse();
            assertThatThrownBy(() -> records.add(id, inspection)).isInstanceOf(IOException.class);
        }
        for (String id : List.of("left.3", "feed.p.12.to.left.8.run", "linker Fächer 2", "p_1+2")) {
            assertThat(Records.isGoodId(id)).as(id).isTrue();
        }
        try (var files = Files.walk(home)) {
            assertThat(files.filter(Files::isRegularFile)).isEmpty();
        }
    }

    @Test
    void linksRenamedAndForeignFilesAreTold(@TempDir Path home, @TempDir Path elsewhere)
            throws IOException {
        Logbook logbook = at(home);
        WRITINGS.getFirst().on(logbook.records(), 1);
        Path packs = logbook.folder().resolve("packs");
        Files.copy(packs.resolve("p.1.yaml"), packs.resolve("p.2.yaml"));
        assertThat(logbook.check()).extracting(Flaw::kind).containsExactly(Flaw.Kind.CHANGED);
        Files.delete(packs.resolve("p.2.yaml"));
        Files.writeString(packs.resolve("readme"), "x");
        Files.writeString(packs.resolve(".p.1.yaml.123"), "half");
        Files.writeString(logbook.folder().resolve("plan.txt"), "x");
        assertThat(logbook.check())
                .extracting(Flaw::kind)
                .containsExactlyInAnyOrder(
                        Flaw.Kind.TOO_MANY, Flaw.Kind.REMAINS, Flaw.Kind.TOO_MANY);
        Files.move(packs.resolve("p.1.yaml"), elsewhere.resolve("p.yaml"));
        Files.createSymbolicLink(packs.resolve("p.1.yaml"), elsewhere.resolve("p.yaml"));
        assertThat(logbook.check()).extracting(Flaw::kind).contains(Flaw.Kind.LINK);
        assertThatThrownBy(() -> logbook.records().pack("p.1")).isInstanceOf(SpoiltException.class);
    }

    @Test
    void notesKeepTheirOrderBeyondTen(@TempDir Path home) throws IOException {
        Records records = at(home).records();
        EntryId about = EntryId.parse("2026-03-14-1").orElseThrow();
        var written = new ArrayList<Note>();
        for (int k = 0; k < 12; k++) {
            Note note = random(k).note(about);
            written.add(note);
            records.add(note);
        }
        assertThat(records.notes(about)).isEqualTo(written);
    }
}
