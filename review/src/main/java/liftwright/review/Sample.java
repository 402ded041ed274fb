package liftwright.review;

import liftwright.numerics.Work;

/**
 * A judged number over the draws of a rig's declared doubt. Draws are nested: the first 256 of a
 * sample of 16,384 are a sample of 256, and the same for every rig that shares the inputs, which is
 * what remedies are judged on.
 */
interface Sample {

    /**
     * Makes the sample {@code target} draws long.
     *
     * @return false when stopped before that; the draws complete by then are kept
     */
    boolean extendTo(int target, Work work);

    /** The judged number in the first {@code draws} draws, in their order. */
    double[] values(int draws);

    /** How many of the first {@code draws} draws have no operating point. */
    int failed(int draws);
}
