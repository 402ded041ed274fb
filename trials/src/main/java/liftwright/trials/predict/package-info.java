/**
 * What the instruments of a card will show, with bands that hold 95 % of what is read, and where to
 * stop. A run on the heated plant is drawn many times from the declared doubt; instrument error and
 * what the model leaves out are drawn beside it.
 */
@NullMarked
package liftwright.trials.predict;

import org.jspecify.annotations.NullMarked;
