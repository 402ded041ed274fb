/**
 * A second Liftwright for the lift question, small and slow, that shares no code with the first: it
 * draws rigs at random, writes them as rig files, and computes their lift by bisection in rotor
 * speed with a generator of its own.
 */
@NullMarked
package liftwright.review.referee;

import org.jspecify.annotations.NullMarked;
