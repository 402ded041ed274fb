package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Logs on their way from the page into the logbook, and what the page asks of it. */
class TestRoutesTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");
    private static final JsonMapper REFEREE = JsonMapper.builder().build();
    private static final int ROWS = 20_000;
    private static final double STEP_S = 0.01;

    @TempDir private Path folder;

    @BeforeEach
    void aRig() throws Exception {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
    }

    private static double thrustN(int k) {
        return k == 12_345 ? 321.5 : 100 + 40 * Math.sin(k * 0.001) + (k * 7919 % 13) / 10.0;
    }

    /** A scale's log of our own making; one row of it is none. */
    private static String log() {
        var text = new StringBuilder("time [s],throttle [%],thrust [N]\n");
        for (int k = 0; k < ROWS; k++) {
            text.append(
                    String.format(Locale.ROOT, "%.2f,%d,%.6f%n", k * STEP_S, k / 400, thrustN(k)));
            if (k == 100) {
                text.append("1.005,2,what?\n");
            }
        }
        return text.toString();
    }

    private static Tab.Answer piece(Tab tab, String more, double at, byte[] bytes)
            throws Exception {
        return tab.ask(
                "upload",
                "{\"rig\":\"rig.yaml\",%s,\"at\":%s,\"bytes\":\"%s\"}"
                        .formatted(more, at, Base64.getEncoder().encodeToString(bytes)));
    }

    /** Sends a text in two pieces. */
    private static String sent(Tab tab, String name, String text) throws Exception {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        int half = bytes.length / 2;
        var first =
                piece(tab, "\"name\":\"" + name + "\"", 0, java.util.Arrays.copyOf(bytes, half));
        assertThat(first.status()).isEqualTo(200);
        String upload = first.text("upload");
        var second =
                piece(
                        tab,
                        "\"name\":\"%s\",\"upload\":\"%s\"".formatted(name, upload),
                        half,
                        java.util.Arrays.copyOfRange(bytes, half, bytes.length));
        assertThat(second.body().number("size")).isEqualTo(bytes.length);
        return upload;
    }

    private static List<JsonNode> lines(Tab tab, String route, String body) throws Exception {
        List<JsonNode> lines = new ArrayList<>();
        try (var stream = tab.lines(route, body)) {
            for (String line = stream.readLine(); line != null; line = stream.readLine()) {
                if (!line.isBlank()) {
                    lines.add(REFEREE.readTree(line));
                }
            }
        }
        return lines;
    }

    private static List<JsonNode> reading(Tab tab, String base, String upload) throws Exception {
        return lines(
                tab,
                "reading",
                "{\"rig\":\"rig.yaml\",\"base\":\"%s\",\"uploads\":[\"%s\"]}"
                        .formatted(base, upload));
    }

    private static Tab.Answer keep(Tab tab, String base, String reading, String date)
            throws Exception {
        return tab.ask(
                "keep",
                "rig",
                "rig.yaml",
                "base",
                base,
                "reading",
                reading,
                "date",
                date,
                "card",
                "",
                "who",
                "A. Nobody=watcher, B. Nobody",
                "note",
                "dry: \"calm\"");
    }

    /** A test in the logbook; its name. */
    private static String kept(Tab tab, String base, String log) throws Exception {
        JsonNode read = reading(tab, base, sent(tab, "scale.csv", log)).getFirst().get("read");
        var kept = keep(tab, base, read.get("reading").stringValue(), "2026-03-14");
        assertThat(kept.status()).as(kept.body().toString()).isEqualTo(200);
        return kept.text("test");
    }

    private static String base(Tab tab) throws Exception {
        return tab.ask("document", "rig", "rig.yaml").text("revision");
    }

    private List<String> own(String begins) throws Exception {
        try (Stream<Path> all = Files.list(folder.resolve(".liftwright"))) {
            return all.map(path -> path.getFileName().toString())
                    .filter(name -> name.startsWith(begins))
                    .toList();
        }
    }

    @Test
    void whatWasUnderstoodIsToldBeforeAnythingIsKept() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            List<JsonNode> told = reading(tab, base(tab), sent(tab, "..\\\\a/scale.csv", log()));
            JsonNode read = told.getFirst().get("read");
            assertThat(told.getLast().get("end").stringValue()).isEqualTo("done");
            JsonNode file = read.get("files").get(0);
            assertThat(file.get("source").stringValue()).isEqualTo("scale.csv");
            assertThat(file.get("rows").intValue()).isEqualTo(ROWS);
            assertThat(file.get("last").doubleValue()).isEqualTo((ROWS - 1) * STEP_S);
            assertThat(file.get("channels"))
                    .extracting(channel -> channel.get("name").stringValue())
                    .containsExactly("throttle", "thrust");
            JsonNode aside = read.get("rejected").get(0);
            assertThat(aside.get("count").intValue()).isEqualTo(1);
            assertThat(aside.at("/first/0/line").intValue()).isEqualTo(103);
            assertThat(aside.at("/first/0/text").stringValue()).contains("what?");
            assertThat(folder.resolve("rig.logbook")).doesNotExist();
            assertThat(bay.faults()).isEmpty();
        }
        assertThat(own("incoming")).isEmpty();
        assertThat(own("reading")).isEmpty();
    }

    @Test
    void whatIsNoLogSaysWhatIsWrongAndWhere() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            List<JsonNode> told =
                    reading(tab, base(tab), sent(tab, "a.csv", "time [s],thrust [kV]\n0,1\n1,2\n"));
            JsonNode problem = told.getFirst().get("problems").get(0);
            assertThat(problem.get("source").stringValue()).isEqualTo("a.csv");
            assertThat(problem.get("found").stringValue()).contains("kV");
            assertThat(bay.faults()).isEmpty();
        }
    }

    /** What a job finds of a test is what its own route finds, and outlives the program. */
    @Test
    void aTestIsExplainedOnTheSideToo() throws Exception {
        var log = new StringBuilder("time [s],throttle [%],thrust [N]\n");
        for (int k = 0; k < 600; k++) {
            log.append(String.format(Locale.ROOT, "%.2f,%d,%.3f%n", k * 0.1, k / 12, k * 0.4));
        }
        String explained;
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String test = kept(tab, base(tab), log.toString());
            var begun = tab.ask("jobbegin", "rig", "rig.yaml", "kind", "explain", "test", test);
            assertThat(begun.status()).as(begun.toString()).isEqualTo(200);
            while (!jobs(tab).contains("value=done")) {
                assertThat(jobs(tab)).doesNotContain("value=failed");
                Thread.sleep(50);
            }
            explained = explained(tab);
            JsonNode told =
                    lines(
                                    tab,
                                    "test",
                                    "{\"rig\":\"rig.yaml\",\"units\":\"si\",\"test\":\"%s\"}"
                                            .formatted(test))
                            .getFirst();
            assertThat(explained).contains(told.at("/document/answer/verdict/shown").stringValue());
            assertThat(bay.faults()).isEmpty();
        }
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(explained(tab)).isEqualTo(explained);
        }
    }

    private static String jobs(Tab tab) throws Exception {
        return tab.ask("jobs", "{}").body().toString();
    }

    private static String explained(Tab tab) throws Exception {
        var answer = tab.ask("jobanswer", "{\"job\":1,\"units\":\"si\"}");
        assertThat(answer.status()).as(answer.toString()).isEqualTo(200);
        return answer.body().members("answer").toString();
    }

    @Test
    void aTestIsKeptOnceAndStandsInTheAnswer() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = base(tab);
            JsonNode read =
                    reading(tab, base, sent(tab, "scale.csv", log())).getFirst().get("read");
            String reading = read.get("reading").stringValue();
            assertThat(keep(tab, base, reading, "yesterday").status()).isEqualTo(400);
            assertThat(keep(tab, "other", reading, "2026-03-14").text("fault")).isEqualTo("stale");
            assertThat(keep(tab, base, "reading-99", "2026-03-14").status()).isEqualTo(404);
            assertThat(folder.resolve("rig.logbook")).doesNotExist();
            var kept = keep(tab, base, reading, "2026-03-14");
            assertThat(kept.text("test")).isEqualTo("2026-03-14-1");
            assertThat(keep(tab, base, reading, "2026-03-14").status()).isEqualTo(404);
            Path test = folder.resolve("rig.logbook/tests/2026-03-14-1");
            assertThat(Files.readString(test.resolve("test.yaml")))
                    .contains("A. Nobody", "watcher", "calm");
            assertThat(test.resolve("rejected-1.csv")).exists();
            List<JsonNode> told =
                    lines(
                            tab,
                            "ask",
                            """
                            {"rig":"rig.yaml","base":"%s","questions":["learning"],
                             "units":"si","to":"whole"}\
                            """
                                    .formatted(base));
            JsonNode answer =
                    told.stream()
                            .filter(line -> line.has("stage"))
                            .reduce((_, last) -> last)
                            .orElseThrow()
                            .at("/document/answer");
            assertThat(answer.at("/verdict/shown").stringValue()).contains("1 test is");
            JsonNode row = answer.at("/sections/0/rows/0");
            assertThat(row.get(0).get("text").stringValue()).isEqualTo("2026-03-14-1");
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void nothingIsKeptOfARigThatIsNotSaved() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String change = "[{\"kind\":\"set\",\"at\":\"rig\",\"value\":\"Other\"}]";
            String base = tab.change("rig.yaml", base(tab), change).text("revision");
            JsonNode read =
                    reading(tab, base, sent(tab, "scale.csv", log())).getFirst().get("read");
            var kept = keep(tab, base, read.get("reading").stringValue(), "2026-03-14");
            assertThat(kept.status()).isEqualTo(409);
            assertThat(kept.text("sentence")).contains("Save the rig file first");
            assertThat(folder.resolve("rig.logbook")).doesNotExist();
        }
    }

    private static Tab.Answer samples(
            Tab tab, String test, String channels, double from, double to, int pixels)
            throws Exception {
        return tab.ask(
                "samples",
                String.format(
                        Locale.ROOT,
                        "{\"rig\":\"rig.yaml\",\"test\":\"%s\",\"channels\":%s,\"from\":%s,"
                                + "\"to\":%s,\"pixels\":%d}",
                        test,
                        channels,
                        from,
                        to,
                        pixels));
    }

    private static double[] numbers(Json.Members channel, String name) {
        return channel.items(name).stream()
                .mapToDouble(item -> ((Json.Amount) item).value())
                .toArray();
    }

    /** The referee looks at every sample of the log; a peak of one of 20,000 is not lost. */
    @Test
    void samplesAreTheLeastAndGreatestOfEachPixel() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String test = kept(tab, base(tab), log());
            for (double[] span : new double[][] {{0, 199.99}, {100, 150}, {123.3, 123.6}}) {
                int pixels = 200;
                var answer = samples(tab, test, "[\"thrust\"]", span[0], span[1], pixels);
                assertThat(answer.status()).as(answer.body().toString()).isEqualTo(200);
                Json.Members channel =
                        answer.body().items("channels").getFirst().asMembers("channels");
                assertThat(channel.text("channel")).isEqualTo("thrust");
                double[] times = numbers(channel, "times");
                double[] low = numbers(channel, "low");
                double[] high = numbers(channel, "high");
                assertThat(times.length).isBetween(20, pixels + 2);
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < ROWS; k++) {
                    double t = Double.parseDouble(String.format(Locale.ROOT, "%.2f", k * STEP_S));
                    if (t >= span[0] && t <= span[1]) {
                        least = Math.min(least, thrustN(k));
                        most = Math.max(most, thrustN(k));
                    }
                }
                double toldLeast = Double.POSITIVE_INFINITY;
                double toldMost = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < times.length; k++) {
                    assertThat(low[k]).isLessThanOrEqualTo(high[k]);
                    if (times[k] >= span[0] && times[k] <= span[1]) {
                        toldLeast = Math.min(toldLeast, low[k]);
                        toldMost = Math.max(toldMost, high[k]);
                    }
                }
                assertThat(toldMost).isCloseTo(most, org.assertj.core.data.Offset.offset(1e-6));
                assertThat(toldLeast).isCloseTo(least, org.assertj.core.data.Offset.offset(1e-6));
            }
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void whatCannotBeDrawnIsRefused() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String test = kept(tab, base(tab), log());
            String one = "[\"thrust\"]";
            assertThat(samples(tab, test, one, 5, 5, 100).status()).isEqualTo(400);
            assertThat(samples(tab, test, one, 0, 1, 0).status()).isEqualTo(400);
            assertThat(samples(tab, test, one, 0, 1, 1_000_000).status()).isEqualTo(400);
            String many = "[" + "\"thrust\",".repeat(64) + "\"thrust\"]";
            assertThat(samples(tab, test, many, 0, 1, 100).status()).isEqualTo(400);
            for (String strange :
                    List.of("", "2026-03-14-2", "../tests/2026-03-14-1", "2026-03-14-1/..", "x")) {
                assertThat(samples(tab, strange, one, 0, 1, 100).status())
                        .as(strange)
                        .isEqualTo(404);
            }
            var hostile = samples(tab, test, "[\"thrust\\\"; DROP TABLE samples; --\"]", 0, 1, 100);
            assertThat(hostile.status()).isEqualTo(200);
            assertThat(hostile.body().items("channels")).isEmpty();
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void aTestThatWasTamperedWithIsNotDrawn() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String test = kept(tab, base(tab), log());
            Path table = folder.resolve("rig.logbook/tests/" + test + "/samples-1.parquet");
            assertThat(samples(tab, test, "[\"thrust\"]", 0, 1, 100).status()).isEqualTo(200);
            byte[] bytes = Files.readAllBytes(table);
            bytes[bytes.length / 2] ^= 1;
            Files.write(table, java.util.Arrays.copyOf(bytes, bytes.length + 1));
            var answer = samples(tab, test, "[\"thrust\"]", 0, 1, 100);
            assertThat(answer.status()).isEqualTo(409);
            assertThat(answer.text("sentence")).contains("samples-1.parquet");
        }
    }

    @Test
    void aLogbookThatLeadsOutOfTheFolderIsNone(@TempDir Path elsewhere) throws Exception {
        Files.createSymbolicLink(folder.resolve("rig.logbook"), elsewhere);
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(samples(tab, "2026-03-14-1", "[]", 0, 1, 9).status()).isEqualTo(404);
        }
    }

    @Test
    void piecesComeInTheirOrderFromTheirOwnTabAndNotForEver() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server());
                var other = new Tab(bay.server())) {
            String upload = sent(tab, "scale.csv", "time [s],thrust [N]\n0,1\n");
            String known = "\"name\":\"x\",\"upload\":\"" + upload + "\"";
            assertThat(piece(tab, known, 3, new byte[5]).status()).isEqualTo(409);
            assertThat(piece(other, known, 24, new byte[5]).status()).isEqualTo(404);
            assertThat(piece(tab, "\"name\":\"x\",\"upload\":\"../x\"", 0, new byte[5]).status())
                    .isEqualTo(404);
            var bent =
                    tab.ask(
                            "upload",
                            "{\"rig\":\"rig.yaml\",\"name\":\"x\",\"at\":0,\"bytes\":\"%%\"}");
            assertThat(bent.status()).isEqualTo(400);
            for (int k = 1; k < Incoming.MOST_LOGS; k++) {
                assertThat(piece(tab, "\"name\":\"x\"", 0, new byte[5]).status()).isEqualTo(200);
            }
            assertThat(piece(tab, "\"name\":\"x\"", 0, new byte[5]).status()).isEqualTo(413);
            assertThat(
                            tab.ask(
                                            "forget",
                                            "{\"rig\":\"rig.yaml\",\"uploads\":[\"%s\"]}"
                                                    .formatted(upload))
                                    .status())
                    .isEqualTo(200);
            assertThat(piece(tab, "\"name\":\"x\"", 0, new byte[5]).status()).isEqualTo(200);
            assertThat(bay.faults()).isEmpty();
        }
        assertThat(own("incoming")).isEmpty();
    }
}
