/**
 * Many flights of one rig, each with every tolerance drawn: flown in any parts on any machines,
 * kept as text, put together again exactly, and read as an answer: how many go well, how far they
 * miss, what drives the misses, which were worst.
 */
@NullMarked
package liftwright.flight.disperse;

import org.jspecify.annotations.NullMarked;
