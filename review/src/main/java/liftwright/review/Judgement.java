package liftwright.review;

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

    Sample sample();

    default boolean holds() {
        return outcome() == Outcome.HOLDS;
    }
}
