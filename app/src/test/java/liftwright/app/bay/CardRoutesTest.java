package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Cards as the page asks for them, prints them and writes down what came of them. */
class CardRoutesTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");
    private static final JsonMapper REFEREE = JsonMapper.builder().build();

    @TempDir private Path folder;

    @BeforeEach
    void aRig() throws Exception {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
    }

    private List<Path> passes() throws Exception {
        Path passes = folder.resolve("rig.passes");
        if (!Files.isDirectory(passes)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(passes)) {
            return files.sorted().toList();
        }
    }

    private static Tab.Answer pass(
            Tab tab, String base, String card, String outcome, String who, int repeats)
            throws Exception {
        return tab.ask(
                "pass",
                """
                {"rig":"rig.yaml","base":"%s","card":"%s","outcome":"%s","who":"%s","repeats":%d,
                 "notes":"seen: \\"hot\\""}\
                """
                        .formatted(base, card, outcome, who, repeats));
    }

    private static List<JsonNode> card(Tab tab, String base, String card) throws Exception {
        List<JsonNode> lines = new ArrayList<>();
        try (var stream =
                tab.stream("card", "rig", "rig.yaml", "base", base, "units", "si", "card", card)) {
            for (String line = stream.readLine(); line != null; line = stream.readLine()) {
                if (!line.isBlank()) {
                    lines.add(REFEREE.readTree(line));
                }
            }
        }
        return lines;
    }

    private Planned planned(String kind) throws Exception {
        var reading =
                liftwright.rig.file.RigReading.read(
                        "rig.yaml", Files.readAllBytes(folder.resolve("rig.yaml")));
        return Programme.of(reading.rig().orElseThrow()).cards().stream()
                .filter(one -> one.id().kind().id().equals(kind))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aCardComesWithTheWayThatProvesItAndIsTheOneAskedFor() throws Exception {
        CardId id = planned("kill").id();
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "rig", "rig.yaml").text("revision");
            List<JsonNode> lines = card(tab, base, id.text());
            assertThat(lines.getLast().get("end").stringValue()).isEqualTo("done");
            JsonNode told =
                    lines.stream().filter(line -> line.has("stage")).findFirst().orElseThrow();
            assertThat(told.get("question").stringValue()).isEqualTo("trials");
            JsonNode sections = told.at("/document/answer/sections");
            assertThat(sections.get(0).get("id").stringValue()).isEqualTo("reproof");
            assertThat(sections.get(0).get("rows").size()).isPositive();
            assertThat(sections.get(1).get("id").stringValue()).isEqualTo(id.text());
            assertThat(sections.get(1).get("blocks").size()).isGreaterThan(5);
            assertThat(bay.faults()).isEmpty();
        }
    }

    @ParameterizedTest
    @CsvSource({"pdf, a4, %PDF-", "html, letter, <!"})
    void aCardIsPrinted(String form, String paper, String begins) throws Exception {
        CardId id = planned("mass").id();
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "rig", "rig.yaml").text("revision");
            var file =
                    tab.file(
                            "sheet",
                            "rig",
                            "rig.yaml",
                            "base",
                            base,
                            "units",
                            "si",
                            "card",
                            id.text(),
                            "form",
                            form,
                            "paper",
                            paper);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(file.headers().firstValue("Content-Disposition").orElse(""))
                    .contains("card." + form);
            assertThat(new String(file.body(), StandardCharsets.ISO_8859_1)).startsWith(begins);
            var nowhere =
                    tab.ask(
                            "sheet",
                            "rig",
                            "rig.yaml",
                            "base",
                            base,
                            "units",
                            "si",
                            "card",
                            id.text(),
                            "form",
                            form,
                            "paper",
                            "wall");
            assertThat(nowhere.status()).isEqualTo(400);
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void theSheetOfTheDayIsPrintedWhereTodayIsWrittenDown() throws Exception {
        writeDay(LocalDate.now(ZoneId.systemDefault()));
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            var file = sheetOfToday(tab);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(new String(file.body(), StandardCharsets.UTF_8))
                    .startsWith("<!")
                    .contains("In this order")
                    .contains("mass");
            writeDay(LocalDate.of(2001, 2, 3));
            assertThat(sheetOfToday(tab).statusCode()).as("another day").isEqualTo(404);
            assertThat(bay.faults()).isEmpty();
        }
    }

    private static HttpResponse<byte[]> sheetOfToday(Tab tab) throws Exception {
        String base = tab.ask("document", "rig", "rig.yaml").text("revision");
        return tab.file(
                "sheet",
                "rig",
                "rig.yaml",
                "base",
                base,
                "units",
                "si",
                "card",
                "today",
                "form",
                "html",
                "paper",
                "a4");
    }

    private void writeDay(LocalDate date) throws IOException {
        Files.writeString(
                folder.resolve("rig.day.yaml"),
                """
                liftwright day: 1
                date: %s
                start: "09:00"
                light until: "18:10"
                air: 9 °C
                wind: 2 m/s
                gust: 3 m/s
                packs:
                  p.1: {charge: 100 %%, temperature: 24 °C, spread: 8 mV}
                people:
                  Ann: [watcher, throttle]
                  Ben: [fire, kill]
                """
                        .formatted(date));
    }

    @Test
    void whatCameOfACardIsWrittenBesideTheRigAndRigAndFilesStayAsTheyAre() throws Exception {
        CardId id = planned("mass").id();
        byte[] before = Files.readAllBytes(folder.resolve("rig.yaml"));
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "rig", "rig.yaml").text("revision");
            var first = pass(tab, base, id.text(), "aborted", "A. Nobody", 0);
            assertThat(first.status()).isEqualTo(200);
            List<Path> one = passes();
            assertThat(one).hasSize(1);
            byte[] aborted = Files.readAllBytes(one.getFirst());
            var second = pass(tab, base, id.text(), "passed", "A. Nobody, B. Nobody", 3);
            assertThat(second.text("sentence"))
                    .contains("number 2")
                    .contains(LocalDate.now(ZoneId.systemDefault()).toString());
            assertThat(passes()).hasSize(2);
            assertThat(Files.readAllBytes(one.getFirst())).isEqualTo(aborted);
            assertThat(Files.readString(passes().getLast())).contains("A. Nobody", "hot");
            assertThat(Files.readAllBytes(folder.resolve("rig.yaml"))).isEqualTo(before);
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void whatIsNoPassIsRefusedAndNothingIsWritten() throws Exception {
        Planned mass = planned("mass");
        Planned closed = planned("module-hold");
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "rig", "rig.yaml").text("revision");
            String id = mass.id().text();
            var shut = pass(tab, base, closed.id().text(), "passed", "A. Nobody", 10);
            assertThat(shut.status()).isEqualTo(409);
            assertThat(shut.text("fault")).isEqualTo("refused");
            assertThat(shut.text("sentence")).contains("closed");
            assertThat(pass(tab, base, id, "passed", "A. Nobody", 0).status()).isEqualTo(400);
            assertThat(pass(tab, base, id, "passed", " , ", 3).status()).isEqualTo(400);
            assertThat(pass(tab, base, id, "fine", "A. Nobody", 3).status()).isEqualTo(400);
            assertThat(pass(tab, base, "mass.nothing", "passed", "A. Nobody", 3).status())
                    .isEqualTo(404);
            assertThat(pass(tab, "other", id, "passed", "A. Nobody", 3).text("fault"))
                    .isEqualTo("stale");
            var changed =
                    tab.change(
                            "rig.yaml",
                            base,
                            "[{\"kind\":\"set\",\"at\":\"rig\",\"value\":\"Other\"}]");
            assertThat(changed.status()).isEqualTo(200);
            var unsaved = pass(tab, changed.text("revision"), id, "passed", "A. Nobody", 3);
            assertThat(unsaved.status()).isEqualTo(409);
            assertThat(unsaved.text("sentence")).contains("Save the rig file first");
            assertThat(passes()).isEmpty();
            assertThat(bay.faults()).isEmpty();
        }
    }
}
