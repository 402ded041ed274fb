package liftwright.app;

import static liftwright.app.Shown.si;
import static liftwright.app.Shown.table;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.answer.AnswerJson;
import liftwright.answer.AnswerSchema;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.review.BalanceQuestion;
import liftwright.review.FailureCase;
import liftwright.review.FailuresAnswer;
import liftwright.review.FailuresQuestion;
import liftwright.review.Search;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.failures.FaultFate;
import liftwright.rig.Change;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the answer of failures says of the examples agrees with itself. */
class FailuresExamplesTest {

    private static final Settings SETTINGS = new Settings(11, 128, 128, 2, false);

    static FailuresAnswer ask(Rig rig, FailureCase asked, Settings settings) {
        return FailuresQuestion.ask(rig, "test", asked, settings, Work.quiet()).orElseThrow();
    }

    static Section.Matrix matrix(FailuresAnswer answer) {
        return answer.sections().stream()
                .filter(section -> section.id().equals("failures"))
                .map(Section.Matrix.class::cast)
                .findFirst()
                .orElseThrow();
    }

    static Value cell(Section.Matrix.Line line, String field) {
        return line.cells().stream()
                .map(Section.Matrix.Cell::value)
                .filter(value -> value.field().equals(field))
                .findFirst()
                .orElseThrow();
    }

    private static String words(Section.Matrix.Line line, String field) {
        return switch (cell(line, field).figure()) {
            case Value.Figure.Words(String text) -> text;
            case Value.Figure other -> throw new AssertionError(other);
        };
    }

    @ParameterizedTest
    @ValueSource(strings = {"mudlark", "curlew", "sandpiper"})
    void theAnswerAgreesWithItself(String name) throws IOException {
        Rig rig = HeatExamplesTest.rig(name + "/rig.yaml");
        FailuresAnswer answer = ask(rig, new FailureCase(3, false, false), SETTINGS);
        assertThat(answer.evidence().checks())
                .hasSize(3)
                .allMatch(check -> check.residual() <= check.allowed());

        // The judged number is the least margin of all lines; the least there is, is told in words.
        Section.Matrix matrix = matrix(answer);
        double least =
                matrix.lines().stream()
                        .mapToDouble(line -> si(cell(line, "fault-margin")))
                        .min()
                        .orElseThrow();
        double judged =
                answer.verdict().sentence().parts().stream()
                        .filter(Sentence.Part.Amount.class::isInstance)
                        .mapToDouble(part -> ((Sentence.Part.Amount) part).si())
                        .findFirst()
                        .orElse(FaultFate.WORST);
        assertThat(judged).isCloseTo(least, within(1e-9));

        // What is not borne stands first, and is a single point; nothing else is.
        List<String> verdicts =
                matrix.lines().stream().map(line -> words(line, "fault-verdict")).toList();
        long notBorne =
                verdicts.stream()
                        .takeWhile(word -> word.equals(Outcome.DOES_NOT_HOLD.label()))
                        .count();
        assertThat(verdicts.stream().filter(Outcome.DOES_NOT_HOLD.label()::equals).count())
                .isEqualTo(notBorne);
        long open = verdicts.stream().filter(Outcome.CANNOT_BE_TOLD.label()::equals).count();
        assertThat(table(answer, "single-points").rows()).hasSize((int) (notBorne + open));
        assertThat(answer.verdict().outcome() == Outcome.HOLDS).isEqualTo(notBorne + open == 0);

        // Every part of the wiring, every fan and every pack is in one line or another.
        String all =
                matrix.lines().stream()
                        .map(line -> line.part() + " " + line.members())
                        .collect(Collectors.joining("\n"));
        rig.fans().forEach(fan -> assertThat(all).contains(fan.id().text()));
        rig.packs().forEach(pack -> assertThat(all).contains(pack.id().text()));
        rig.wiring()
                .chains()
                .forEach(
                        chain ->
                                chain.elements()
                                        .forEach(e -> assertThat(all).contains(e.id().text())));

        var schema =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(AnswerSchema.text("failures"));
        assertThat(schema.validate(AnswerJson.write(answer, name, "0"), InputFormat.JSON))
                .isEmpty();
    }

    /** What the other pairing is said to be worth comes true once the file is changed so. */
    @Test
    void mudlarkLosesEachPackUnderTwoPairings() throws IOException {
        Rig rig = HeatExamplesTest.rig("mudlark/rig.yaml");
        FailuresAnswer answer = ask(rig, new FailureCase(0, false, false), SETTINGS);
        List<List<Value>> rows = table(answer, "pack-pairings").rows();
        assertThat(rows).hasSize(rig.packs().size());
        RigReading reading =
                RigReading.read(
                        "rig.yaml",
                        Files.readAllBytes(Path.of("..", "examples", "mudlark", "rig.yaml")),
                        new Folder(Path.of("..", "examples", "mudlark")));
        List<Change> changes =
                BalanceQuestion.ask(rig, "test", SETTINGS, Set.of(Search.PAIRING), Work.quiet())
                        .orElseThrow()
                        .remedies()
                        .getLast()
                        .changes();
        Rig other =
                switch (reading.with(changes)) {
                    case RigReading.Edit.Changed(var changed, var _) -> changed.rig().orElseThrow();
                    case RigReading.Edit.Refused(var change, var reason) ->
                            throw new AssertionError(change + ": " + reason);
                };
        Section.Matrix before = nominal(rig);
        Section.Matrix after = nominal(other);
        for (List<Value> row : rows) {
            String pack = ((Value.Figure.Words) row.getFirst().figure()).text();
            assertThat(si(row.get(2))).isCloseTo(margin(before, pack), within(1e-9));
            assertThat(si(row.get(4))).isCloseTo(margin(after, pack), within(1e-9));
        }
        assertThat(rows.stream().mapToDouble(row -> si(row.get(4))).min().orElseThrow())
                .isGreaterThan(
                        rows.stream().mapToDouble(row -> si(row.get(2))).min().orElseThrow());
    }

    private static Section.Matrix nominal(Rig rig) {
        return matrix(
                (FailuresAnswer)
                        FailuresQuestion.staged(rig, "test", FailureCase.quick(), SETTINGS)
                                .answer(Stage.NOMINAL, Work.quiet())
                                .orElseThrow());
    }

    private static double margin(Section.Matrix matrix, String pack) {
        return matrix.lines().stream()
                .filter(line -> line.part().equals(pack) && line.what().equals("it gives nothing"))
                .mapToDouble(line -> si(cell(line, "fault-margin")))
                .findFirst()
                .orElseThrow();
    }
}
