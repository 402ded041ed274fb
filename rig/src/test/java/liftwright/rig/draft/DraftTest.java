package liftwright.rig.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.rig.Change;
import liftwright.rig.RigPath;
import liftwright.rig.file.RigReading;
import liftwright.rig.text.YamlText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftTest {

    private static final Path MUDLARK = Path.of("..", "examples", "mudlark", "rig.yaml");

    @TempDir Path folder;
    private Path file;
    private byte[] first;

    @BeforeEach
    void aRigInAFolder() throws IOException {
        first = Files.readAllBytes(MUDLARK);
        file = Files.write(folder.resolve("rig.yaml"), first);
    }

    private Draft open() throws IOException {
        return Draft.open(folder, "rig.yaml");
    }

    private static List<Change> set(String path, String value) {
        return List.of(new Change.Set(RigPath.parse(path), value));
    }

    private static DraftView done(Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Done.class);
        return outcome.view();
    }

    private static String text(DraftView view) {
        return view.reading().text().text();
    }

    private void elsewhere(String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void aFreshDraftIsTheFile() throws Exception {
        try (var draft = open()) {
            var view = draft.view();
            assertThat(view.reading().text().bytes()).isEqualTo(first);
            assertThat(view.revision()).isEqualTo(RigReading.digest(first));
            assertThat(view.saved()).isTrue();
            assertThat(view.undo()).isEmpty();
            assertThat(view.redo()).isEmpty();
            assertThat(view.told()).isEmpty();
            assertThat(folder.resolve(".liftwright")).doesNotExist();
        }
    }

    @Test
    void aChangeKeepsCommentsAndCanBeTakenBackByteByByte() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            var changed = done(draft.change(base, set("site/temperature", "9 °C"), "colder air"));
            assertThat(text(changed))
                    .isEqualTo(
                            new String(first, UTF_8)
                                    .replace("temperature: 12 °C", "temperature: 9 °C"));
            assertThat(changed.saved()).isFalse();
            assertThat(changed.undo()).contains("colder air");
            assertThat(file).hasBinaryContent(first);
            var back = done(draft.undo(changed.revision()));
            assertThat(back.reading().text().bytes()).isEqualTo(first);
            assertThat(back.revision()).isEqualTo(base);
            assertThat(back.saved()).isTrue();
            assertThat(back.redo()).contains("colder air");
            var again = done(draft.redo(back.revision()));
            assertThat(again.revision()).isEqualTo(changed.revision());
        }
    }

    @Test
    void brokenTextIsTakenAsItIs() throws Exception {
        try (var draft = open()) {
            var view = done(draft.text(draft.revision(), "fans: [{\n  \"half"));
            assertThat(text(view)).isEqualTo("fans: [{\n  \"half");
            assertThat(view.reading().rig()).isEmpty();
            assertThat(view.reading().problems()).isNotEmpty();
            assertThat(view.undo()).contains("typing in line 1");
            var refused = draft.change(view.revision(), set("site/temperature", "9 °C"), "x");
            assertThat(refused).isInstanceOf(Outcome.Refused.class);
            var back = done(draft.undo(view.revision()));
            assertThat(back.reading().text().bytes()).isEqualTo(first);
        }
    }

    @Test
    void lineEndsStayWhereAWebPageLosesThem() throws Exception {
        String pairs = new String(first, UTF_8).replace("\n", "\r\n");
        Files.writeString(file, pairs);
        try (var draft = open()) {
            String typed = new String(first, UTF_8).replace("Mudlark", "Mudhen");
            var view = done(draft.text(draft.revision(), typed));
            assertThat(text(view)).isEqualTo(pairs.replace("Mudlark", "Mudhen"));
        }
    }

    @Test
    void textOnAnOlderBaseIsStale() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            var mine = done(draft.change(base, set("site/temperature", "9 °C"), "x"));
            assertThat(draft.text(base, "rig: x\n")).isInstanceOf(Outcome.Stale.class);
            assertThat(draft.undo(base)).isInstanceOf(Outcome.Stale.class);
            assertThat(draft.redo(base)).isInstanceOf(Outcome.Stale.class);
            assertThat(draft.save(base)).isInstanceOf(Outcome.Stale.class);
            assertThat(draft.resolve(base, Draft.Side.MINE)).isInstanceOf(Outcome.Stale.class);
            assertThat(draft.revision()).isEqualTo(mine.revision());
        }
    }

    @Test
    void twoTabsThatChangeDifferentThingsAreMerged() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            done(draft.change(base, set("site/temperature", "9 °C"), "colder"));
            var both = done(draft.change(base, set("wearer/mass", "70 kg"), "heavier"));
            assertThat(text(both)).contains("temperature: 9 °C").contains("mass: 70 kg");
            assertThat(both.told()).isPresent();
            assertThat(draft.view().told()).isEmpty();
            assertThat(both.undo()).contains("heavier");
        }
    }

    @Test
    void whatIsNoLongerThereRefusesTheChange() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            done(
                    draft.change(
                            base,
                            List.of(new Change.Remove(RigPath.parse("crew/watcher"))),
                            "no watcher"));
            // Made on the text as it stands, it would bring back half of what was removed.
            var late = draft.change(base, set("crew/watcher/reaction", "2 s"), "slower");
            assertThat(late).isInstanceOf(Outcome.Refused.class);
            // One who knows the text may.
            done(draft.change(draft.revision(), set("crew/watcher/reaction", "2 s"), "slower"));
        }
    }

    @Test
    void entriesKnownByTheirNumberMustHaveKeptIt() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            String trunk = "wiring/feeds/feed/trunk/";
            done(draft.change(base, List.of(new Change.Remove(RigPath.parse(trunk + "1"))), "x"));
            assertThat(draft.change(base, set(trunk + "2/fuse", "300 A"), "x"))
                    .isInstanceOf(Outcome.Refused.class);
            String now = draft.revision();
            done(draft.change(now, set("site/temperature", "9 °C"), "x"));
            done(draft.change(now, set(trunk + "1/fuse", "300 A"), "x"));
            now = draft.revision();
            done(draft.change(now, List.of(new Change.Move(RigPath.parse(trunk + "1"), 2)), "x"));
            assertThat(draft.change(now, set(trunk + "1/fuse", "200 A"), "x"))
                    .isInstanceOf(Outcome.Refused.class);
        }
    }

    @Test
    void anEntryInThePlaceOfOneThatWasTakenOutIsAnotherOne() throws Exception {
        try (var draft = open()) {
            String base = draft.revision();
            String fuse = "wiring/feeds/feed/trunk/2";
            var out = List.<Change>of(new Change.Remove(RigPath.parse(fuse)));
            done(draft.change(base, out, "no fuse"));
            assertThat(draft.change(base, set(fuse + "/fuse", "300 A"), "larger"))
                    .isInstanceOf(Outcome.Refused.class);
        }
    }

    @Test
    void anUnknownBaseNeedsWhatItNamesToBeThere() throws Exception {
        try (var draft = open()) {
            done(draft.change("nonsense", set("site/pressure", "1000 hPa"), "x"));
            assertThat(draft.change("nonsense", set("restraint/tether/length", "2 m"), "x"))
                    .isInstanceOf(Outcome.Refused.class);
        }
    }

    @Test
    void savingWritesTheFileAndTakesTheJournalAway() throws Exception {
        try (var draft = open()) {
            var view = done(draft.change(draft.revision(), set("wearer/mass", "70 kg"), "x"));
            Path journal = folder.resolve(".liftwright/journal");
            assertThat(journal).isDirectoryContaining("glob:**rig_yaml-*");
            var saved = done(draft.save(view.revision()));
            assertThat(saved.saved()).isTrue();
            assertThat(saved.undo()).contains("x");
            assertThat(file).hasBinaryContent(view.reading().text().bytes());
            assertThat(journal).isEmptyDirectory();
            var back = done(draft.undo(saved.revision()));
            assertThat(back.saved()).isFalse();
            assertThat(back.reading().text().bytes()).isEqualTo(first);
        }
    }

    @Test
    void unsavedWorkIsThereAgain() throws Exception {
        String text;
        try (var draft = open()) {
            done(draft.change(draft.revision(), set("wearer/mass", "70 kg"), "heavier"));
            done(draft.text(draft.revision(), text(draft.view()) + "# more\n"));
            done(draft.text(draft.revision(), "[half"));
            done(draft.undo(draft.revision()));
            text = text(draft.view());
        }
        try (var draft = open()) {
            var view = draft.view();
            assertThat(text(view)).isEqualTo(text);
            assertThat(view.told()).isPresent();
            assertThat(view.saved()).isFalse();
            assertThat(view.redo()).isPresent();
            done(draft.undo(view.revision()));
            var start = done(draft.undo(draft.revision()));
            assertThat(start.reading().text().bytes()).isEqualTo(first);
            assertThat(start.saved()).isTrue();
        }
        try (var draft = open()) {
            assertThat(draft.view().told()).isEmpty();
            assertThat(draft.view().reading().text().bytes()).isEqualTo(first);
        }
    }

    @Test
    void anEditFromOutsideIsAnEditLikeAnyOther() throws Exception {
        try (var draft = open()) {
            elsewhere("humidity: 80 %", "humidity: 85 %");
            assertThat(draft.look()).isTrue();
            assertThat(draft.look()).isFalse();
            var view = draft.view();
            assertThat(text(view)).contains("humidity: 85 %");
            assertThat(view.saved()).isTrue();
            assertThat(view.told()).isPresent();
            var back = done(draft.undo(view.revision()));
            assertThat(back.reading().text().bytes()).isEqualTo(first);
            assertThat(back.saved()).isFalse();
            done(draft.save(back.revision()));
            assertThat(file).hasBinaryContent(first);
        }
    }

    @Test
    void changesAreMadeAgainOnWhatAnotherProgramWrote() throws Exception {
        try (var draft = open()) {
            done(draft.change(draft.revision(), set("wearer/mass", "70 kg"), "heavier"));
            elsewhere("humidity: 80 %", "humidity: 85 %");
            assertThat(draft.look()).isTrue();
            var view = draft.view();
            assertThat(text(view)).contains("humidity: 85 %").contains("mass: 70 kg");
            assertThat(view.conflict()).isEmpty();
            assertThat(view.saved()).isFalse();
            done(draft.save(view.revision()));
            assertThat(Files.readString(file)).isEqualTo(text(view));
        }
    }

    @Test
    void aValueThatBothChangedIsAConflictUnlessBothMeanTheSame() throws Exception {
        try (var draft = open()) {
            done(draft.change(draft.revision(), set("site/humidity", "70 %"), "drier"));
            String mine = text(draft.view());
            elsewhere("humidity: 80 %", "humidity: 85 %");
            String theirs = Files.readString(file);
            assertThat(draft.look()).isTrue();
            assertThat(text(draft.view())).isEqualTo(mine);
            assertThat(draft.view().conflict().orElseThrow().diskText()).isEqualTo(theirs);
            elsewhere("humidity: 85 %", "humidity: 70 % # measured");
            draft.look();
            assertThat(draft.view().conflict()).isEmpty();
            assertThat(text(draft.view())).contains("humidity: 70 % # measured");
        }
    }

    @Test
    void typingAndAnotherProgramAreAConflictAndNeitherTextIsLost() throws Exception {
        try (var draft = open()) {
            String mine = new String(first, UTF_8) + "# mine\n";
            done(draft.text(draft.revision(), mine));
            elsewhere("humidity: 80 %", "humidity: 85 %");
            String theirs = Files.readString(file);
            assertThat(draft.look()).isTrue();
            var view = draft.view();
            assertThat(text(view)).isEqualTo(mine);
            assertThat(view.conflict().orElseThrow().diskText()).isEqualTo(theirs);
            assertThat(draft.save(view.revision())).isInstanceOf(Outcome.Conflicting.class);
            assertThat(Files.readString(file)).isEqualTo(theirs);

            var taken = done(draft.resolve(view.revision(), Draft.Side.DISK));
            assertThat(text(taken)).isEqualTo(theirs);
            assertThat(taken.saved()).isTrue();
            assertThat(taken.conflict()).isEmpty();
            var back = done(draft.undo(taken.revision()));
            assertThat(text(back)).isEqualTo(mine);
            done(draft.save(back.revision()));
            assertThat(Files.readString(file)).isEqualTo(mine);
        }
    }

    @Test
    void mineIsSavedOverWhatTheDiskHeldWhenItWasChosen() throws Exception {
        String mine = new String(first, UTF_8) + "# mine\n";
        try (var draft = open()) {
            done(draft.text(draft.revision(), mine));
            elsewhere("humidity: 80 %", "humidity: 85 %");
            draft.look();
            var view = done(draft.resolve(draft.revision(), Draft.Side.MINE));
            assertThat(text(view)).isEqualTo(mine);
            assertThat(view.conflict()).isEmpty();
            assertThat(view.saved()).isFalse();
        }
        try (var draft = open()) {
            assertThat(text(draft.view())).isEqualTo(mine);
            assertThat(draft.view().conflict()).isEmpty();
            elsewhere("humidity: 85 %", "humidity: 87 %");
            assertThat(draft.save(draft.revision())).isInstanceOf(Outcome.Conflicting.class);
            done(draft.resolve(draft.revision(), Draft.Side.MINE));
            done(draft.save(draft.revision()));
            assertThat(Files.readString(file)).isEqualTo(mine);
        }
    }

    @Test
    void aConflictOutlivesTheProgram() throws Exception {
        String mine = new String(first, UTF_8) + "# mine\n";
        try (var draft = open()) {
            done(draft.text(draft.revision(), mine));
        }
        elsewhere("humidity: 80 %", "humidity: 85 %");
        try (var draft = open()) {
            assertThat(text(draft.view())).isEqualTo(mine);
            assertThat(draft.view().conflict()).isPresent();
            elsewhere("humidity: 85 %", "humidity: 80 %");
            draft.look();
            assertThat(draft.view().conflict()).isEmpty();
        }
    }

    @Test
    void aFileThatIsGoneIsWrittenAgain() throws Exception {
        try (var draft = open()) {
            Files.delete(file);
            assertThat(draft.look()).isTrue();
            assertThat(draft.view().saved()).isFalse();
            done(draft.save(draft.revision()));
            assertThat(file).hasBinaryContent(first);
            Files.delete(file);
            draft.look();
            Files.write(file, first);
            draft.look();
            assertThat(draft.view().saved()).isTrue();
        }
    }

    @Test
    void tablesBesideTheFileAreLookedAt() throws Exception {
        Path fitted = Path.of("..", "examples", "fitted");
        Files.write(file, Files.readAllBytes(fitted.resolve("rig.yaml")));
        try (var draft = open()) {
            assertThat(draft.view().reading().rig()).isEmpty();
            Files.createDirectory(folder.resolve("tables"));
            try (var tables = Files.list(fitted.resolve("tables"))) {
                for (Path table : tables.toList()) {
                    Files.copy(table, folder.resolve("tables").resolve(table.getFileName()));
                }
            }
            String before = draft.revision();
            assertThat(draft.look()).isTrue();
            assertThat(draft.view().reading().rig()).isPresent();
            assertThat(draft.revision()).isNotEqualTo(before);
            assertThat(draft.view().saved()).isTrue();
        }
    }

    @Test
    void whatIsTooLargeIsRefused() throws Exception {
        try (var draft = open()) {
            var outcome = draft.text(draft.revision(), "# ".repeat(YamlText.MOST_BYTES));
            assertThat(outcome).isInstanceOf(Outcome.Refused.class);
            Files.write(file, new byte[2 * YamlText.MOST_BYTES]);
            draft.look();
            assertThat(draft.text(draft.revision(), "rig: x\n"))
                    .isInstanceOf(Outcome.Refused.class);
            var back = done(draft.undo(draft.revision()));
            assertThat(back.reading().text().bytes()).isEqualTo(first);
        }
    }

    @Test
    void watchersHearOfEveryChangeAndOfNothingElse() throws Exception {
        var heard = new AtomicInteger();
        try (var draft = open()) {
            var watch = draft.watch(heard::incrementAndGet);
            draft.look();
            assertThat(heard).hasValue(0);
            done(draft.change(draft.revision(), set("wearer/mass", "70 kg"), "x"));
            assertThat(heard).hasValue(1);
            done(draft.change(draft.revision(), set("wearer/mass", "70 kg"), "x"));
            assertThat(heard).hasValue(1);
            done(draft.save(draft.revision()));
            assertThat(heard).hasValue(2);
            elsewhere("humidity: 80 %", "humidity: 85 %");
            draft.look();
            assertThat(heard).hasValue(3);
            watch.close();
            done(draft.undo(draft.revision()));
            assertThat(heard).hasValue(3);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "liftwright journal 1\n", "liftwright journal 1\nxxxxxxxxx"})
    void aJournalThatIsNoneIsPutAsideAndSaidSo(String junk) throws Exception {
        Path journal = JournalPlace.of(folder, "rig.yaml");
        Files.createDirectories(folder.resolve(".liftwright/journal"));
        Files.writeString(journal, junk);
        try (var draft = open()) {
            assertThat(draft.view().told()).isPresent();
            assertThat(draft.view().reading().text().bytes()).isEqualTo(first);
        }
        assertThat(Path.of(journal + ".unread")).hasContent(junk);
        Files.writeString(journal, "another");
        open().close();
        assertThat(Path.of(journal + ".unread")).hasContent(junk);
        assertThat(Path.of(journal + ".unread-2")).hasContent("another");
        try (var draft = open()) {
            assertThat(draft.view().told()).isEmpty();
        }
    }

    @Test
    void theJournalDoesNotFollowLinksOutOfTheFolder(@TempDir Path other) throws Exception {
        Files.createSymbolicLink(folder.resolve(".liftwright"), other);
        try (var draft = open()) {
            assertThat(
                            org.assertj.core.api.Assertions.catchThrowable(
                                    () ->
                                            draft.change(
                                                    draft.revision(),
                                                    set("wearer/mass", "70 kg"),
                                                    "x")))
                    .isInstanceOf(IOException.class);
            assertThat(draft.view().reading().text().bytes()).isEqualTo(first);
        }
        assertThat(other).isEmptyDirectory();
    }

    @Test
    void journalsOfAnyFileStandInTheirFolder() {
        Path upwards = folder.relativize(JournalPlace.of(folder, "../../x"));
        assertThat(upwards.toString()).matches("\\.liftwright.journal.[_x]+-[0-9a-f]{16}");
        assertThat(JournalPlace.of(folder, "a/b")).isNotEqualTo(JournalPlace.of(folder, "a_b"));
        assertThat(folder.relativize(JournalPlace.of(folder, "é".repeat(300))).toString().length())
                .isLessThan(100);
    }

    @Test
    void threadsThatEditAtOnceLoseNothing() throws Exception {
        var paths = List.of("site/elevation", "wearer/mass", "demands/hover", "site/temperature");
        var units = List.of(" m", " kg", " s", " °C");
        try (var draft = open();
                var threads = Executors.newVirtualThreadPerTaskExecutor()) {
            var all = new ArrayList<Future<?>>();
            for (int tab = 0; tab < paths.size(); tab++) {
                int own = tab;
                all.add(
                        threads.submit(
                                () -> {
                                    String seen = draft.revision();
                                    for (int i = 1; i <= 25; i++) {
                                        var change = set(paths.get(own), i + units.get(own));
                                        var after = done(draft.change(seen, change, "x"));
                                        assertThat(text(after)).contains(i + units.get(own));
                                        seen = i % 2 == 0 ? after.revision() : seen;
                                    }
                                    return true;
                                }));
            }
            for (var each : all) {
                each.get();
            }
            assertThat(text(draft.view()))
                    .contains("elevation: 25 m", "mass: 25 kg", "hover: 25 s")
                    .contains("temperature: 25 °C");
            for (int i = 0; i < 100; i++) {
                done(draft.undo(draft.revision()));
            }
            assertThat(draft.view().reading().text().bytes()).isEqualTo(first);
        }
    }

    @Test
    void changesThatHaveNoPlaceInWhatAnotherProgramWroteAreAConflict() throws Exception {
        try (var draft = open()) {
            done(draft.change(draft.revision(), set("crew/watcher/reaction", "2 s"), "slower"));
            String mine = text(draft.view());
            elsewhere("crew:\n  watcher: {reaction: 1.5 s}", "");
            draft.look();
            assertThat(draft.view().conflict()).isPresent();
            assertThat(text(draft.view())).isEqualTo(mine);
            Files.writeString(file, "rig: [broken");
            draft.look();
            assertThat(draft.view().conflict().orElseThrow().diskText()).isEqualTo("rig: [broken");
            assertThat(text(draft.view())).isEqualTo(mine);
            // Typing on while there is a conflict loses nothing either.
            done(draft.text(draft.revision(), mine + "# more\n"));
            done(draft.resolve(draft.revision(), Draft.Side.MINE));
            done(draft.save(draft.revision()));
            assertThat(Files.readString(file)).isEqualTo(mine + "# more\n");
        }
    }
}
