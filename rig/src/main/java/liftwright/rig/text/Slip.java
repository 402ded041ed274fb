package liftwright.rig.text;

/**
 * A syntax error.
 *
 * @param problem what to say
 * @param spoiled offset whose line cannot be read
 * @param noticed offset at which the reader gave up
 */
record Slip(Located problem, int spoiled, int noticed) {}
