package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.answer.Fields;
import liftwright.quantity.Band;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** {@code review --html}: what stands on the sheet, and what it never writes over. */
class SheetTest {

    private static final String RIG = Shell.EXAMPLES.resolve("curlew/rig.yaml").toString();

    @TempDir private Path folder;

    private Shell.Ran lift(String... more) {
        List<String> words = new ArrayList<>(List.of("review", "lift", RIG));
        words.addAll(List.of(more));
        return new Shell(folder).run(words.toArray(new String[0]));
    }

    /** Heat of the rig for which it is soonest computed: numbers are written alike for all. */
    @ParameterizedTest
    @CsvSource({"lift, curlew", "endurance, curlew", "heat, sandpiper", "balance, curlew"})
    void everyNumberOfTheJsonStandsOnTheSheet(String question, String example) throws IOException {
        Shell shell = new Shell(folder);
        String rig = Shell.EXAMPLES.resolve(example).toString();
        var ran = shell.run("review", question, rig, "--html", "sheet.html", "--json");
        assertThat(ran.code()).isLessThan(2);
        String sheet = Files.readString(folder.resolve("sheet.html"));
        JsonNode json = JsonMapper.builder().build().readTree(ran.out());
        var format = new QuantityFormat(UnitSystem.SI, false);
        int seen = 0;
        for (JsonNode value : values(json.get("answer"))) {
            var measure = Fields.of(value.get("field").stringValue()).measure();
            double si = value.get("si").doubleValue();
            JsonNode band = value.get("band");
            assertThat(sheet)
                    .contains(
                            band == null
                                    ? format.amount(measure, si)
                                    : format.amountWithBand(measure, si, band(band)));
            seen++;
        }
        assertThat(seen).isGreaterThan(30);
        assertThat(sheet).contains(json.at("/rig/digest").stringValue());
        for (JsonNode finding : json.at("/answer/findings")) {
            if (finding.has("path")) {
                assertThat(sheet).contains("<code>" + finding.get("path").stringValue());
            }
        }
    }

    /** Every value with a field and a number, however deep. */
    private static List<JsonNode> values(JsonNode node) {
        List<JsonNode> found = new ArrayList<>();
        if (node.has("field") && node.has("si")) {
            found.add(node);
        }
        node.valueStream().forEach(child -> found.addAll(values(child)));
        return found;
    }

    private static Band band(JsonNode band) {
        return new Band(
                band.get("low").doubleValue(),
                band.get("high").doubleValue(),
                band.get("coverage").doubleValue(),
                band.get("method").stringValue(),
                band.get("draws").intValue(),
                band.get("samplingError").doubleValue());
    }

    @Test
    void itsOwnSheetIsReplacedAndTheSameAnswerGivesTheSameBytes() throws IOException {
        Path file = folder.resolve("sheet.html");
        assertThat(lift("--html", "sheet.html").err()).contains("wrote sheet.html");
        byte[] first = Files.readAllBytes(file);
        assertThat(lift("--html", "sheet.html", "--units", "us").err()).contains("wrote");
        assertThat(Files.readString(file)).contains("lbf");
        lift("--html", "sheet.html", "--threads", "1");
        assertThat(Files.readAllBytes(file)).isEqualTo(first);
        try (Stream<Path> there = Files.list(folder)) {
            assertThat(there).containsExactly(file); // nothing temporary is left
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "my notes", "<!doctype html>\n<p>a page of mine</p>"})
    void whatItDidNotWriteStays(String content) throws IOException {
        Path file = folder.resolve("notes.html");
        Files.writeString(file, content);
        var ran = lift("--html", "notes.html");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty(); // told before anything is computed
        assertThat(ran.err()).contains("notes.html").contains("not").contains("another name");
        assertThat(Files.readString(file)).isEqualTo(content);
    }

    @Test
    void aSheetThatSomebodyWroteIntoIsTheirs() throws IOException {
        Path file = folder.resolve("sheet.html");
        lift("--html", "sheet.html");
        String edited = Files.readString(file).replace("</body>", "<p>checked by hand</p></body>");
        Files.writeString(file, edited);
        assertThat(lift("--html", "sheet.html").code()).isEqualTo(2);
        assertThat(Files.readString(file)).isEqualTo(edited);
    }

    @Test
    void aFolderOneThatIsMissingTwoRigsAndKeepAreRefused() throws IOException {
        Files.createDirectory(folder.resolve("sheets"));
        assertThat(lift("--html", "sheets").code()).isEqualTo(2);
        var nowhere = lift("--html", "nowhere/sheet.html");
        assertThat(nowhere.code()).isEqualTo(2);
        assertThat(nowhere.out()).isEmpty(); // told before anything is computed
        assertThat(lift("--html", "s.html", "--keep", "1").code()).isEqualTo(2);
        var two = new Shell(folder).run("review", "lift", RIG, RIG, "--html", "s.html");
        assertThat(two.code()).isEqualTo(2);
        assertThat(folder.resolve("s.html")).doesNotExist();
    }

    @Test
    void allQuestionsStandOnOneSheet() throws IOException {
        String soonest = Shell.EXAMPLES.resolve("sandpiper").toString();
        new Shell(folder).run("review", soonest, "--html", "all.html");
        String sheet = Files.readString(folder.resolve("all.html"));
        int at = 0;
        // One after the other; the library's own check of an order takes 20 s on a text so long.
        for (String part :
                List.of(
                        "Will it lift?</h2>",
                        "For how long?</h2>",
                        "Is it balanced, and which way will it turn?</h2>",
                        "seen from behind",
                        "seen from its right side",
                        "seen from above",
                        "Before power is applied")) {
            at = sheet.indexOf(part, at);
            assertThat(at).as(part).isNotNegative();
            at += part.length();
        }
    }
}
