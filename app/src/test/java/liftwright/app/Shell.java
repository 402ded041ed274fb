package liftwright.app;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** The command line without a process around it. */
record Shell(Path folder, boolean utf8, Interrupt interrupt) {

    static final Path EXAMPLES = Path.of("..", "examples").toAbsolutePath().normalize();

    /** So that no test depends on the day it runs. */
    static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

    Shell(Path folder) {
        this(folder, true, new Interrupt());
    }

    Shell ascii() {
        return new Shell(folder, false, interrupt);
    }

    /** What a run left behind. */
    record Ran(int code, String out, String err) {
        List<String> lines() {
            return out.lines().toList();
        }
    }

    Ran run(String... args) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        var around = new Surroundings(false, false, utf8, true, 100, folder, folder, TODAY);
        Exit exit = new Program(out, err, around, interrupt).run(args);
        return new Ran(
                exit.code(),
                out.toString(StandardCharsets.UTF_8),
                err.toString(StandardCharsets.UTF_8));
    }
}
