package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommandLineTest {

    @TempDir private Path folder;

    @ParameterizedTest
    @CsvSource({"measured, 0", "sandpiper, 1"})
    void theExitCodeIsTheVerdict(String example, int code) {
        assertThat(shell().run("review", "lift", example(example)).code()).isEqualTo(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper", "measured", "fitted"})
    void everyExampleChecks(String example) {
        var ran = shell().run("check", example(example));
        assertThat(ran.code()).isZero();
        assertThat(ran.lines().getFirst()).contains("reads as a rig");
    }

    @Test
    void whatNoQuestionReadsYetIsSaidAndIsNoError() throws IOException {
        String curlew = Files.readString(Path.of(example("curlew"), "rig.yaml"));
        Path muddy = folder.resolve("muddy.yaml");
        Files.writeString(muddy, curlew.replace("site: {", "site: {surface: mud, "));
        var ran = shell().run("check", muddy.toString());
        assertThat(ran.out()).contains("Read, used by no question yet").contains("site/surface");
        assertThat(ran.code()).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "reveiw x|perhaps review was meant",
                "review --jsno x|perhaps --json was meant",
                "check --unit x|no option --unit",
                "review --units metric x|--units is si or us, not metric",
                "review --seed one x|--seed is a whole number, not one",
                "review --threads 0 x|--threads is a whole number from 1",
                "review lift|which rig?",
                "review|See: liftwright review --help",
                "check|See: liftwright check --help",
                "review --keep 1 x y|name only one",
                "review lift --measured t.csv x|--measured belongs to the question of balance",
                "review lift --search spins x|--search belongs to the question of balance",
                "review balance --hops 3 x|--hops belongs to the question of endurance",
                "review lift --full-throttle x|--full-throttle belongs to the question of heat",
                "review heat --full-throttle --runs 2 x|name one task",
                "review heat --start-state nowhere.csv --runs 0 x|--hops is a whole number from 1",
                "review restraint|which rig?",
                "review lift --triples x|--triples belongs to the question of failures",
                "review restraint --pairs 3 x|--pairs belongs to the question of failures",
                "review failures --pairs 0 x|--pairs is a whole number from 1",
                "review failures|which rig?",
                "review lift --trace t.csv x|--trace belongs to the question of endurance",
                "check nowhere.yaml|no file or folder nowhere.yaml",
                "review lift nowhere|no file or folder nowhere",
            })
    void aMistakeIsNamedWithWhatWasPerhapsMeant(String line, String words) {
        var ran = shell().run(line.split(" ", -1));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(joined(ran.err())).contains(words);
    }

    @Test
    void noVerbNamesTheVerbs() {
        var ran = shell().run();
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("check").contains("new").contains("review");
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "new", "review", "open"})
    void everyVerbHasHelpWithAnExampleThatStartsWithIt(String verb) {
        var ran = shell().run(verb, "--help");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Example: liftwright " + verb);
        assertThat(ran.lines()).allMatch(line -> line.length() <= 100);
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aFolderMeansItsRigFile() throws IOException {
        copy("measured", "mine/rig.yaml");
        var ran = shell().run("check", "mine");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith(Path.of("mine", "rig.yaml") + " reads as a rig");
    }

    @Test
    void aFolderWithoutARigFileSaysSo() throws IOException {
        Files.createDirectory(folder.resolve("empty"));
        var ran = shell().run("check", "empty");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("no file or folder " + Path.of("empty", "rig.yaml"));
    }

    @Test
    void whatCannotBeReadIsNoFault() throws IOException {
        Files.createDirectories(folder.resolve("rig.yaml/rig.yaml"));
        var ran = shell().run("review", "lift", ".");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("cannot read");
    }

    @Test
    void aBadFileHasItsProblemsAtTheirPlacesAndNoVerdict() throws IOException {
        Files.writeString(folder.resolve("bad.yaml"), "liftwright: 1\nname: x\nfans: {\n");
        for (String verb : List.of("check", "review")) {
            var ran = shell().run(verb, "bad.yaml");
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.lines().getFirst()).contains("does not read as a rig");
            assertThat(ran.out()).containsPattern("bad\\.yaml:\\d+:\\d+:").doesNotContain("met:");
        }
    }

    @Test
    void randomBytesAndHugeFilesAreBadInputAndNoFault() throws IOException {
        byte[] noise = new byte[5000];
        for (int i = 0; i < noise.length; i++) {
            noise[i] = (byte) (i * 37 + i / 256);
        }
        Files.write(folder.resolve("noise"), noise);
        Files.write(folder.resolve("huge"), new byte[3 << 20]);
        for (String name : List.of("noise", "huge")) {
            assertThat(shell().run("check", name).code()).as(name).isEqualTo(2);
            assertThat(shell().run("review", name, "--json").code()).as(name).isEqualTo(2);
        }
    }

    @Test
    void ofSeveralRigsEachIsAnsweredAndTheWorstCodeWins() {
        var ran =
                shell().run("review", "lift", example("measured"), "nowhere", example("sandpiper"));
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("nowhere");
        assertThat(ran.out()).contains("lift of Measured").contains("lift of Sandpiper");
    }

    @Test
    void aStoppedRunHasNoVerdictAndItsOwnCode() {
        var interrupt = new Interrupt();
        interrupt.ask();
        var ran = new Shell(folder, true, interrupt).run("review", "lift", example("mudlark"));
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(joined(ran.err())).contains("without a verdict").contains("usable lift");
    }

    @Test
    void aFaultOfOursIsNeverAVerdictAndLeavesItsTrace() throws IOException {
        var broken =
                new OutputStream() {
                    @Override
                    public void write(int b) {
                        throw new IllegalStateException("broken on purpose");
                    }
                };
        var err = new ByteArrayOutputStream();
        var around = new Surroundings(false, false, true, true, 100, folder, folder, Shell.TODAY);
        Exit exit = new Program(broken, err, around, new Interrupt()).run("--version");
        assertThat(exit.code()).isEqualTo(70);
        assertThat(joined(err.toString(StandardCharsets.UTF_8))).contains("a fault of the program");
        try (var traces = Files.list(folder)) {
            assertThat(traces)
                    .singleElement()
                    .satisfies(t -> assertThat(t).content().contains("broken on purpose"));
        }
    }

    @Test
    void aReaderWhoLeavesIsNoFault() {
        var closed =
                new OutputStream() {
                    @Override
                    public void write(int b) throws IOException {
                        throw new IOException("Broken pipe");
                    }
                };
        var err = new ByteArrayOutputStream();
        var around = new Surroundings(false, false, true, true, 100, folder, folder, Shell.TODAY);
        Exit exit = new Program(closed, err, around, new Interrupt()).run("--help");
        assertThat(exit.code()).isEqualTo(3);
        assertThat(err.size()).isZero();
    }

    @Test
    void aNewRigChecksAndIsNeverOverwritten() throws IOException {
        assertThat(shell().run("new", "heron").code()).isZero();
        Path written = folder.resolve("heron/rig.yaml");
        assertThat(shell().run("check", "heron").code()).isZero();
        Files.writeString(written, "# mine now\n");
        var again = shell().run("new", "heron");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("is not overwritten");
        assertThat(written).hasContent("# mine now");
        assertThat(shell().run("new", "plain.yaml").code()).isZero();
        assertThat(folder.resolve("plain.yaml")).isRegularFile();
    }

    private Shell shell() {
        return new Shell(folder);
    }

    private void copy(String example, String to) throws IOException {
        Path target = folder.resolve(to);
        Files.createDirectories(target.getParent());
        Files.copy(Path.of(example(example), "rig.yaml"), target);
    }

    static String example(String name) {
        return Shell.EXAMPLES.resolve(name).toString();
    }

    /** Undoes the wrapping. */
    private static String joined(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
