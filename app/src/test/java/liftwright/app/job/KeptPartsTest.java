package liftwright.app.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.answer.AnswerJson;
import liftwright.app.flights.NotKeptException;
import liftwright.numerics.Kept;
import liftwright.numerics.Work;
import liftwright.review.FailureCase;
import liftwright.review.FailuresAnswer;
import liftwright.review.FailuresQuestion;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import liftwright.rig.file.Disk;
import liftwright.rig.file.FailingDisk;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Parts of work that is stopped, or dies, are there when it goes on. */
class KeptPartsTest {

    private static final int PARTS = 9;

    @TempDir Path folder;

    private Path file() {
        return folder.resolve("parts.bin");
    }

    private static double[] numbers(int part) {
        double[] numbers = new double[part % 4];
        Arrays.setAll(numbers, k -> Math.sin(part + 0.1 * k));
        return numbers;
    }

    private void keep(Disk disk, int from, int to) {
        try (KeptParts parts = KeptParts.open(file(), "a", disk)) {
            Kept.Batch batch = parts.batch(PARTS);
            for (int part = from; part < to; part++) {
                batch.keep(part, numbers(part));
            }
        }
    }

    /** How many parts are there, which have to be the first ones, and right. */
    private int there(String of) {
        try (KeptParts parts = KeptParts.open(file(), of, new Disk())) {
            Kept.Batch batch = parts.batch(PARTS);
            int there = 0;
            while (there < PARTS && batch.of(there).isPresent()) {
                assertThat(batch.of(there).orElseThrow()).containsExactly(numbers(there));
                there++;
            }
            for (int part = there; part < PARTS; part++) {
                assertThat(batch.of(part)).isEmpty();
            }
            return there;
        }
    }

    @Test
    void whereverTheFileWasCutAllThatWasWholeIsThereAndTheRestIsAdded() throws IOException {
        keep(new Disk(), 0, PARTS);
        byte[] whole = Files.readAllBytes(file());
        int before = 0;
        for (int cut = 0; cut <= whole.length; cut++) {
            Files.write(file(), Arrays.copyOf(whole, cut));
            int there = there("a");
            assertThat(there).isBetween(before, before + 1);
            before = there;
            keep(new Disk(), there, PARTS);
            assertThat(there("a")).isEqualTo(PARTS);
        }
        assertThat(before).isEqualTo(PARTS);
    }

    @Test
    void aDiskThatFailsAtAnyStepLosesNothingThatWasFinishedBefore() throws IOException {
        int refused = 0;
        for (int step = 0; step < PARTS + 2; step++) {
            Files.deleteIfExists(file());
            try {
                keep(new FailingDisk(step, false), 0, PARTS);
            } catch (NotKeptException e) {
                refused++;
            }
            // Two steps are those of the first line; the part at the failing step is lost.
            assertThat(there("a")).isEqualTo(Math.max(0, step - 2));
        }
        assertThat(refused).isEqualTo(2);
    }

    @Test
    void whatIsOfAnotherRigIsLetGoAndThatIsTold() {
        keep(new Disk(), 0, 5);
        try (KeptParts parts = KeptParts.open(file(), "b", new Disk())) {
            assertThat(parts.told()).startsWith("Begun anew");
            assertThat(parts.batch(PARTS).of(0)).isEmpty();
        }
        assertThat(there("a")).as("they are gone").isZero();
    }

    @Test
    void aBatchOfAnotherSizeOrPlaceIsAnother() {
        keep(new Disk(), 0, PARTS);
        try (KeptParts parts = KeptParts.open(file(), "a", new Disk())) {
            assertThat(parts.told()).isEmpty();
            assertThat(parts.batch(PARTS + 1).of(0)).isEmpty();
            assertThat(parts.batch(PARTS).of(0)).isEmpty();
        }
    }

    /** Counts what is done, and stops after so much. */
    private record Counting(Kept kept, AtomicInteger made, AtomicInteger before, int most)
            implements Work {

        Counting(Kept kept, int most) {
            this(kept, new AtomicInteger(), new AtomicInteger(), most);
        }

        @Override
        public void stage(String name, long total) {}

        @Override
        public void done(long units) {
            made.addAndGet((int) units);
        }

        @Override
        public void already(long units) {
            before.addAndGet((int) units);
        }

        @Override
        public boolean stopped() {
            return made.get() >= most;
        }
    }

    private static java.util.Optional<FailuresAnswer> losses(Rig rig, Work work) {
        return FailuresQuestion.ask(
                rig,
                "test",
                new FailureCase(60, true, true),
                new Settings(11, 128, 128, 2, false),
                work);
    }

    /**
     * Stopped, killed while it wrote, and taken up: the same to the last digit, nothing made twice.
     */
    @Test
    void lossesThatWereStoppedComeToTheSameAsUnbroken() throws IOException {
        Path example = Path.of("../examples/sandpiper");
        Rig rig =
                RigReading.read(
                                "rig.yaml",
                                RigFiles.read(example.resolve("rig.yaml")),
                                new Folder(example))
                        .rig()
                        .orElseThrow();
        var whole = new Counting(Kept.nothing(), Integer.MAX_VALUE);
        String unbroken = AnswerJson.write(losses(rig, whole).orElseThrow(), "rig", "0");
        int made = 0;
        for (int most : new int[] {40, 150}) {
            try (KeptParts parts = KeptParts.open(file(), "a", new Disk())) {
                var work = new Counting(parts, most);
                assertThat(losses(rig, work)).isEmpty();
                made += work.made().get();
            }
        }
        // Its end was only half written.
        byte[] bytes = Files.readAllBytes(file());
        Files.write(file(), Arrays.copyOf(bytes, bytes.length - 5));
        made--;
        try (KeptParts parts = KeptParts.open(file(), "a", new Disk())) {
            var work = new Counting(parts, Integer.MAX_VALUE);
            assertThat(AnswerJson.write(losses(rig, work).orElseThrow(), "rig", "0"))
                    .isEqualTo(unbroken);
            assertThat(work.before().get()).isEqualTo(made);
            assertThat(work.made().get()).isEqualTo(whole.made().get() - made);
            assertThat(made).isGreaterThan(150);
        }
    }
}
