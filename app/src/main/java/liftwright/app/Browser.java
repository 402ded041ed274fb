package liftwright.app;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The browser that the desktop names.
 *
 * @param command that opens a file in it
 */
record Browser(Path command) {

    /** Where a screen is told of; a Mac has always one. */
    private static final List<String> SCREENS = List.of("DISPLAY", "WAYLAND_DISPLAY");

    /**
     * Empty where there is no screen, or nothing that would open a browser on it.
     *
     * @param environment of the process
     */
    static Optional<Browser> find(Map<String, String> environment) {
        boolean screen = SCREENS.stream().anyMatch(s -> !environment.getOrDefault(s, "").isEmpty());
        return (screen ? onPath(environment, "xdg-open") : Optional.<Path>empty())
                .or(() -> Optional.of(Path.of("/usr/bin/open")).filter(Browser::isOfAMac))
                .map(Browser::new);
    }

    private static boolean isOfAMac(Path open) {
        return System.getProperty("os.name", "").startsWith("Mac") && Files.isExecutable(open);
    }

    private static Optional<Path> onPath(Map<String, String> environment, String name) {
        return Arrays.stream(environment.getOrDefault("PATH", "").split(File.pathSeparator, -1))
                .filter(folder -> folder.startsWith("/"))
                .map(folder -> in(folder, name))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<Path> in(String folder, String name) {
        try {
            return Optional.of(Path.of(folder, name)).filter(Files::isExecutable);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Opens a file, and does not wait for it. */
    void open(Path file) throws IOException {
        new ProcessBuilder(command.toString(), file.toString())
                .redirectInput(ProcessBuilder.Redirect.from(new File("/dev/null")))
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }
}
