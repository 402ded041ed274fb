package liftwright.review.compare;

import liftwright.review.Staged;

/**
 * One question put to both revisions, under the same conditions and with the same draws.
 *
 * @param question in one word
 * @param figureDraws draws in which every figure is computed on both; the judged number has as many
 *     as its answer
 */
public record Put(String question, Staged before, Staged after, int figureDraws) {}
