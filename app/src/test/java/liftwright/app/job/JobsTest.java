package liftwright.app.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.random.RandomGenerator;
import liftwright.quantity.UnitSystem;
import liftwright.rig.file.Disk;
import liftwright.rig.file.FailingDisk;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs that count to a number, and how they stand through stops, ends and faults of the disk. */
class JobsTest {

    private static final Instant NOW = Instant.parse("2026-11-27T03:00:00Z");
    private static final UnitSystem SI = UnitSystem.SI;

    @TempDir Path folder;

    private final List<Throwable> faults = new CopyOnWriteArrayList<>();

    /** How far each job counted, by its number: what such a task would keep in a file. */
    private final Map<Integer, AtomicInteger> counted = new ConcurrentHashMap<>();

    /** Jobs wait here before each step while it is shut. */
    private volatile boolean open = true;

    private final AtomicInteger atOnce = new AtomicInteger();
    private final AtomicInteger mostAtOnce = new AtomicInteger();

    private final class Counting implements JobTask {
        private final int id;
        private final int to;

        Counting(JobNote note) {
            id = note.id();
            to = ((JobSpec.Flights) note.spec().what()).flights();
        }

        private AtomicInteger at() {
            return counted.computeIfAbsent(id, _ -> new AtomicInteger());
        }

        @Override
        public boolean run(Progress work) {
            mostAtOnce.accumulateAndGet(atOnce.incrementAndGet(), Math::max);
            try {
                work.stage("counting", to);
                work.already(at().get());
                while (at().get() < to && !work.stopped()) {
                    if (open) {
                        at().incrementAndGet();
                        work.done(1);
                    } else {
                        Thread.sleep(1);
                    }
                }
                return at().get() >= to;
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            } finally {
                atOnce.decrementAndGet();
            }
        }

        @Override
        public Optional<String> document(UnitSystem units) {
            return Optional.of(units + " " + at().get());
        }
    }

    private Jobs jobs() {
        return jobs(new Disk());
    }

    private Jobs jobs(Disk disk) {
        try {
            return new Jobs(
                    new JobFolder(folder.resolve("jobs"), disk),
                    Counting::new,
                    Clock.fixed(NOW, ZoneOffset.UTC),
                    faults::add);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static JobSpec spec(int flights, long seed) {
        return new JobSpec(
                "a rig.yaml",
                "sha256:1",
                new JobSpec.Flights(Optional.of("hold.yaml"), "sha256:2", flights, seed));
    }

    private static void until(BooleanSupplier what) {
        long end = System.nanoTime() + 20_000_000_000L;
        while (!what.getAsBoolean()) {
            if (System.nanoTime() > end) {
                throw new AssertionError("waited too long");
            }
            Thread.onSpinWait();
        }
    }

    private static JobState state(Jobs jobs, int id) {
        return jobs.of(id).note().state();
    }

    @Test
    void beginsRunsEndsAndIsFoundAgain() {
        Jobs jobs = jobs();
        int id = jobs.begin(spec(50, 1)).note().id();
        until(() -> state(jobs, id) == JobState.DONE);
        assertThat(jobs.document(id, SI)).isEqualTo("SI 50");
        Jobs next = jobs();
        counted.clear(); // what came of it is read from its file
        assertThat(next.of(id).note()).isEqualTo(jobs.of(id).note());
        assertThat(next.of(id).note().begun()).isEqualTo(NOW);
        assertThat(next.document(id, SI)).isEqualTo("SI 50");
        assertThat(next.document(id, UnitSystem.US)).isEqualTo("US 50");
        assertThat(faults).isEmpty();
    }

    @Test
    void oneRunsAtATimeInTheOrderOfBeginning() {
        open = false;
        Jobs jobs = jobs();
        int first = jobs.begin(spec(10, 1)).note().id();
        int second = jobs.begin(spec(10, 2)).note().id();
        int third = jobs.begin(spec(10, 3)).note().id();
        assertThat(state(jobs, second)).isEqualTo(JobState.WAITING);
        jobs.stop(second);
        assertThat(state(jobs, second)).isEqualTo(JobState.STOPPED);
        open = true;
        until(() -> state(jobs, third) == JobState.DONE);
        assertThat(state(jobs, first)).isEqualTo(JobState.DONE);
        assertThat(mostAtOnce).hasValue(1);
        jobs.resume(second);
        until(() -> state(jobs, second) == JobState.DONE);
        assertThat(jobs.all().stream().map(job -> job.note().id()).toList())
                .containsExactly(third, second, first);
    }

    @Test
    void stoppedAndTakenUpAgainItGoesOnWhereItWas() {
        open = false;
        Jobs jobs = jobs();
        int id = jobs.begin(spec(10, 1)).note().id();
        counted.computeIfAbsent(id, _ -> new AtomicInteger()).set(4);
        jobs.stop(id);
        until(() -> state(jobs, id) == JobState.STOPPED);
        assertThat(jobs.document(id, SI)).isEqualTo("SI 4");
        open = true;
        jobs.resume(id);
        until(() -> state(jobs, id) == JobState.DONE);
        assertThat(jobs.document(id, SI)).isEqualTo("SI 10");
        assertThatExceptionOfType(RefusedException.class).isThrownBy(() -> jobs.resume(id));
    }

    /** The same asked twice is one; with more flights it goes on to that many. */
    @Test
    void theSameWorkIsOneJob() {
        Jobs jobs = jobs();
        int id = jobs.begin(spec(10, 1)).note().id();
        until(() -> state(jobs, id) == JobState.DONE);
        assertThat(jobs.begin(spec(10, 1)).note().id()).isEqualTo(id);
        assertThat(jobs.begin(spec(7, 1)).note().state()).isEqualTo(JobState.DONE);
        assertThat(jobs.begin(spec(30, 1)).note().id()).isEqualTo(id);
        until(() -> state(jobs, id) == JobState.DONE);
        assertThat(jobs.document(id, SI)).isEqualTo("SI 30");
        int other = jobs.begin(spec(10, 2)).note().id();
        assertThat(other).isNotEqualTo(id);
        until(() -> state(jobs, other) == JobState.DONE);
    }

    /** Where a program dies, the next finds what stood on the disk at that moment. */
    @Test
    void whatRanWhenTheProgramDiedStandsStillAndGoesOn() {
        open = false;
        Jobs died = jobs();
        int id = died.begin(spec(20, 1)).note().id();
        int behind = died.begin(spec(20, 2)).note().id();
        until(() -> state(died, id) == JobState.RUNNING);
        Jobs next = jobs(); // the first still runs, as far as its files tell
        assertThat(state(next, id)).isEqualTo(JobState.STOPPED);
        assertThat(next.of(id).note().told()).contains("program ended");
        assertThat(state(next, behind)).isEqualTo(JobState.STOPPED);
        died.end();
        open = true;
        next.resume(id);
        until(() -> state(next, id) == JobState.DONE);
        assertThat(next.document(id, SI)).isEqualTo("SI 20");
    }

    @Test
    void theEndStopsWhatRunsAndBeginsNoOther() {
        open = false;
        Jobs jobs = jobs();
        int id = jobs.begin(spec(20, 1)).note().id();
        int behind = jobs.begin(spec(20, 2)).note().id();
        jobs.end();
        assertThat(state(jobs, id)).isEqualTo(JobState.STOPPED);
        assertThat(state(jobs(), id)).isEqualTo(JobState.STOPPED);
        assertThat(state(jobs(), behind)).isEqualTo(JobState.STOPPED);
    }

    @Test
    void whatIsLetGoIsGone() {
        open = false;
        Jobs jobs = jobs();
        int id = jobs.begin(spec(20, 1)).note().id();
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> jobs.forget(id))
                .withMessageContaining("Stop it first");
        jobs.stop(id);
        until(() -> state(jobs, id) == JobState.STOPPED);
        jobs.forget(id);
        assertThat(jobs.all()).isEmpty();
        assertThat(folder.resolve("jobs")).isEmptyDirectory();
        assertThat(jobs().all()).isEmpty();
    }

    /** Whichever step of the disk fails: refused or run, and found again as a whole job or none. */
    @Test
    void noFaultOfTheDiskLeavesHalfAJob() throws IOException {
        int refused = 0;
        int ran = 0;
        for (boolean forGood : List.of(false, true)) {
            for (int at = 0; at < 30; at++) {
                Jobs jobs = jobs(new FailingDisk(at, forGood));
                Optional<Integer> id = Optional.empty();
                try {
                    id = Optional.of(jobs.begin(spec(5, 1)).note().id());
                } catch (RefusedException e) {
                    assertThat(e.why()).isEqualTo(RefusedException.Why.DISK);
                    refused++;
                }
                if (id.isPresent()) {
                    int begun = id.get();
                    until(() -> !state(jobs, begun).isGoing());
                    ran++;
                    assertThat(state(jobs, begun)).isIn(JobState.DONE, JobState.STOPPED);
                }
                Jobs next = jobs();
                for (Job each : next.all()) {
                    int found = each.note().id();
                    if (each.note().state() != JobState.DONE) {
                        next.resume(found);
                        until(() -> state(next, found) == JobState.DONE);
                    }
                    assertThat(next.document(found, SI)).isEqualTo("SI 5");
                    next.forget(found);
                }
                counted.clear();
            }
        }
        assertThat(refused).isGreaterThanOrEqualTo(5);
        assertThat(ran).isGreaterThanOrEqualTo(5);
        assertThat(faults).isEmpty();
    }

    @Test
    void thereIsAnEndToHowManyAreKept() {
        Jobs jobs = jobs();
        for (int i = 0; i < Jobs.MOST; i++) {
            int id = jobs.begin(spec(1, i)).note().id();
            until(() -> state(jobs, id) == JobState.DONE);
        }
        assertThatExceptionOfType(RefusedException.class)
                .isThrownBy(() -> jobs.begin(spec(1, 1000)))
                .matches(e -> e.why() == RefusedException.Why.TOO_MANY);
    }

    /** Whatever stands in the folder: what is no whole job is passed over. */
    @Test
    void tornFilesAreNoJobs() throws IOException {
        Jobs jobs = jobs();
        int id = jobs.begin(spec(3, 1)).note().id();
        until(() -> state(jobs, id) == JobState.DONE);
        Path note = folder.resolve("jobs/1/job.txt");
        String whole = Files.readString(note);
        int passed = 0;
        for (int cut = 0; cut < whole.length(); cut++) {
            Files.writeString(note, whole.substring(0, cut));
            passed += jobs().all().isEmpty() ? 1 : 0;
        }
        assertThat(passed).isEqualTo(whole.length());
        Files.writeString(note, whole);
        Files.createDirectories(folder.resolve("jobs/notes"));
        Files.writeString(folder.resolve("jobs/7"), "a file");
        assertThat(jobs().all()).hasSize(1);
    }

    @Test
    void everyNoteIsReadAsItWasWritten() {
        Seeded.check(
                500,
                random -> {
                    JobNote note = drawn(random);
                    assertThat(JobText.read(note.id(), JobText.of(note))).contains(note);
                });
    }

    private static JobNote drawn(RandomGenerator random) {
        JobSpec.What what =
                switch (random.nextInt(3)) {
                    case 0 ->
                            new JobSpec.Flights(
                                    random.nextBoolean()
                                            ? Optional.of(name(random))
                                            : Optional.empty(),
                                    "sha256:" + random.nextLong(),
                                    1 + random.nextInt(100_000),
                                    random.nextLong());
                    case 1 -> new JobSpec.Pairs();
                    default -> new JobSpec.Explain(name(random));
                };
        JobState[] states = JobState.values();
        return new JobNote(
                1 + random.nextInt(1_000_000),
                new JobSpec(name(random), "sha256:" + random.nextLong(), what),
                Instant.ofEpochSecond(random.nextInt()),
                states[random.nextInt(states.length)],
                random.nextBoolean() ? "" : name(random),
                random.nextInt(1000),
                1 + random.nextInt(1000));
    }

    /** With colons, spaces, hashes and letters from everywhere in it. */
    private static String name(RandomGenerator random) {
        String letters = "a:  #é日b: ~'\"/\\.";
        var text = new StringBuilder("x");
        for (int i = random.nextInt(20); i > 0; i--) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        return text.append('y').toString();
    }
}
