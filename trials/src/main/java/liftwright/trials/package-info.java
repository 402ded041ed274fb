/**
 * How a rig is tested: a programme of cards from the first spin of one fan to free flight, each
 * with loads, distances and abort values; gates that open a card when what it rests on is proved on
 * this very build; proofs of the kills; a sheet for one day.
 */
@NullMarked
package liftwright.trials;

import org.jspecify.annotations.NullMarked;
