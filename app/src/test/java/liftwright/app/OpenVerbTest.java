package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code open} as a command: what it prints, how it ends, what it calls a mistake. */
@Timeout(120)
class OpenVerbTest {

    private static final String LINK = "http://127\\.0\\.0\\.1:[0-9]+/#enter=[\\w-]{43}\n";

    @TempDir private Path folder;

    @BeforeEach
    void layOut() throws IOException {
        Files.writeString(folder.resolve("rig.yaml"), "liftwright: 1\nrig: Heron\n");
    }

    @Test
    void itPrintsALinkServesAndEndsWhenInterrupted() throws Exception {
        var interrupt = new Interrupt();
        var first =
                CompletableFuture.supplyAsync(
                        () -> new Shell(folder, true, interrupt).run("open", "--no-browser"));
        try {
            Path door = folder.resolve(".liftwright/door");
            while (!Files.exists(door) && !first.isDone()) {
                Thread.sleep(5);
            }
            var second = new Shell(folder).run("open", "--no-browser", "rig.yaml");
            assertThat(second.code()).isZero();
            assertThat(second.out()).matches(LINK);
            assertThat(second.err()).contains("is open already");
            assertThat(first).isNotDone();
        } finally {
            interrupt.ask();
        }
        Shell.Ran ran = first.get(60, TimeUnit.SECONDS);
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).matches(LINK);
        assertThat(ran.err()).contains("this machine alone");
        assertThat(folder.resolve(".liftwright/door")).doesNotExist();
    }

    @Test
    void aSignalEndsItCleanly() throws Exception {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "liftwright.app.Main",
                                "open",
                                "--no-browser",
                                folder.toString())
                        .redirectError(new File("/dev/null"))
                        .start();
        try (var out = process.inputReader(StandardCharsets.UTF_8)) {
            assertThat(out.readLine() + "\n").matches(LINK);
            assertThat(folder.resolve(".liftwright/door")).exists();
            process.destroy();
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isZero();
            assertThat(folder.resolve(".liftwright/door")).doesNotExist();
        } finally {
            process.destroyForcibly();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "open --port 0|--port is a whole number from 1",
                "open --port 65536|to 65535, not 65536",
                "open --port x|--port is a whole number",
                "open nowhere|no file or folder nowhere",
                "open one two|nothing is done with two",
                "open --no-broser|perhaps --no-browser was meant",
                "open notes.txt|ends in .yaml",
            })
    void aMistakeIsNamed(String line, String words) throws IOException {
        Files.writeString(folder.resolve("notes.txt"), "liftwright: 1\n");
        var ran = new Shell(folder).run(line.split(" ", -1));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().replaceAll("\\s+", " ")).contains(words);
        assertThat(folder.resolve(".liftwright/door")).doesNotExist();
    }

    @Test
    void aBrowserIsFoundWhereThereIsAScreen() throws IOException {
        Path bin = Files.createDirectory(folder.resolve("bin"));
        Path tool = Files.writeString(bin.resolve("xdg-open"), "#!/bin/sh\n");
        assertThat(tool.toFile().setExecutable(true)).isTrue();
        String path = "relative:/nowhere:\u0000:" + bin;
        assertThat(Browser.find(Map.of("PATH", path, "DISPLAY", ":0")))
                .isEqualTo(Optional.of(new Browser(tool)));
        assertThat(Browser.find(Map.of("PATH", path, "WAYLAND_DISPLAY", "wayland-0"))).isPresent();
        assertThat(Browser.find(Map.of("PATH", path))).as("no screen").isEmpty();
        assertThat(Browser.find(Map.of("PATH", path, "DISPLAY", ""))).isEmpty();
        assertThat(Browser.find(Map.of("PATH", "/nowhere", "DISPLAY", ":0"))).isEmpty();
    }

    /** What a command line holds, every user of the machine can read. */
    @Test
    void theBrowserIsGivenAFileAndNotTheLink() throws Exception {
        Path told = folder.resolve("told");
        Path tool = folder.resolve("browser");
        Files.writeString(
                tool,
                "#!/bin/sh\nprintf '%s\\n' \"$*\" >'"
                        + told
                        + ".part'\nmv '"
                        + told
                        + ".part' '"
                        + told
                        + "'\n");
        assertThat(tool.toFile().setExecutable(true)).isTrue();
        new Browser(tool).open(Path.of("/a/file.html"));
        while (!Files.exists(told)) {
            Thread.sleep(5);
        }
        assertThat(Files.readAllLines(told)).isEqualTo(List.of("/a/file.html"));
    }
}
