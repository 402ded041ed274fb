/**
 * What a failure does to a rig: outcomes, their severity and likelihood, and the risk that the two
 * make in the matrix in force. Of one fault at a time and without draws; the question itself, which
 * judges over draws, stands in {@code review}.
 */
@NullMarked
package liftwright.review.failures;

import org.jspecify.annotations.NullMarked;
