package liftwright.review.compare;

/**
 * Where a figure stands in an answer.
 *
 * @param section id of the section
 * @param row words that begin its row; empty where it has none
 * @param column field of its column
 * @param nth of those that have all that in common, from 0
 */
record Place(String section, String row, String column, int nth) {}
