/**
 * Profiles: what a rig shall fly, in plain words, from making live to making dead, with the limits
 * it is held to, what ends it early, and what goes wrong on the way. Read with the machinery of the
 * rig file, so that every problem has a line and a column.
 */
@NullMarked
package liftwright.flight.profile;

import org.jspecify.annotations.NullMarked;
