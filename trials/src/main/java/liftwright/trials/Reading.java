package liftwright.trials;

import liftwright.quantity.Band;

/**
 * What a channel should show at the end of a step.
 *
 * @param channel what is read
 * @param expectedSi at the declared values, SI
 * @param band 95 % of what the instrument should show, its own error and what the model leaves out
 *     among the doubts
 */
public record Reading(Channel channel, double expectedSi, Band band) {}
