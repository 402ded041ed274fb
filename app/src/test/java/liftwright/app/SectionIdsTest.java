package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import liftwright.answer.Answer;
import liftwright.answer.Section;
import liftwright.numerics.Work;
import liftwright.review.FailureCase;
import liftwright.review.FailuresQuestion;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.RestraintQuestion;
import liftwright.review.Settings;
import liftwright.rig.Rig;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The sections that the page about answers names are those that the answers of the examples have.
 */
class SectionIdsTest {

    private static final Path PAGE = Path.of("..", "docs", "reference", "answers.md");
    private static final Settings SETTINGS = new Settings(11, 128, 128, 2, false);

    /** An id, and in brackets what kind it is where it is no table. */
    private static final Pattern NAMED =
            Pattern.compile("`([a-z][a-z-]*)`(?: \\((?:an? )?`([a-z]+)`\\))?");

    private static List<String> listed(String question) throws IOException {
        String row =
                Files.readAllLines(PAGE).stream()
                        .filter(line -> line.startsWith("| **Sections of " + question + "**"))
                        .findFirst()
                        .orElseThrow();
        return NAMED.matcher(row)
                .results()
                .map(
                        found ->
                                found.group(1)
                                        + ", "
                                        + (found.group(2) == null ? "table" : found.group(2)))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"heat", "failures", "restraint"})
    void thePageNamesThoseThatAreThere(String question) throws IOException {
        List<String> listed = listed(question);
        List<String> found = new ArrayList<>();
        for (String example : List.of("mudlark", "curlew", "sandpiper")) {
            List<String> own = new ArrayList<>();
            for (Section section : answer(question, HeatExamplesTest.rig(example + "/rig.yaml"))) {
                own.add(section.id() + ", " + kind(section));
            }
            assertThat(listed).as(example + " has them in this order").containsSubsequence(own);
            found.addAll(own);
        }
        assertThat(listed).doesNotHaveDuplicates().isNotEmpty().allMatch(found::contains);
    }

    private static List<Section> answer(String question, Rig rig) {
        Answer answer =
                switch (question) {
                    case "heat" ->
                            HeatQuestion.ask(
                                            rig,
                                            "",
                                            HeatCase.of(HeatQuestion.demanded(rig)),
                                            SETTINGS,
                                            Work.quiet())
                                    .orElseThrow();
                    case "failures" ->
                            FailuresQuestion.ask(
                                            rig,
                                            "",
                                            new FailureCase(3, true, true),
                                            SETTINGS,
                                            Work.quiet())
                                    .orElseThrow();
                    default -> RestraintQuestion.ask(rig, "", SETTINGS, Work.quiet()).orElseThrow();
                };
        return answer.sections();
    }

    private static String kind(Section section) {
        return switch (section) {
            case Section.Table _ -> "table";
            case Section.Matrix _ -> "matrix";
            case Section.Cases _ -> "cases";
            case Section.Plot _ -> "plot";
            case Section.Timeline _ -> "timeline";
            case Section.Shares _ -> "shares";
            case Section.Playback _ -> "playback";
            case Section.Elevation _ -> "elevation";
            case Section.Waterfall _ -> "waterfall";
            case Section.Drawing _ -> "drawing";
            case Section.Card _ -> "card";
            case Section.Strips _ -> "strips";
        };
    }
}
