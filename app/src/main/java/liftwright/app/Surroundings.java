package liftwright.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import liftwright.report.Look;

/**
 * What the process finds around itself.
 *
 * @param outIsTerminal whether the answer goes to a terminal
 * @param errIsTerminal whether somebody watches standard error
 * @param utf8 whether text may go beyond ASCII
 * @param noColour whether colour is unwanted everywhere (NO_COLOR)
 * @param columns of the terminal, or the most that is written
 * @param folder that relative paths start from
 * @param faultFolder where a stack trace of ours is left
 * @param today where the user is
 */
record Surroundings(
        boolean outIsTerminal,
        boolean errIsTerminal,
        boolean utf8,
        boolean noColour,
        int columns,
        Path folder,
        Path faultFolder,
        LocalDate today) {

    private static final int NARROWEST = 60;

    /**
     * Terminals are known from the launcher, which asks the shell; without it there are none and
     * the output is plain.
     */
    static Surroundings ofProcess() {
        boolean outIsTerminal = Boolean.getBoolean("liftwright.out.terminal");
        String encoding =
                System.getProperty("stdout.encoding", System.getProperty("native.encoding", ""));
        return new Surroundings(
                outIsTerminal,
                Boolean.getBoolean("liftwright.err.terminal"),
                encoding.equalsIgnoreCase("UTF-8"),
                !System.getenv().getOrDefault("NO_COLOR", "").isEmpty()
                        || System.getenv().getOrDefault("TERM", "").equals("dumb"),
                columns(outIsTerminal, System.getenv().getOrDefault("COLUMNS", "")),
                Path.of("").toAbsolutePath(),
                Path.of(System.getProperty("java.io.tmpdir")),
                LocalDate.now(ZoneId.systemDefault()));
    }

    private static int columns(boolean terminal, String declared) {
        if (!terminal || !declared.matches("[0-9]{1,4}")) {
            return Look.WIDEST;
        }
        return Math.clamp(Integer.parseInt(declared), NARROWEST, Look.WIDEST);
    }
}
