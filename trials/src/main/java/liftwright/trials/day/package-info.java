/**
 * What can be tested today: the day as it is found, written by hand in a small file, and the sheet
 * that says which cards are allowed on it, in which order, and when to stop.
 */
@NullMarked
package liftwright.trials.day;

import org.jspecify.annotations.NullMarked;
