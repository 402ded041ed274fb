/**
 * The SQL engine, in a process of its own: what a log or a statement makes of it cannot reach the
 * program, the folders around the logbook, or the network.
 */
@NullMarked
package liftwright.logbook.engine;

import org.jspecify.annotations.NullMarked;
