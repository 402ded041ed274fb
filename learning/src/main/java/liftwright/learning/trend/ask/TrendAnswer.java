package liftwright.learning.trend.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.learning.LearningAnswer;
import liftwright.learning.trend.PartTrend;
import liftwright.learning.trend.TrendSearch;
import liftwright.learning.trend.Trends;

/** "Which part is dying?" over the tests of a logbook. */
public final class TrendAnswer {

    private TrendAnswer() {}

    /** Answers it. */
    public static LearningAnswer of(TrendCase about) {
        List<PartTrend> trends =
                about.tests().size() < Trends.LEAST ? List.of() : TrendSearch.of(about.tests());
        List<PartTrend> claimed = trends.stream().filter(one -> one.told().isClaim()).toList();
        List<Finding> findings = new ArrayList<>();
        claimed.forEach(one -> findings.add(finding(one)));
        about.left()
                .forEach(
                        words ->
                                findings.add(
                                        Finding.of(
                                                Severity.NOTES,
                                                "test-left-out",
                                                Sentence.words(words),
                                                "it tells nothing of how parts change")));
        List<Section> sections = new ArrayList<>();
        if (!trends.isEmpty()) {
            sections.add(TrendTables.parts(about.tests(), trends));
        }
        claimed.forEach(one -> sections.add(TrendTables.tests(one, claimed.indexOf(one) + 1)));
        return new LearningAnswer(
                new Verdict(
                        outcome(about, claimed),
                        Sentence.words(sentence(about, trends, claimed)),
                        Optional.empty(),
                        List.of()),
                findings,
                sections,
                evidence(about));
    }

    private static Outcome outcome(TrendCase about, List<PartTrend> claimed) {
        if (about.tests().size() < Trends.LEAST) {
            return Outcome.CANNOT_BE_TOLD;
        }
        return claimed.stream().anyMatch(one -> one.told() == PartTrend.Told.WORSE)
                ? Outcome.DOES_NOT_HOLD
                : Outcome.HOLDS;
    }

    private static String sentence(
            TrendCase about, List<PartTrend> trends, List<PartTrend> claimed) {
        int tests = about.tests().size();
        if (tests < Trends.LEAST) {
            return "a trend needs "
                    + Trends.LEAST
                    + " tests that tell of parts; "
                    + about.folder()
                    + " has "
                    + tests;
        }
        String over =
                " over "
                        + tests
                        + " tests from "
                        + about.tests().getFirst().on()
                        + " to "
                        + about.tests().getLast().on();
        if (claimed.isEmpty()) {
            return "none of "
                    + trends.size()
                    + " things that parts wear by is seen to change"
                    + over
                    + ": no slope is clear of nought";
        }
        return claimed.stream()
                        .map(one -> TrendTables.name(one) + " " + one.told().words())
                        .collect(Collectors.joining("; "))
                + over;
    }

    private static Finding finding(PartTrend one) {
        Sentence sentence =
                Sentence.words(TrendTables.name(one) + " " + one.told().words() + ": ")
                        .then(TrendTables.change(one));
        String when = TrendTables.meets(one);
        if (!when.isEmpty()) {
            sentence = sentence.then("; " + when);
        }
        if (!one.asWell().isEmpty()) {
            sentence =
                    sentence.then(
                            "; the same readings are explained as well by "
                                    + one.asWell().stream()
                                            .limit(3)
                                            .map(part -> part.cause().words())
                                            .collect(Collectors.joining(", "))
                                    + (one.asWell().size() > 3
                                            ? " and " + (one.asWell().size() - 3) + " more"
                                            : ""));
        }
        return Finding.of(
                        one.told() == PartTrend.Told.WORSE ? Severity.WARNS : Severity.NOTES,
                        "part-changes",
                        sentence,
                        "a line through what each test finds, all tests taken together")
                .about(
                        one.part().cause().part().isEmpty()
                                ? Optional.empty()
                                : Optional.of(one.part().cause().part()));
    }

    private static Evidence evidence(TrendCase about) {
        return new Evidence(
                about.rigDigest(),
                "none",
                about.seed(),
                0,
                Sentence.words(
                        "tests "
                                + about.tests().stream()
                                        .map(test -> test.name())
                                        .collect(Collectors.joining(", "))
                                + ", each on the rig as it was declared then"),
                List.of(
                        new Evidence.Law(
                                "a part changes along a straight line",
                                "least squares of all tests together; random effects after"
                                        + " DerSimonian and Laird [DERSIMONIAN86]",
                                "wear that is even; a part mended begins anew",
                                true),
                        new Evidence.Law(
                                "one logbook in twenty of a rig that does not change names a part",
                                "level divided among all parts (Bonferroni)",
                                "errors that differ from test to test as assumed for instruments"
                                        + " and model",
                                true)),
                List.of(),
                List.of());
    }
}
