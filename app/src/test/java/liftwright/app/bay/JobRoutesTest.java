package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Work that takes minutes, begun from one tab and seen from another, through ends and changes. */
class JobRoutesTest {

    private static final Path CURLEW = Path.of("..", "examples", "curlew", "rig.yaml");
    private static final Set<String> STILL = Set.of("stopped", "done", "failed");

    @TempDir private Path folder;

    @BeforeEach
    void aRigAndAShortProfile() throws IOException {
        fill(folder);
    }

    private static void fill(Path folder) throws IOException {
        Files.copy(CURLEW, folder.resolve("rig.yaml"));
        Files.createDirectories(folder.resolve("profiles"));
        Files.writeString(
                folder.resolve("profiles/short.yaml"),
                """
                liftwright profile: 1
                name: up and down
                start: {on: held, height: 1 m}
                steps:
                  - hold: 1 s
                """);
    }

    private static String base(Tab tab) throws Exception {
        return tab.ask("document", "{\"rig\":\"rig.yaml\"}").text("revision");
    }

    private static Tab.Answer begin(Tab tab, String more) throws Exception {
        return tab.ask(
                "jobbegin", "{\"rig\":\"rig.yaml\",\"base\":\"" + base(tab) + "\"," + more + "}");
    }

    private static Tab.Answer fly(Tab tab, int flights) throws Exception {
        return begin(
                tab,
                "\"kind\":\"flights\",\"profile\":\"short.yaml\",\"seed\":\"5\",\"flights\":"
                        + flights);
    }

    private static int id(Tab.Answer begun) {
        assertThat(begun.status()).as(begun.toString()).isEqualTo(200);
        return begun.body().members("job").whole("job");
    }

    private static Json.Members job(Tab tab, int id) throws Exception {
        return tab.ask("jobs", "{}").body().items("jobs").stream()
                .map(item -> item.asMembers("jobs"))
                .filter(job -> job.whole("job") == id)
                .findFirst()
                .orElseThrow();
    }

    private static Json.Members until(Tab tab, int id, Predicate<Json.Members> what)
            throws Exception {
        long end = System.nanoTime() + 120_000_000_000L;
        while (System.nanoTime() < end) {
            Json.Members job = job(tab, id);
            if (what.test(job)) {
                return job;
            }
            Thread.sleep(20);
        }
        throw new AssertionError("waited too long: " + job(tab, id));
    }

    private static Json.Members still(Tab tab, int id) throws Exception {
        return until(tab, id, job -> STILL.contains(job.text("state")));
    }

    private byte[] bytes(int id) throws IOException {
        return Files.readAllBytes(folder.resolve(".liftwright/jobs/" + id + "/flights.csv"));
    }

    private static String document(Tab tab, int id) throws Exception {
        Tab.Answer answer = tab.ask("jobanswer", "{\"job\":" + id + ",\"units\":\"si\"}");
        assertThat(answer.status()).as(answer.toString()).isEqualTo(200);
        return answer.body().members("answer").toString();
    }

    /** Stopped, taken up by another run of the program, and seen by two tabs: the same bytes. */
    @Test
    void stoppedAndTakenUpAgainGivesTheSameBytesAsOneGo(@TempDir Path other) throws Exception {
        int id;
        try (var bay = OpenBay.at(folder);
                var one = new Tab(bay.server());
                var two = new Tab(bay.server())) {
            id = id(fly(one, 14));
            assertThat(id(fly(two, 14))).as("asked again from another tab").isEqualTo(id);
            until(two, id, job -> job.number("done") >= 2);
            assertThat(two.ask("jobstop", "{\"job\":" + id + "}").status()).isEqualTo(200);
            Json.Members job = still(one, id);
            assertThat(job.text("state")).isEqualTo("stopped");
            assertThat(job.number("done")).isBetween(2.0, 13.0);
            assertThat(document(one, id)).contains("flights-worst");
            assertThat(bay.faults()).isEmpty();
        }
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            assertThat(job(tab, id).text("state")).isEqualTo("stopped");
            assertThat(tab.ask("jobresume", "{\"job\":" + id + "}").status()).isEqualTo(200);
            assertThat(still(tab, id).text("state")).isEqualTo("done");
            assertThat(bay.faults()).isEmpty();
        }
        byte[] inParts = bytes(id);
        fill(other);
        try (var bay = OpenBay.at(other);
                var tab = new Tab(bay.server())) {
            int whole = id(fly(tab, 14));
            assertThat(still(tab, whole).text("state")).isEqualTo("done");
            assertThat(other.resolve(".liftwright/jobs/" + whole + "/flights.csv"))
                    .hasBinaryContent(inParts);
        }
    }

    /** A copy of the folder taken while it flies is what a program that is killed leaves. */
    @Test
    void aKilledProgramLosesNothingThatWasKept(@TempDir Path killed) throws Exception {
        int kept;
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            int id = id(fly(tab, 200));
            Path file = folder.resolve(".liftwright/jobs/" + id + "/flights.csv");
            until(tab, id, _ -> Files.exists(file));
            fill(killed);
            Path to = killed.resolve(".liftwright/jobs/" + id);
            Files.createDirectories(to);
            Files.copy(file, to.resolve("flights.csv"));
            Files.copy(file.resolveSibling("job.txt"), to.resolve("job.txt"));
            tab.ask("jobstop", "{\"job\":" + id + "}");
            still(tab, id);
        }
        try (Stream<String> lines = Files.lines(killed.resolve(".liftwright/jobs/1/flights.csv"))) {
            kept = (int) lines.filter(line -> line.matches("[0-9]+,.*")).count();
        }
        assertThat(kept).isPositive();
        try (var bay = OpenBay.at(killed);
                var tab = new Tab(bay.server())) {
            assertThat(job(tab, 1).text("state")).isEqualTo("stopped");
            assertThat(job(tab, 1).text("told")).contains("program ended");
            assertThat(document(tab, 1)).contains("flights-worst");
            tab.ask("jobresume", "{\"job\":1}");
            Json.Members on = until(tab, 1, job -> job.number("done") > 0);
            assertThat(on.number("done")).as("not flown again").isGreaterThanOrEqualTo(kept);
            tab.ask("jobstop", "{\"job\":1}");
            still(tab, 1);
            assertThat(bay.faults()).isEmpty();
        }
    }

    /** A tab that watches another rig hears of it too, down the stream of changes. */
    @Test
    void everyTabIsToldHowItStands() throws Exception {
        Files.writeString(folder.resolve("other.yaml"), OpenBay.RIG);
        try (var bay = OpenBay.at(folder);
                var one = new Tab(bay.server());
                var two = new Tab(bay.server());
                BufferedReader told = two.stream("watch", "rig", "other.yaml")) {
            int id = id(fly(one, 40)); // longer than the stream looks apart
            String line = told.readLine();
            boolean ran = false;
            while (!line.contains("\"state\":\"done\"")) {
                ran |= line.contains("\"state\":\"running\"");
                line = told.readLine();
            }
            assertThat(ran).as("told while it ran").isTrue();
            assertThat(line)
                    .contains("\"job\":" + id, "40 of 40, 100 %", "40 flights of short.yaml");
        }
    }

    @Test
    void withAnotherRigItIsOldAndDoesNotGoOn() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            int id = id(fly(tab, 60));
            until(tab, id, job -> job.number("done") >= 1);
            tab.ask("jobstop", "{\"job\":" + id + "}");
            assertThat(still(tab, id).optionalText("stale")).isEmpty();
            String base = base(tab);
            Tab.Answer changed =
                    tab.change(
                            "rig.yaml",
                            base,
                            "[{\"kind\":\"set\",\"at\":\"rig\",\"value\":\"Other\"}]");
            assertThat(changed.status()).as(changed.toString()).isEqualTo(200);
            assertThat(job(tab, id).text("stale")).contains("before it was changed");
            assertThat(document(tab, id)).as("what was flown stays").contains("flights-worst");
            Tab.Answer refused = tab.ask("jobresume", "{\"job\":" + id + "}");
            assertThat(refused.status()).isEqualTo(409);
            assertThat(refused.text("fault")).isEqualTo("stale");
            assertThat(tab.ask("jobforget", "{\"job\":" + id + "}").status()).isEqualTo(200);
            assertThat(tab.ask("jobs", "{}").body().items("jobs")).isEmpty();
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void aRigWithoutLoopsSaysSo() throws Exception {
        Files.copy(
                Path.of("..", "examples", "sandpiper", "rig.yaml"), folder.resolve("refused.yaml"));
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            String base = tab.ask("document", "{\"rig\":\"refused.yaml\"}").text("revision");
            int id =
                    id(
                            tab.ask(
                                    "jobbegin",
                                    """
                                    {"rig":"refused.yaml","base":"%s","kind":"flights",
                                     "seed":"","flights":5,"profile":"short.yaml"}"""
                                            .formatted(base)));
            Json.Members job = still(tab, id);
            assertThat(job.text("state")).isEqualTo("failed");
            assertThat(job.text("told")).contains("Nothing can be flown");
            assertThat(bay.faults()).isEmpty();
        }
    }

    @Test
    void whatCannotBeIsRefusedWithASentence() throws Exception {
        try (var bay = OpenBay.at(folder);
                var tab = new Tab(bay.server())) {
            for (String bad :
                    List.of(
                            "\"kind\":\"dreams\"",
                            "\"kind\":\"flights\"",
                            "\"kind\":\"flights\",\"flights\":0,\"seed\":\"1\"",
                            "\"kind\":\"flights\",\"flights\":1e9,\"seed\":\"1\"",
                            "\"kind\":\"flights\",\"flights\":1.5,\"seed\":\"1\"",
                            "\"kind\":\"flights\",\"flights\":1,\"seed\":\"one\"",
                            "\"kind\":\"flights\",\"flights\":1,\"seed\":\"9999999999999999999\"",
                            "\"kind\":\"flights\",\"flights\":1,\"seed\":1",
                            "\"kind\":7")) {
                Tab.Answer answer = begin(tab, bad);
                assertThat(answer.status()).as(bad).isEqualTo(400);
                assertThat(answer.text("sentence")).as(bad).isNotBlank();
            }
            assertThat(begin(tab, "\"kind\":\"explain\",\"test\":\"none\"").status())
                    .isEqualTo(404);
            assertThat(
                            begin(
                                            tab,
                                            "\"kind\":\"flights\",\"flights\":1,\"seed\":\"1\","
                                                    + "\"profile\":\"../rig.yaml\"")
                                    .status())
                    .isEqualTo(404);
            assertThat(
                            tab.ask(
                                            "jobbegin",
                                            "{\"rig\":\"rig.yaml\",\"base\":\"sha256:0\","
                                                    + "\"kind\":\"pairs\"}")
                                    .status())
                    .isEqualTo(409);
            for (String route : List.of("jobstop", "jobresume", "jobforget")) {
                assertThat(tab.ask(route, "{\"job\":77}").status()).as(route).isEqualTo(404);
                assertThat(tab.ask(route, "{\"job\":-1}").status()).as(route).isEqualTo(400);
                assertThat(tab.ask(route, "{}").status()).as(route).isEqualTo(400);
            }
            assertThat(tab.ask("jobs", "{}").body().items("jobs")).isEmpty();
            assertThat(folder.resolve(".liftwright/jobs")).doesNotExist();
            assertThat(bay.faults()).isEmpty();
        }
    }
}
