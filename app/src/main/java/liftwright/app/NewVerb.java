package liftwright.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import liftwright.report.PlainText;
import liftwright.rig.shape.Starter;

/** {@code new}: a commented rig file to change into one's own. */
final class NewVerb {

    private final Voice voice;
    private final Surroundings around;

    NewVerb(Voice voice, Surroundings around) {
        this.voice = voice;
        this.around = around;
    }

    Exit run(String name) {
        String named =
                name.isEmpty()
                        ? "rig.yaml"
                        : name.endsWith(".yaml") || name.endsWith(".yml")
                                ? name
                                : Path.of(name, "rig.yaml").toString();
        var file = new UserFile(named, UserFile.path(named, around.folder()));
        file.create(Starter.text().getBytes(StandardCharsets.UTF_8));
        voice.answer(
                PlainText.of(
                        "Wrote "
                                + named
                                + ". Every value in it is a placeholder: put yours in their place,"
                                + " then run: liftwright check "
                                + named,
                        !around.utf8()));
        return Exit.CLEAR;
    }
}
