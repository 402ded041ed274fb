package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.quantity.UnitSystem;
import liftwright.report.html.HtmlReport;
import liftwright.rig.Rig;

/** The sheet of HTML that {@code --html} asks for: gathers answers, and is written at the end. */
final class Sheet {

    private final UserFile file;

    /** What stood there when it was asked for; empty where nothing did. */
    private final Optional<byte[]> before;

    private final List<Answer> answers = new ArrayList<>();

    private Sheet(UserFile file, Optional<byte[]> before) {
        this.file = file;
        this.before = before;
    }

    /**
     * Looks at its place before anything is computed.
     *
     * @throws UsageException when something stands there that was not written by this program, or
     *     that somebody changed since
     */
    static Sheet at(String named, Surroundings around) {
        UserFile file = new UserFile(named, UserFile.path(named, around.folder()));
        if (!Files.exists(file.path())) {
            if (!Files.isDirectory(file.path().toAbsolutePath().resolveSibling("."))) {
                throw new UsageException("no folder for " + named + ": make it first");
            }
            return new Sheet(file, Optional.empty());
        }
        if (Files.isDirectory(file.path())) {
            throw new UsageException(
                    named + " is a folder: name the file to write, such as report.html");
        }
        byte[] there = file.printed();
        if (!HtmlReport.isUnchanged(there)) {
            throw new UsageException(
                    named
                            + " exists and is no unchanged sheet of this program, so it is not"
                            + " overwritten: give another name");
        }
        return new Sheet(file, Optional.of(there));
    }

    void add(Answer answer) {
        answers.add(answer);
    }

    /** Writes it, whole or not at all. */
    void write(Rig rig, String rigFile, UnitSystem units) {
        byte[] sheet =
                HtmlReport.write(answers, rig.name(), rigFile, units, Program.VERSION)
                        .getBytes(UTF_8);
        if (before.isPresent()) {
            file.replace(before.get(), sheet);
        } else {
            file.create(sheet);
        }
    }

    String named() {
        return file.named();
    }
}
