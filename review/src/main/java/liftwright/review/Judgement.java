package liftwright.review;

import java.util.List;
import liftwright.answer.Outcome;
import liftwright.quantity.Band;

/** What the draws say of one number against its demand. */
interface Judgement {

    /** What the band alone says. */
    Outcome byNumbers();

    /** After every downgrade. */
    Outcome outcome();

    /** The number at the declared values. */
    double nominal();

    Band band();

    /** Draws used. */
    int draws();

    /** Why the outcome is lesser than the numbers. */
    List<String> downgrades();

    Sample<?> sample();

    default boolean holds() {
        return outcome() == Outcome.HOLDS;
    }
}
