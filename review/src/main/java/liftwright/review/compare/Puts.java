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
import liftwright.rig.Rig;

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
                question(question, first.rig(), first.digest(), settings),
                question(question, second.rig(), second.digest(), settings),
                Math.min(draws(question), settings.firstDraws()));
    }

    private static int draws(String question) {
        return switch (question) {
            case "heat", "failures" -> DEAR_DRAWS;
            case "restraint" -> DEAREST_DRAWS;
            default -> liftwright.review.Stage.FIRST_DRAWS;
        };
    }

    /**
     * One question of one rig, as it is asked without options.
     *
     * @param question one of {@link #QUESTIONS}
     */
    public static Staged question(String question, Rig rig, String digest, Settings settings) {
        return switch (question) {
            case "lift" -> LiftQuestion.staged(rig, digest, settings);
            case "endurance" -> EnduranceQuestion.staged(rig, digest, new Task.Hover(), settings);
            case "balance" -> BalanceQuestion.staged(rig, digest, settings);
            case "heat" ->
                    HeatQuestion.staged(
                            rig, digest, HeatCase.of(HeatQuestion.demanded(rig)), settings);
            case "failures" -> FailuresQuestion.staged(rig, digest, FailureCase.quick(), settings);
            case "restraint" -> RestraintQuestion.staged(rig, digest, settings);
            default -> throw new IllegalArgumentException("no question " + question);
        };
    }
}
