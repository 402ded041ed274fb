package liftwright.review.compare;

import java.util.List;
import liftwright.review.BalanceQuestion;
import liftwright.review.EnduranceQuestion;
import liftwright.review.FailureCase;
import liftwright.review.FailuresQuestion;
import liftwright.review.HeatCase;
import liftwright.review.HeatQuestion;
import liftwright.review.LiftQuestion;
import liftwright.review.RestraintQuestion;
import liftwright.review.Settings;
import liftwright.review.Staged;
import liftwright.review.Task;

/** The questions that a rig file alone answers, put to two revisions. */
public final class Puts {

    /** Those whose numbers are dear get as many draws as make an end of a band, and no more. */
    private static final int DEAR_DRAWS = 64;

    /** Of what holds a rig each draw takes about a second. */
    private static final int DEAREST_DRAWS = 40;

    /** As they are asked: what takes longest comes last. */
    public static final List<String> QUESTIONS =
            List.of("lift", "endurance", "balance", "heat", "failures", "restraint");

    private Puts() {}

    /**
     * One question.
     *
     * @param question one of {@link #QUESTIONS}
     * @param settings without remedies: what would mend either is asked of it alone
     */
    public static Put of(String question, Revision first, Revision second, Settings settings) {
        return new Put(
                question,
                staged(question, first, settings),
                staged(question, second, settings),
                Math.min(draws(question), settings.firstDraws()));
    }

    private static int draws(String question) {
        return switch (question) {
            case "heat", "failures" -> DEAR_DRAWS;
            case "restraint" -> DEAREST_DRAWS;
            default -> liftwright.review.Stage.FIRST_DRAWS;
        };
    }

    private static Staged staged(String question, Revision of, Settings settings) {
        return switch (question) {
            case "lift" -> LiftQuestion.staged(of.rig(), of.digest(), settings);
            case "endurance" ->
                    EnduranceQuestion.staged(of.rig(), of.digest(), new Task.Hover(), settings);
            case "balance" -> BalanceQuestion.staged(of.rig(), of.digest(), settings);
            case "heat" ->
                    HeatQuestion.staged(
                            of.rig(),
                            of.digest(),
                            HeatCase.of(HeatQuestion.demanded(of.rig())),
                            settings);
            case "failures" ->
                    FailuresQuestion.staged(of.rig(), of.digest(), FailureCase.quick(), settings);
            case "restraint" -> RestraintQuestion.staged(of.rig(), of.digest(), settings);
            default -> throw new IllegalArgumentException("no question " + question);
        };
    }
}
