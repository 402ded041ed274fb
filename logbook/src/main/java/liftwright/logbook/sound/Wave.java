package liftwright.logbook.sound;

import java.util.List;

/**
 * A recording as it lies in its file.
 *
 * @param channels one array each, all of one length, full scale ±1; at least one sample
 * @param rateHz samples of a channel in a second
 * @param coding in words: {@code 16 bit}
 * @param notes what is odd about the file though it could be read, sentences for the user
 */
public record Wave(List<float[]> channels, int rateHz, String coding, List<String> notes) {

    public Wave {
        channels = List.copyOf(channels);
        notes = List.copyOf(notes);
    }

    /** Samples of each channel. */
    public int samples() {
        return channels.getFirst().length;
    }

    /** Length, s. */
    public double lengthS() {
        return (double) samples() / rateHz;
    }

    /**
     * Number of the channel to listen to: that with the fewest samples at full scale, the first
     * among equals. Channels are never mixed, since a sound that reaches two microphones at
     * different times would cancel itself at some pitches.
     */
    public int best() {
        int best = 0;
        for (int c = 1; c < channels.size(); c++) {
            if (full(channels.get(c)) < full(channels.get(best))) {
                best = c;
            }
        }
        return best;
    }

    private static int full(float[] channel) {
        int count = 0;
        for (float sample : channel) {
            if (Math.abs(sample) >= 0.999f) {
                count++;
            }
        }
        return count;
    }
}
