package liftwright.app.bay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import liftwright.app.JsonOfReview;
import liftwright.app.record.TrialsRecord;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class AskRoutesTest {

    private static final JsonMapper REFEREE = JsonMapper.builder().build();
    private static final Set<String> TEXTS =
            Set.of("shown", "shownBand", "shownName", "shownEffect", "fields");
    private static final String ALL = "[\"lift\",\"endurance\",\"balance\"]";
    private static final Session TAB = new Session(1, Optional.empty());

    private static final Records NOWHERE = _ -> new TrialsRecord(Path.of("nowhere", "rig.yaml"));

    private final List<Throwable> faults = new CopyOnWriteArrayList<>();

    @AfterEach
    void nothingWentWrong() {
        assertThat(faults).isEmpty();
    }

    private static RigReading example(String name) {
        try {
            return RigReading.read("rig.yaml", Files.readAllBytes(JsonOfReview.example(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static RigReading reading(String yaml) {
        return RigReading.read("rig.yaml", yaml.getBytes(StandardCharsets.UTF_8));
    }

    /** The rig lies in a folder that is not there: nothing is on record of it. */
    private List<Route> routes(Readings readings) {
        var untested =
                new OnRecord(
                        NOWHERE,
                        new Reviewed(),
                        () -> LocalDate.of(2026, 3, 14),
                        new Logbooks(NOWHERE, Path.of("nowhere")),
                        new Learned(),
                        new Profiles(NOWHERE, Path.of("nowhere")));
        return new AskRoutes(readings, untested, "0.1.0", Duration.ofMillis(1), faults::add)
                .routes();
    }

    private static Reply.Stream stream(List<Route> routes, String name, Session tab, String body) {
        Route route = routes.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow();
        Json.Members members = JsonReader.read(body.getBytes(StandardCharsets.UTF_8));
        return (Reply.Stream) route.handler().answer(new Call(members, tab));
    }

    private List<JsonNode> hear(RigReading reading, String name, String body) {
        var lines = new LinesHeard();
        stream(routes(_ -> reading), name, TAB, body).teller().accept(lines);
        return lines.heard();
    }

    private static List<JsonNode> hear(List<Route> routes, String body) {
        var lines = new LinesHeard();
        stream(routes, "ask", TAB, body).teller().accept(lines);
        return lines.heard();
    }

    private static String ask(RigReading reading, String questions, String units, String to) {
        return """
        {"rig":"rig.yaml","base":"%s","questions":%s,"units":"%s","to":"%s"}\
        """
                .formatted(reading.digest(), questions, units, to);
    }

    private static String tried(RigReading reading, String changes) {
        return """
        {"rig":"rig.yaml","base":"%s","changes":%s,"questions":%s,"units":"si"}\
        """
                .formatted(reading.digest(), changes, ALL);
    }

    /** The lines in short: stage and question, or what else they are. */
    private static List<String> course(List<JsonNode> lines) {
        List<String> course = new ArrayList<>();
        for (JsonNode line : lines) {
            if (line.has("stage")) {
                course.add(
                        line.get("stage").stringValue() + " " + line.get("question").stringValue());
            } else if (line.has("end")) {
                course.add(line.get("end").stringValue());
            } else if (line.has("refused")) {
                course.add("refused");
            }
        }
        return course;
    }

    private static JsonNode document(List<JsonNode> lines, String stage, String question) {
        return lines.stream()
                .filter(line -> line.has("stage"))
                .filter(line -> line.get("stage").stringValue().equals(stage))
                .filter(line -> line.get("question").stringValue().equals(question))
                .findFirst()
                .orElseThrow()
                .get("document");
    }

    private static String stripped(JsonNode document) {
        JsonNode copy = document.deepCopy();
        strip(copy);
        return copy.toString();
    }

    private static void strip(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.remove(TEXTS);
        }
        node.forEach(AskRoutesTest::strip);
    }

    @ParameterizedTest
    @CsvSource({"sandpiper, si", "curlew, us"})
    void wholeWithoutItsTextsIsWhatTheCommandLineWrites(String example, String units) {
        RigReading reading = example(example);
        List<JsonNode> lines = hear(reading, "ask", ask(reading, ALL, units, "whole"));
        assertThat(course(lines))
                .containsExactly(
                        "nominal lift",
                        "nominal endurance",
                        "nominal balance",
                        "banded lift",
                        "banded endurance",
                        "banded balance",
                        "whole lift",
                        "whole endurance",
                        "whole balance",
                        "done");
        for (String question : List.of("lift", "endurance", "balance")) {
            String line = JsonOfReview.of(question, JsonOfReview.example(example));
            assertThat(stripped(document(lines, "whole", question)))
                    .isEqualTo(REFEREE.readTree(line).toString());
            JsonNode nominal = document(lines, "nominal", question);
            assertThat(nominal.at("/answer/verdict/outcome").stringValue()).isEqualTo("not judged");
            assertThat(nominal.toString()).doesNotContain("\"band\":");
            assertThat(nominal.at("/answer/verdict/shown").stringValue()).isNotBlank();
        }
    }

    /** On one rig that a stand holds and on the one with the fewest fans. */
    @ParameterizedTest
    @CsvSource({"restraint, sandpiper", "failures, measured"})
    void failuresAndRestraintEndAsTheCommandLineWritesThem(String question, String example) {
        RigReading reading = example(example);
        List<JsonNode> lines =
                hear(reading, "ask", ask(reading, "[\"" + question + "\"]", "si", "whole"));
        assertThat(course(lines))
                .containsExactly(
                        "nominal " + question, "banded " + question, "whole " + question, "done");
        String line = JsonOfReview.of(question, JsonOfReview.example(example));
        assertThat(stripped(document(lines, "whole", question)))
                .isEqualTo(REFEREE.readTree(line).toString());
    }

    @Test
    void whatTakesLongWaitsForTheOthers() {
        RigReading reading = example("measured");
        assertThat(
                        course(
                                hear(
                                        reading,
                                        "ask",
                                        ask(reading, "[\"heat\", \"lift\"]", "si", "banded"))))
                .containsExactly(
                        "nominal lift", "nominal heat", "banded lift", "banded heat", "done");
    }

    /** As the page asks after an undo: its bands wait for no glance at what takes long. */
    @Test
    void bandsOfWhatIsAskedFirstComeBeforeWhatTakesLongIsBegun() {
        RigReading reading = example("measured");
        String questions = "[\"balance\", \"lift\", \"restraint\"]";
        assertThat(course(hear(reading, "ask", ask(reading, questions, "si", "banded"))))
                .containsExactly(
                        "nominal balance",
                        "nominal lift",
                        "banded balance",
                        "nominal restraint",
                        "banded lift",
                        "banded restraint",
                        "done");
    }

    /** Undo goes back to a state that was answered a moment ago, redo to one half answered. */
    @Test
    void whatIsKnownOfAStateIsToldAtOnceWhenItComesBack() {
        RigReading before = example("sandpiper");
        RigReading after = reading(before.text().text() + "# edited\n");
        var now = new AtomicReference<>(before);
        List<Route> routes = routes(_ -> now.get());
        String questions = "[\"balance\", \"lift\"]";
        List<JsonNode> first = hear(routes, ask(before, questions, "si", "whole"));
        assertThat(course(first)).startsWith("nominal balance", "nominal lift", "banded balance");

        now.set(after);
        hear(routes, ask(after, questions, "si", "banded"));

        now.set(before);
        List<JsonNode> undone = hear(routes, ask(before, questions, "si", "whole"));
        assertThat(course(undone)).containsExactly("whole balance", "whole lift", "done");
        for (String question : List.of("balance", "lift")) {
            assertThat(document(undone, "whole", question))
                    .isEqualTo(document(first, "whole", question));
        }
        List<JsonNode> inOtherUnits = hear(routes, ask(before, "[\"lift\"]", "us", "whole"));
        assertThat(course(inOtherUnits)).containsExactly("whole lift", "done");
        assertThat(document(inOtherUnits, "whole", "lift").toString()).contains("lbf");
        String anew =
                ask(before, "[\"lift\"]", "si", "whole").replaceFirst("}$", ",\"anew\":true}");
        assertThat(course(hear(routes, anew)))
                .containsExactly("nominal lift", "banded lift", "whole lift", "done");

        now.set(after);
        assertThat(course(hear(routes, ask(after, questions, "si", "whole"))))
                .containsExactly(
                        "banded balance", "banded lift", "whole balance", "whole lift", "done");
    }

    @Test
    void whatIsKnownDoesNotWaitForWhatStillRuns() throws InterruptedException {
        RigReading reading = example("sandpiper");
        List<Route> routes = routes(_ -> reading);
        hear(routes, ask(reading, "[\"lift\"]", "si", "whole"));

        var slow = new LinesHeard();
        slow.hold();
        String balance = ask(reading, "[\"balance\"]", "si", "whole");
        Thread runs = started(stream(routes, "ask", TAB, balance), slow);
        slow.awaitHeld();
        var next = new LinesHeard();
        String lift = ask(reading, "[\"lift\"]", "si", "whole");
        Thread then = started(stream(routes, "ask", TAB, lift), next);
        next.await(line -> line.has("stage"));
        assertThat(course(next.heard())).containsExactly("whole lift");
        slow.release();
        runs.join();
        then.join();
        assertThat(course(next.heard())).containsExactly("whole lift", "done");
    }

    @Test
    void trialsAreToldAtOnceAndAgainAfterWhatTheyRestOn() {
        RigReading reading = example("curlew");
        List<JsonNode> lines =
                hear(reading, "ask", ask(reading, "[\"trials\", \"lift\"]", "si", "whole"));
        assertThat(course(lines))
                .containsExactly(
                        "nominal trials",
                        "nominal lift",
                        "banded lift",
                        "whole lift",
                        "banded trials",
                        "whole trials",
                        "done");
        JsonNode nominal = document(lines, "nominal", "trials");
        assertThat(nominal.at("/answer/verdict/outcome").stringValue()).isEqualTo("not judged");
        JsonNode whole = document(lines, "whole", "trials");
        assertThat(whole.at("/answer/verdict/outcome").stringValue()).isEqualTo("not met");
        JsonNode programme = whole.at("/answer/sections/0");
        assertThat(programme.get("id").stringValue()).isEqualTo("programme");
        assertThat(programme.get("rows").size()).isGreaterThan(10);
        assertThat(programme.toString()).doesNotContain("\"text\":\"passed\"");
    }

    @Test
    void readsNoFurtherThanItIsAsked() {
        RigReading reading = example("sandpiper");
        assertThat(course(hear(reading, "ask", ask(reading, "[\"lift\"]", "si", "banded"))))
                .containsExactly("nominal lift", "banded lift", "done");
        assertThat(course(hear(reading, "ask", ask(reading, "[]", "si", "whole"))))
                .containsExactly("done");
    }

    @Test
    void triesChangesAndKeepsNothing() {
        RigReading reading = example("sandpiper");
        String before = reading.text().text();
        String changes =
                "[{\"kind\":\"set\",\"at\":\"demands/thrust to weight\",\"value\":\"1.3\"}]";
        List<JsonNode> lines = hear(reading, "try", tried(reading, changes));
        assertThat(course(lines))
                .containsExactly("nominal lift", "nominal endurance", "nominal balance", "done");
        JsonNode lift = document(lines, "nominal", "lift");
        assertThat(lift.at("/answer/verdict/shown").stringValue()).contains("asked for 1.3");
        assertThat(lift.at("/rig/digest").stringValue()).isNotEqualTo(reading.digest());
        assertThat(reading.text().text()).isEqualTo(before);
        assertThat(course(hear(reading, "try", tried(reading, "[]")))).startsWith("nominal lift");
    }

    @Test
    void refusesInASentenceWhatCannotBeTried() {
        RigReading reading = example("sandpiper");
        List<JsonNode> nowhere =
                hear(
                        reading,
                        "try",
                        tried(reading, "[{\"kind\":\"remove\",\"at\":\"nothing/there\"}]"));
        assertThat(course(nowhere)).containsExactly("refused", "done");
        assertThat(nowhere.getFirst().get("refused").stringValue())
                .startsWith("nothing/there cannot be changed: ");
        List<JsonNode> wrong =
                hear(
                        reading,
                        "try",
                        tried(
                                reading,
                                "[{\"kind\":\"set\",\"at\":\"demands/hover\",\"value\":\"2"
                                        + " kg\"}]"));
        assertThat(course(wrong)).containsExactly("refused", "done");
        assertThat(wrong.getFirst().get("refused").stringValue())
                .startsWith("An error keeps the file from being read as a rig; the first is in");
    }

    @Test
    void refusesAFileThatIsNoRig() {
        RigReading reading = reading("liftwright: 1\nrig: Heron\n");
        List<JsonNode> lines = hear(reading, "ask", ask(reading, ALL, "si", "whole"));
        assertThat(course(lines)).containsExactly("refused", "done");
    }

    @Test
    void whatMakesNoRigIsRefusedForTheQuestionThatNeedsIt() throws IOException {
        String text = Files.readString(JsonOfReview.example("mudlark"));
        RigReading reading =
                reading(
                        text.replace(
                                "  body: female\n",
                                "  body: female\n  measured: {thigh mass: 30 kg}\n"));
        assertThat(reading.rig()).as(reading.problems().toString()).isPresent();
        List<JsonNode> lines = hear(reading, "ask", ask(reading, ALL, "si", "banded"));
        assertThat(course(lines))
                .containsExactly(
                        "nominal lift",
                        "nominal endurance",
                        "refused",
                        "banded lift",
                        "banded endurance",
                        "done");
        JsonNode refused =
                lines.stream().filter(line -> line.has("refused")).findFirst().orElseThrow();
        assertThat(refused.get("question").stringValue()).isEqualTo("balance");
        assertThat(refused.get("refused").stringValue()).contains("trunk");
    }

    @Test
    void aBaseThatNoLongerStandsIsStale() {
        RigReading reading = example("sandpiper");
        RigReading other = example("curlew");
        assertThatThrownBy(() -> hear(reading, "ask", ask(other, ALL, "si", "nominal")))
                .isInstanceOf(FaultException.class)
                .hasMessageContaining("changed elsewhere");
        assertThatThrownBy(() -> hear(reading, "ask", ask(reading, ALL, "ft", "nominal")))
                .hasMessageContaining("Units");
        assertThatThrownBy(() -> hear(reading, "ask", ask(reading, "[\"x\"]", "si", "nominal")))
                .hasMessageContaining("question");
        assertThatThrownBy(() -> hear(reading, "ask", ask(reading, ALL, "si", "soon")))
                .hasMessageContaining("stage");
    }

    private static Thread started(Reply.Stream stream, LinesHeard lines) {
        return Thread.ofVirtual()
                .start(
                        () -> {
                            try {
                                stream.teller().accept(lines);
                            } catch (Lines.GoneException e) {
                                lines.leave();
                            }
                        });
    }

    @Test
    void theNewestInATabStopsTheOneBeforeAndATryGoesFirst() throws InterruptedException {
        RigReading reading = example("sandpiper");
        List<Route> routes = routes(_ -> reading);
        String body = ask(reading, ALL, "si", "whole");
        var first = new LinesHeard();
        Thread firstRuns = started(stream(routes, "ask", TAB, body), first);
        first.await(line -> line.has("stage"));

        var dragged = new LinesHeard();
        stream(routes, "try", TAB, tried(reading, "[]")).teller().accept(dragged);
        assertThat(course(dragged.heard())).endsWith("nominal balance", "done");
        assertThat(course(first.heard())).doesNotContain("done", "stopped");

        var second = new LinesHeard();
        String less = ask(reading, "[\"lift\"]", "si", "nominal");
        stream(routes, "ask", TAB, less).teller().accept(second);
        firstRuns.join();
        assertThat(course(second.heard())).containsExactly("nominal lift", "done");
        assertThat(course(first.heard())).endsWith("stopped");
        assertThat(course(first.heard())).doesNotContain("whole balance");
    }

    @Test
    void anAskThatWasOvertakenOnItsWayStopsNothing() throws InterruptedException {
        RigReading reading = example("sandpiper");
        List<Route> routes = routes(_ -> reading);
        var newer = new LinesHeard();
        Thread runs =
                started(
                        stream(routes, "ask", TAB, turn(ask(reading, ALL, "si", "whole"), 8)),
                        newer);
        newer.await(line -> line.has("stage"));

        var late = new LinesHeard();
        stream(routes, "ask", TAB, turn(ask(reading, ALL, "si", "whole"), 7)).teller().accept(late);
        assertThat(course(late.heard())).containsExactly("stopped");
        assertThat(course(newer.heard())).doesNotContain("stopped");

        var next = new LinesHeard();
        String less = turn(ask(reading, "[\"lift\"]", "si", "nominal"), 9);
        stream(routes, "ask", TAB, less).teller().accept(next);
        runs.join();
        assertThat(course(newer.heard())).endsWith("stopped");

        var clockPutBack = new LinesHeard();
        String earlier = turn(ask(reading, "[\"lift\"]", "si", "nominal"), 1);
        stream(routes, "ask", TAB, earlier).teller().accept(clockPutBack);
        assertThat(course(clockPutBack.heard()))
                .as("nothing newer runs any more")
                .containsExactly("nominal lift", "done");
    }

    private static String turn(String body, int turn) {
        return body.replaceFirst("}$", ",\"turn\":" + turn + "}");
    }

    @Test
    void anotherTabStopsNothingAndWhoLeavesStopsHisOwn() throws InterruptedException {
        RigReading reading = example("sandpiper");
        List<Route> routes = routes(_ -> reading);
        String body = ask(reading, ALL, "si", "whole");
        var mine = new LinesHeard();
        Thread runs = started(stream(routes, "ask", TAB, body), mine);
        mine.await(line -> line.has("progress"));
        JsonNode far =
                mine.heard().stream()
                        .filter(line -> line.has("progress"))
                        .findFirst()
                        .orElseThrow();
        assertThat(far.at("/progress/total").intValue()).isPositive();

        var other = new LinesHeard();
        var otherTab = new Session(2, Optional.empty());
        stream(routes, "ask", otherTab, ask(reading, "[\"lift\"]", "si", "nominal"))
                .teller()
                .accept(other);
        assertThat(course(other.heard())).endsWith("done");
        assertThat(course(mine.heard())).doesNotContain("stopped", "done");

        mine.leave();
        runs.join();
        assertThat(course(mine.heard())).doesNotContain("whole balance", "done");
    }
}
