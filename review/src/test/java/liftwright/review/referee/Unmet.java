package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;

import liftwright.answer.Outcome;
import liftwright.numerics.Work;
import liftwright.review.Judged;
import liftwright.review.Stage;
import liftwright.review.Staged;

/**
 * That a question does not hold. Where its band reaches below what is asked, nothing can make it
 * hold, and it is not asked as well which doubt would tell most: that takes longer than all draws.
 */
final class Unmet {

    private Unmet() {}

    /**
     * @param told what is said of it where it does hold
     */
    static void check(Staged question, String told) {
        Judged judged = question.judged(Work.quiet()).orElseThrow();
        if (judged.band().low() < judged.demand()) {
            return;
        }
        assertThat(question.answer(Stage.WHOLE, Work.quiet()).orElseThrow().verdict().outcome())
                .as(told)
                .isNotEqualTo(Outcome.HOLDS);
    }
}
