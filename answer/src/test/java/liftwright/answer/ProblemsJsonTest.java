package liftwright.answer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import org.junit.jupiter.api.Test;

class ProblemsJsonTest {

    @Test
    void everyCodeObeysTheSchemaAndNothingIsWrittenThatItLeavesOut() {
        List<Problem> problems = Stream.of(Problem.Code.values()).map(code -> about(code)).toList();
        assertThat(problems).isNotEmpty();
        String json = ProblemsJson.write("a\u001b.yaml", "sha256:0", false, problems, "0");
        assertThat(AnswerJsonTest.mistakes(json, ProblemsJson.schema())).isEmpty();
        assertThat(AnswerJsonTest.mistakes(json, AnswerJsonTest.closed(ProblemsJson.schema())))
                .isEmpty();
    }

    @Test
    void theSchemaSeesAMissingMemberAndAnUnknownCode() {
        var problem = List.of(about(Problem.Code.WRONG_UNIT));
        String json = ProblemsJson.write("a.yaml", "sha256:0", false, problem, "0");
        assertThat(AnswerJsonTest.mistakes(json.replace("\"line\":3,", ""), ProblemsJson.schema()))
                .isNotEmpty();
        assertThat(
                        AnswerJsonTest.mistakes(
                                json.replace("wrong-unit", "odd-unit"), ProblemsJson.schema()))
                .isNotEmpty();
    }

    private static Problem about(Problem.Code code) {
        var at = new Problem.Place("a.yaml", 3, 7, "fans/left");
        return new Problem(code, at, "that", "this", "");
    }
}
