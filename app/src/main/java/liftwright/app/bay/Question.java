package liftwright.app.bay;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
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

/** What the page can ask of a rig. */
enum Question {
    LIFT,
    ENDURANCE,
    HEAT,
    BALANCE,
    FAILURES,
    RESTRAINT,
    /** Flies a profile from beside the rig file: {@link Profiles}. */
    FLIGHT,
    /** Rests on what is on record and on the answers to the others: {@link StagedTrials}. */
    TRIALS,
    /** Rests on the logbook beside the rig file: {@link StagedLearning}. */
    LEARNING;

    /** Those that a rig file alone answers. */
    static final List<Question> OF_REVIEW =
            Stream.of(values()).filter(question -> !question.isOnRecord()).toList();

    /** As the page calls it, and as an answer does. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The question that a word means.
     *
     * @throws FaultException where it means none
     */
    static Question of(String word) {
        for (Question question : values()) {
            if (question.word().equals(word)) {
                return question;
            }
        }
        throw FaultException.badRequest("There is no such question.");
    }

    /** Whether more than the rig file is needed. */
    boolean isOnRecord() {
        return this == FLIGHT || this == TRIALS || this == LEARNING;
    }

    /** Whether its bands keep a reader waiting. */
    boolean takesLong() {
        return this == HEAT || this == FAILURES || this == RESTRAINT || this == FLIGHT;
    }

    /** Whether it is computed, and not gathered from what others answered or tests taught. */
    boolean restsOnNoOther() {
        return this != TRIALS && this != LEARNING;
    }

    /**
     * Asked of a rig, as the command line asks it without options.
     *
     * @throws IllegalArgumentException where the rig file alone does not answer it
     */
    Staged staged(Rig rig, String digest, Settings settings) {
        return switch (this) {
            case LIFT -> LiftQuestion.staged(rig, digest, settings);
            case ENDURANCE -> EnduranceQuestion.staged(rig, digest, new Task.Hover(), settings);
            case HEAT ->
                    HeatQuestion.staged(
                            rig, digest, HeatCase.of(HeatQuestion.demanded(rig)), settings);
            case BALANCE -> BalanceQuestion.staged(rig, digest, settings);
            case FAILURES -> FailuresQuestion.staged(rig, digest, FailureCase.usual(), settings);
            case RESTRAINT -> RestraintQuestion.staged(rig, digest, settings);
            case FLIGHT, TRIALS, LEARNING ->
                    throw new IllegalArgumentException("no question of a rig file alone");
        };
    }

    /** Asked as one of all, as the command line does: without what takes long. */
    Staged amongAll(Rig rig, String digest, Settings settings) {
        return this == FAILURES
                ? FailuresQuestion.staged(rig, digest, FailureCase.quick(), settings)
                : staged(rig, digest, settings);
    }
}
