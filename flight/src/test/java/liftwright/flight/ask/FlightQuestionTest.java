package liftwright.flight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.flight.Examples;
import liftwright.flight.FlightAnswer;
import liftwright.flight.profile.Profile;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import org.junit.jupiter.api.Test;

/** What the answer tells, of rigs whose loops are granted, refused, and of one without any. */
class FlightQuestionTest {

    private static final Settings SETTINGS = Settings.standard().withoutRemedies();

    private static final String SHORT =
            """
            liftwright profile: 1
            start: {on: held, height: 1.5 m}
            steps:
              - hold: 3 s
            wind: {mean: 0 m/s, rough: no}
            """;

    private static List<String> ids(Answer answer) {
        return answer.sections().stream().map(Section::id).toList();
    }

    private static FlightQuestion of(String example, String text) {
        Rig rig = Examples.rig(example);
        return FlightQuestion.staged(rig, "sha256:0", Examples.profile(rig, text), SETTINGS);
    }

    @Test
    void theAnswerTellsWhatWasFlown() {
        FlightQuestion question = of("curlew", SHORT);
        FlightAnswer loops = question.answer(Stage.NOMINAL, Work.quiet()).orElseThrow();
        assertThat(loops.verdict().outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(ids(loops)).containsExactly("loops");
        assertThat(question.shown()).isEmpty();

        FlightAnswer one = question.answer(Stage.BANDED, Work.quiet()).orElseThrow();
        assertThat(one.verdict().outcome()).isEqualTo(Outcome.NOT_JUDGED);
        assertThat(ids(one))
                .containsExactly("flight-limits", "loops", "flight-strips", "flight-events");
        assertThat(question.shown().orElseThrow().number()).isZero();
        assertThat(AnswerJson.write(one, "Curlew", "0")).contains("\"flight-strips\"");
        String csv = SeriesCsv.of(question.shown().orElseThrow().series());
        assertThat(csv.lines().findFirst().orElseThrow())
                .startsWith("time [s],forward [m],right [m],height [m]");
        assertThat(csv.lines().count())
                .isEqualTo(1 + question.shown().orElseThrow().series().timesS().length);
    }

    @Test
    void aWholeAnswerRestsOnDrawnFlightsAndOnHalfTheStep() {
        FlightAnswer whole = of("curlew", SHORT).answer(Stage.WHOLE, Work.quiet()).orElseThrow();
        assertThat(whole.evidence().draws()).isEqualTo(FlightQuestion.DRAWN);
        assertThat(whole.evidence().checks()).hasSize(1);
        assertThat(whole.evidence().checks().getFirst().passed())
                .as("%s", whole.evidence().checks())
                .isTrue();
        assertThat(whole.verdict().outcome()).isEqualTo(Outcome.HOLDS);
        assertThat(ids(whole)).contains("losses-flown");
        assertThat(whole.findings())
                .anyMatch(
                        found ->
                                found.code().equals("loss-flown-worse")
                                        && found.sentence().toString().contains("swapped"));
    }

    /** The site's wind goes so fast across lightly loaded fans that their law ends. */
    @Test
    void whereTheLawsEndTheVerdictIsLeftOpen() {
        String windy = SHORT.replace("wind: {mean: 0 m/s, rough: no}", "wind: {mean: 8 m/s}");
        FlightAnswer whole = of("curlew", windy).answer(Stage.WHOLE, Work.quiet()).orElseThrow();
        assertThat(whole.verdict().outcome()).isNotEqualTo(Outcome.HOLDS);
        assertThat(whole.verdict().downgrades()).anyMatch(told -> told.contains("lip stalls"));
    }

    @Test
    void whereNoWindIsNamedThatOfTheSiteBlows() {
        String open = SHORT.replace("wind: {mean: 0 m/s, rough: no}", "");
        FlightAnswer one = of("curlew", open).answer(Stage.BANDED, Work.quiet()).orElseThrow();
        assertThat(one.evidence().assumptions())
                .anyMatch(
                        told ->
                                told.path().equals("wind")
                                        && told.value().contains("mean 3.00 m/s"));
    }

    @Test
    void refusedLoopsAreNotFlown() {
        FlightQuestion question = of("sandpiper", SHORT);
        FlightAnswer refused = question.answer(Stage.WHOLE, Work.quiet()).orElseThrow();
        assertThat(refused.verdict().outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(refused.findings().getFirst().code()).isEqualTo("loops-refused");
        assertThat(refused.findings()).anyMatch(f -> f.code().equals("loops-would-need"));
        assertThat(question.shown()).isEmpty();
    }

    @Test
    void withoutAComputerItRestsOnThePerson() {
        FlightQuestion question = of("mudlark", Examples.profileText("mudlark", "hop"));
        FlightAnswer answer = question.answer(Stage.WHOLE, Work.quiet()).orElseThrow();
        assertThat(answer.verdict().outcome()).isEqualTo(Outcome.CANNOT_BE_TOLD);
        assertThat(question.shown()).isEmpty();
    }

    @Test
    void theUsualProfileIsOne() {
        assertThat(Profile.usual().steps()).hasSize(5);
        assertThat(Profile.usual().defaults()).isNotEmpty();
    }
}
