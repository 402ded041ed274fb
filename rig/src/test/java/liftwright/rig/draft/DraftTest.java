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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A draft and those who edit it by the bay. */
class DraftTest extends DraftInFolder {

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
            assertThat(
                            draft.change(
                                    "nonsense",
                                    set("wiring/contactors/spare/rating", "200 A"),
                                    "x"))
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
}
