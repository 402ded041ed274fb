package liftwright.rig.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.file.Disk;
import liftwright.rig.file.FailingDisk;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a failing disk, a torn journal or a killed program leave behind. */
class DraftFaultTest {

    private static final String FIRST = "# a rig\nrig: Small # kept\nsite:\n  elevation: 0 m\n";

    @TempDir Path folder;

    private Draft open(Disk disk) throws IOException {
        return Draft.open(folder, "rig.yaml", disk);
    }

    private static String text(Draft draft) {
        return draft.reading().text().text();
    }

    /** One thing that a person does, and what the text is afterwards. */
    private interface Step {
        Outcome on(Draft draft) throws IOException;
    }

    private static Step set(int metres) {
        return draft ->
                draft.change(
                        draft.revision(),
                        List.of(new Change.Set(RigPath.parse("site/elevation"), metres + " m")),
                        "higher");
    }

    private static final List<Step> STEPS =
            List.of(
                    set(1),
                    draft -> draft.text(draft.revision(), text(draft) + "# typed\n"),
                    set(2),
                    draft -> draft.undo(draft.revision()),
                    draft -> draft.save(draft.revision()),
                    set(3),
                    draft -> draft.undo(draft.revision()),
                    draft -> draft.redo(draft.revision()),
                    draft -> draft.save(draft.revision()),
                    draft -> draft.undo(draft.revision()),
                    draft -> draft.text(draft.revision(), "[broken"));

    /**
     * Does all steps; what each was asked to make is in {@code asked}, what counts in the draft.
     */
    private List<String> texts() throws IOException {
        Files.writeString(folder.resolve("rig.yaml"), FIRST);
        var texts = new ArrayList<String>(List.of(FIRST));
        try (var draft = open(new Disk())) {
            for (var step : STEPS) {
                assertThat(step.on(draft)).isInstanceOf(Outcome.Done.class);
                texts.add(text(draft));
            }
        }
        clear();
        return texts;
    }

    private void clear() throws IOException {
        Files.writeString(folder.resolve("rig.yaml"), FIRST);
        Files.deleteIfExists(JournalPlace.of(folder, "rig.yaml"));
    }

    private String onDisk() throws IOException {
        return Files.readString(folder.resolve("rig.yaml"));
    }

    /** Where taking a file away can fail too. */
    private static FailingDisk failing(int at, boolean forGood) {
        return new FailingDisk(at, forGood) {
            @Override
            public void remove(Path file) throws IOException {
                step();
                super.remove(file);
            }
        };
    }

    @Test
    void whereverTheMachineStopsNothingAcknowledgedIsLost() throws Exception {
        var texts = texts();
        int crashes = 0;
        for (int at = 0; ; at++) {
            clear();
            String acknowledged = FIRST;
            String asked = FIRST;
            String saved = FIRST;
            String saving = FIRST;
            boolean stopped = false;
            var disk = failing(at, true);
            try (var draft = open(disk)) {
                for (int i = 0; i < STEPS.size() && !stopped; i++) {
                    asked = texts.get(i + 1);
                    saving = i == 4 || i == 8 ? asked : saved;
                    try {
                        STEPS.get(i).on(draft);
                        acknowledged = asked;
                        saved = saving;
                    } catch (IOException e) {
                        stopped = true;
                        assertThat(text(draft)).as("still as it was").isEqualTo(acknowledged);
                    }
                }
            }
            assertThat(onDisk()).as("step " + at).isIn(saved, saving);
            try (var draft = open(new Disk())) {
                assertThat(text(draft)).as("step " + at).isIn(acknowledged, asked);
                assertThat(draft.view().conflict()).isEmpty();
                assertThat(draft.standing().saved()).isEqualTo(text(draft).equals(onDisk()));
            }
            if (!stopped && disk.steps() <= at) {
                break;
            }
            crashes += stopped ? 1 : 0;
        }
        assertThat(crashes).as("steps that failed").isGreaterThan(30);
    }

    @Test
    void aStepThatFailsOnceCanBeAskedForAgain() throws Exception {
        var texts = texts();
        int failures = 0;
        for (int at = 0; ; at++) {
            clear();
            var disk = failing(at, false);
            try (var draft = open(disk)) {
                for (int i = 0; i < STEPS.size(); i++) {
                    try {
                        STEPS.get(i).on(draft);
                    } catch (IOException e) {
                        failures++;
                        assertThat(text(draft)).isEqualTo(texts.get(i));
                        assertThat(STEPS.get(i).on(draft)).isInstanceOf(Outcome.Done.class);
                    }
                    assertThat(text(draft)).as(at + " " + i).isEqualTo(texts.get(i + 1));
                }
            }
            try (var draft = open(new Disk())) {
                assertThat(text(draft)).as("step " + at).isEqualTo(texts.getLast());
            }
            if (disk.steps() <= at) {
                break;
            }
        }
        assertThat(failures).isGreaterThan(30);
    }

    /** A disk that says in which order it was asked. */
    private static final class Recorded extends Disk {
        final List<String> asked = new ArrayList<>();

        @Override
        public void write(FileChannel channel, byte[] bytes) throws IOException {
            asked.add("write");
            super.write(channel, bytes);
        }

        @Override
        public void force(FileChannel channel) throws IOException {
            asked.add("force");
            super.force(channel);
        }

        @Override
        public void replace(Path fresh, Path target) throws IOException {
            asked.add("replace");
            super.replace(fresh, target);
        }

        @Override
        public void forceFolder(Path of) throws IOException {
            asked.add("force folder");
            super.forceFolder(of);
        }
    }

    @Test
    void everythingIsForcedToTheDiskBeforeItCounts() throws Exception {
        clear();
        var disk = new Recorded();
        try (var draft = open(disk)) {
            set(5).on(draft);
            assertThat(disk.asked)
                    .endsWith("write", "force", "replace", "force folder", "write", "force");
            for (var step : STEPS) {
                disk.asked.clear();
                step.on(draft);
                int written = disk.asked.lastIndexOf("write");
                assertThat(disk.asked.lastIndexOf("force")).isGreaterThan(written);
                assertThat(disk.asked.lastIndexOf("force folder"))
                        .isGreaterThanOrEqualTo(disk.asked.lastIndexOf("replace"));
                assertThat(written).isNotNegative();
            }
        }
    }

    /** The texts one after the other of a journal without a save, and the journal. */
    private List<String> journalled() throws IOException {
        clear();
        var texts = new ArrayList<String>(List.of(FIRST));
        try (var draft = open(new Disk())) {
            for (var step : STEPS.subList(0, 4)) {
                step.on(draft);
                texts.add(text(draft));
            }
            set(9).on(draft);
            texts.add(text(draft));
        }
        return texts;
    }

    @Test
    void aTornJournalGivesAllThatIsWhole() throws Exception {
        var texts = journalled();
        Path journal = JournalPlace.of(folder, "rig.yaml");
        byte[] whole = Files.readAllBytes(journal);
        int before = -1;
        for (int length = 0; length <= whole.length; length++) {
            Files.write(journal, Arrays.copyOf(whole, length));
            try (var draft = open(new Disk())) {
                int now = texts.lastIndexOf(text(draft));
                assertThat(now).as("length " + length).isNotNegative();
                if (now != 1 && now != 3) { // the same text stands there twice
                    assertThat(now).isGreaterThanOrEqualTo(Math.min(before, now));
                }
                before = now;
                if (length == whole.length) {
                    assertThat(text(draft)).isEqualTo(texts.getLast());
                }
            }
        }
    }

    @Test
    void aSpoiledJournalIsNoObstacle() throws Exception {
        var texts = journalled();
        Path journal = JournalPlace.of(folder, "rig.yaml");
        byte[] whole = Files.readAllBytes(journal);
        Seeded.check(
                200,
                random -> {
                    byte[] spoiled = whole.clone();
                    for (int i = random.nextInt(1, 4); i > 0; i--) {
                        spoiled[random.nextInt(spoiled.length)] = (byte) random.nextInt(256);
                    }
                    try {
                        Files.write(journal, spoiled);
                        try (var draft = open(new Disk())) {
                            assertThat(texts).contains(text(draft));
                        }
                    } catch (IOException e) {
                        throw new java.io.UncheckedIOException(e);
                    }
                });
    }

    @Test
    void theJournalDoesNotGrowWithoutBound() throws Exception {
        Files.writeString(folder.resolve("rig.yaml"), FIRST);
        Path journal = JournalPlace.of(folder, "rig.yaml");
        String large = "# ".repeat(300_000) + "\n";
        long longest = 0;
        String last = "";
        try (var draft = open(new Disk())) {
            for (int i = 0; i < 30; i++) {
                last = (i % 2 == 0 ? "" : large) + FIRST + "# " + i + "\n";
                draft.text(draft.revision(), last);
                longest = Math.max(longest, Files.size(journal));
            }
        }
        assertThat(longest).isBetween(1_000_000L, (long) Journal.MOST_BYTES);
        try (var draft = open(new Disk())) {
            assertThat(text(draft)).isEqualTo(last);
        }
    }

    /** What the killed program runs: edits on and on, each told once it is acknowledged. */
    public static final class Editing {

        private Editing() {}

        @SuppressWarnings("SystemOut") // how the test hears of it
        public static void main(String[] args) throws IOException {
            try (var draft = Draft.open(Path.of(args[0]), "rig.yaml")) {
                for (int i = 1; i < 1_000_000; i++) {
                    set(i).on(draft);
                    if (i % 7 == 0) {
                        draft.save(draft.revision());
                    }
                    System.out.println(i);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 25, 60})
    void whatWasAcknowledgedOutlivesAKilledProgram(int after) throws Exception {
        Files.writeString(folder.resolve("rig.yaml"), FIRST);
        Process editing =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                Editing.class.getName(),
                                folder.toString())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        int acknowledged = 0;
        try (var out = new BufferedReader(new InputStreamReader(editing.getInputStream(), UTF_8))) {
            while (acknowledged < after) {
                acknowledged = Integer.parseInt(out.readLine());
            }
            editing.toHandle().destroyForcibly(); // leaves what it said to be read
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                if (line.equals(Integer.toString(acknowledged + 1))) { // whole, not cut short
                    acknowledged++;
                }
            }
        } finally {
            editing.destroyForcibly();
            assertThat(editing.waitFor(60, TimeUnit.SECONDS)).isTrue();
        }
        try (var draft = open(new Disk())) {
            String text = text(draft);
            int found = Integer.parseInt(text.replaceAll("(?s).*elevation: ([0-9]+) m.*", "$1"));
            assertThat(text).isEqualTo(FIRST.replace("0 m", found + " m"));
            // One edit more may have been on its way.
            assertThat(found).isBetween(acknowledged, acknowledged + 1);
        }
    }
}
