package liftwright.learning.sound;

/**
 * One channel of sound.
 *
 * @param samples full scale ±1; not changed by anybody
 * @param rateHz samples in a second by the clock of what recorded, &gt; 0
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never shown
public record Waveform(float[] samples, double rateHz) {

    public Waveform {
        if (samples.length == 0 || !(rateHz > 0)) {
            throw new IllegalArgumentException("no sound");
        }
    }

    /** Length, s. */
    public double lengthS() {
        return samples.length / rateHz;
    }
}
