package liftwright.learning.sound;

/**
 * A line in one window.
 *
 * @param ratio of its speed to the reference
 * @param errorRatio standard deviation of the ratio from noise alone
 * @param score evidence over noise, summed over harmonics, nepers of power
 * @param level power of its strongest harmonic over noise, nepers
 */
record Peak(double ratio, double errorRatio, double score, double level) {}
