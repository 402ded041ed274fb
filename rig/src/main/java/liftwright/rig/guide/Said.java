package liftwright.rig.guide;

/**
 * What a field holds: the answer, or the placeholder until there is one.
 *
 * @param text as it goes into the file
 * @param answered whether somebody answered
 * @param value what it means; that of the placeholder where the answer is wrong
 */
record Said<T>(String text, boolean answered, T value) {}
