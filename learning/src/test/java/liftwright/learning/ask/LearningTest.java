package liftwright.learning.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.learning.LearningAnswer;
import liftwright.learning.truth.SimulatedTest;
import liftwright.numerics.Work;
import liftwright.review.Settings;
import org.junit.jupiter.api.Test;

/** Answers about recordings of a simulator that shares no line with the product. */
class LearningTest {

    private static final Settings SETTINGS = new Settings(7, 64, 64, 2, false);

    private static LearningAnswer ask(SimulatedTest test) {
        return Learning.ask(
                        new LearningCase(
                                test.rig(),
                                "",
                                "of a simulator",
                                test.recording(),
                                Optional.empty()),
                        SETTINGS,
                        Work.quiet())
                .orElseThrow();
    }

    private static String words(Sentence sentence) {
        StringBuilder told = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            told.append(
                    switch (part) {
                        case Sentence.Part.Words words -> words.text();
                        case Sentence.Part.Amount amount -> amount.si();
                    });
        }
        return told.toString();
    }

    private static double si(Value value) {
        return value.figure() instanceof Value.Figure.Amount(double si, var _) ? si : Double.NaN;
    }

    @Test
    void saysWhatIsMissingAndWhere() {
        int seen = 0;
        int near = 0;
        for (long seed = 400; seed < 412; seed++) {
            SimulatedTest test = SimulatedTest.draw(seed, SimulatedTest.Sort.ONE, 4);
            LearningAnswer answer = ask(test);
            assertThat(answer.sections())
                    .extracting(Section::id)
                    .containsSubsequence("causes", "strips", "channels");
            for (Section section : answer.sections()) {
                if (section instanceof Section.Waterfall fall) {
                    double sum = si(fall.start().value());
                    for (Section.Waterfall.Step step : fall.steps()) {
                        sum += si(step.value());
                    }
                    assertThat(sum)
                            .isCloseTo(
                                    si(fall.end().value()),
                                    org.assertj.core.data.Offset.offset(1e-6 * Math.abs(sum)));
                }
            }
            if (answer.verdict().outcome() == Outcome.DOES_NOT_HOLD) {
                seen++;
                String told = words(answer.verdict().sentence());
                near += told.contains("missing") || told.contains("more than") ? 1 : 0;
            }
            String json = AnswerJson.write(answer, "Random", "0");
            assertThat(json).contains("\"strips\"").doesNotContain("NaN");
        }
        assertThat(seen).as("logs with a cause that are not met").isPositive();
        assertThat(near).isEqualTo(seen);
    }
}
