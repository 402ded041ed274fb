package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import liftwright.answer.AnswerSchema;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The programme of a rig, its cards and what came of them, from the command line. */
class CardVerbTest {

    @TempDir private Path folder;
    private Shell shell;

    @BeforeEach
    void aRigOfTheirOwn() throws IOException {
        Files.copy(Shell.EXAMPLES.resolve("curlew/rig.yaml"), folder.resolve("rig.yaml"));
        shell = new Shell(folder);
    }

    private static JsonNode answer(Shell.Ran ran) {
        assertThat(ran.lines()).as(ran.err()).hasSize(1);
        return JsonMapper.builder().build().readTree(ran.out()).get("answer");
    }

    /** Cell of a row of the programme. */
    private static String cell(JsonNode answer, String card, String column) {
        JsonNode table = answer.get("sections").get(0);
        List<String> columns =
                table.get("columns").valueStream().map(JsonNode::stringValue).toList();
        return table.get("rows")
                .valueStream()
                .filter(row -> row.get(0).get("text").stringValue().equals(card))
                .findFirst()
                .orElseThrow()
                .get(columns.indexOf(column))
                .get("text")
                .stringValue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void theProgrammeOfEveryExampleObeysItsSchema(String example) {
        var ran = shell.run("card", Shell.EXAMPLES.resolve(example).toString(), "--json");
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("trials"));
        assertThat(schema.validate(ran.out(), InputFormat.JSON)).isEmpty();
        assertThat(ran.code()).isEqualTo(1);
        assertThat(answer(ran).at("/verdict/outcome").stringValue()).isEqualTo("not met");
    }

    @Test
    void cardsAreReprintedOverTheirOwnPrintHoweverLongItIs() throws Exception {
        Path printed = shell.folder().resolve("cards.pdf");
        Files.copy(Shell.EXAMPLES.resolve("mudlark/cards.pdf"), printed);
        assertThat(Files.size(printed)).as("longer than a rig file may be").isGreaterThan(1 << 20);
        var ran = shell.run("card", "rig.yaml", "mass", "--pdf", "cards.pdf");
        assertThat(ran.err()).contains("wrote cards.pdf");
        assertThat(Files.size(printed)).isLessThan(1 << 20);
    }

    @Test
    void aCardOfARunObeysItsSchemaAndHasStepsAndAborts() {
        var ran = shell.run("card", "rig.yaml", "first-spin.F140", "--json");
        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("trials"));
        assertThat(schema.validate(ran.out(), InputFormat.JSON)).isEmpty();
        JsonNode card = answer(ran).get("sections").get(0);
        assertThat(card.get("kind").stringValue()).isEqualTo("card");
        assertThat(card.get("blocks").valueStream().filter(block -> block.has("id")))
                .extracting(block -> block.get("id").stringValue())
                .contains("first-spin-f140-steps", "first-spin-f140-aborts");
    }

    @Test
    void whatWasPassedStandsUntilWhatItRestsOnChanges() throws IOException {
        assertThat(shell.run("card", "pass", "rig.yaml", "mass", "--by", "A. Builder").code())
                .isZero();
        JsonNode stands = answer(shell.run("card", "rig.yaml", "--json"));
        assertThat(cell(stands, "mass", "card-state")).isEqualTo("passed");
        assertThat(cell(stands, "mass", "passed-on")).isEqualTo(Shell.TODAY.toString());
        assertThat(cell(stands, "centre", "card-state")).isEqualTo("open");

        String text = Files.readString(folder.resolve("rig.yaml"));
        assertThat(text).contains("frame, mass: 2.2 kg");
        Files.writeString(
                folder.resolve("rig.yaml"),
                text.replace("frame, mass: 2.2 kg", "frame, mass: 2.3 kg"));
        JsonNode voided = answer(shell.run("card", "status", "rig.yaml", "--json"));
        assertThat(cell(voided, "mass", "card-state")).isEqualTo("voided");
        assertThat(cell(voided, "centre", "card-state")).isEqualTo("closed");
        assertThat(cell(voided, "cells.C80", "card-state")).isEqualTo("open");

        JsonNode later = answer(shell.run("card", "rig.yaml", "--json", "--on", "2036-01-01"));
        assertThat(cell(later, "mass", "card-state")).isNotEqualTo("passed");
    }

    @Test
    void anAbortTakesAPassAway() {
        shell.run("card", "pass", "rig.yaml", "mass", "--by", "A. Builder");
        shell.run(
                "card",
                "pass",
                "rig.yaml",
                "mass",
                "--by",
                "A. Builder",
                "--outcome",
                "aborted",
                "--note",
                "scale slipped");
        JsonNode after = answer(shell.run("card", "rig.yaml", "--json"));
        assertThat(cell(after, "mass", "card-state")).isEqualTo("open");
        assertThat(cell(after, "centre", "card-state")).isEqualTo("closed");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "card pass rig.yaml hop --by Ann|hop is closed today|2",
                "card pass rig.yaml mass|who answers for it|2",
                "card pass rig.yaml mass --by Ann --outcome fine|--outcome is passed, aborted|2",
                "card rig.yaml hopp|perhaps hop was meant|2",
                "card rig.yaml --on tomorrow|--on is a date such as|2",
                "card rig.yaml mass --pdf rig.yaml|is no unchanged file of this program|2",
                "card rig.yaml mass --paper a3 --pdf x.pdf|--paper is a4 or letter|2",
                "card rig.yaml --pdf x.pdf|which card is to be printed|2",
                "card proof rig.yaml nothing.csv|no file or folder nothing.csv|2",
                "card today rig.yaml|no file or folder rig.day.yaml|2",
                "card status|which rig|2",
            })
    void whatCannotBeDoneIsSaidAndWritesNothing(String words, String said, int code)
            throws IOException {
        List<String> before = files();
        var ran = shell.run(words.split(" "));
        assertThat(ran.code()).as(ran.err()).isEqualTo(code);
        assertThat(ran.err().replaceAll("\\s+", " ")).contains(said);
        assertThat(files()).isEqualTo(before);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }

    @Test
    void cardsAreWrittenToPrintAndOnlyTheirOwnAreReplaced() throws IOException {
        var first =
                shell.run(
                        "card", "rig.yaml", "mass", "frame", "--pdf", "c.pdf", "--html", "c.html");
        assertThat(first.err()).contains("wrote c.html", "wrote c.pdf");
        assertThat(Files.readAllBytes(folder.resolve("c.pdf"))).startsWith("%PDF".getBytes(UTF_8));
        assertThat(Files.readString(folder.resolve("c.html"))).contains("weigh the parts");
        byte[] pdf = Files.readAllBytes(folder.resolve("c.pdf"));
        shell.run("card", "rig.yaml", "mass", "frame", "--pdf", "c.pdf");
        assertThat(Files.readAllBytes(folder.resolve("c.pdf"))).isEqualTo(pdf);
    }

    /** A thrust that halves every 50 ms from a tenth of a second after each press. */
    private String log() {
        var log = new StringBuilder("time [s],press,thrust [N]\n");
        var noise = new SplittableRandom(20260314);
        double t = 0;
        for (String path : List.of("remote", "remote without power")) {
            for (int press = 0; press < 3; press++) {
                for (int k = 0; k < 400; k++) {
                    double since = (k - 200) / 100.0 - 0.1;
                    double thrustN = since < 0 ? 20 : 20 * Math.pow(0.5, since / 0.05);
                    log.append(
                            String.format(
                                    Locale.ROOT,
                                    "%.2f,%s,%.3f%n",
                                    t,
                                    k == 200 ? path : "",
                                    thrustN + noise.nextGaussian(0, 0.05)));
                    t += 0.01;
                }
            }
        }
        return log.toString();
    }

    @Test
    void aProofIsKeptAndOpensNothingTomorrow() throws IOException {
        Files.writeString(folder.resolve("kill.csv"), log());
        var ran = shell.run("card", "proof", "rig.yaml", "kill.csv", "--json");
        // Half after 0.15 s and a tenth after 0.27 s, within half a second.
        assertThat(answer(ran).at("/verdict/outcome").stringValue()).isEqualTo("met");
        assertThat(folder.resolve("rig.kills/" + Shell.TODAY + ".yaml")).exists();
        var again = shell.run("card", "proof", "rig.yaml", "kill.csv");
        assertThat(again.err()).contains("-2.yaml");
        JsonNode today = answer(shell.run("card", "rig.yaml", "--json"));
        assertThat(cell(today, "first-spin.F140", "card-why")).doesNotContain("kills");
        JsonNode tomorrow =
                answer(
                        shell.run(
                                "card",
                                "rig.yaml",
                                "--json",
                                "--on",
                                Shell.TODAY.plusDays(1).toString()));
        assertThat(cell(tomorrow, "first-spin.F140", "card-why"))
                .contains("kills not proved today");
    }

    @Test
    void aDayIsPlannedOnOneSheet() throws IOException {
        Files.writeString(
                folder.resolve("rig.day.yaml"),
                """
                liftwright day: 1
                date: 2026-03-14
                start: "09:00"
                light until: "18:10"
                air: 9 °C
                wind: 2 m/s
                gust: 3 m/s
                packs:
                  p.1: {charge: 100 %, temperature: 24 °C, spread: 8 mV}
                people:
                  Ann: [watcher, throttle]
                  Ben: [fire, kill]
                """);
        var ran = shell.run("card", "today", "rig.yaml", "--json", "--pdf", "today.pdf");
        assertThat(ran.code()).as(ran.err()).isZero();
        JsonNode answer = answer(ran);
        assertThat(answer.get("sections").get(0).get("id").stringValue()).isEqualTo("today");
        assertThat(answer.at("/verdict/text").stringValue()).contains("allowed on 2026-03-14");
        assertThat(folder.resolve("today.pdf")).exists();
        assertThat(ran.out()).contains("\"mass\"").doesNotContain("NaN");
    }
}
