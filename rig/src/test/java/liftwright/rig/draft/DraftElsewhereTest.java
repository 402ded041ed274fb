package liftwright.rig.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A draft while another program writes the file or its tables. */
class DraftElsewhereTest extends DraftInFolder {

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
    void changesThatHaveNoPlaceInWhatAnotherProgramWroteAreAConflict() throws Exception {
        try (var draft = open()) {
            done(draft.change(draft.revision(), set("crew/watcher/reaction", "2 s"), "slower"));
            String mine = text(draft.view());
            elsewhere(
                    "crew:\n  watcher: {reaction: 1.5 s, distance: 8 m, role: holds the remote kill}",
                    "");
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
