/** What is printed on a card, in words and tables. */
@NullMarked
package liftwright.trials.words;

import org.jspecify.annotations.NullMarked;
