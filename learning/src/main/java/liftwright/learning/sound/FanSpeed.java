package liftwright.learning.sound;

import java.util.List;

/**
 * What a fan turned, as far as the sound tells.
 *
 * @param voice the fan
 * @param with fans from which it cannot be told apart, itself among them; itself alone where its
 *     line is its own
 * @param timesS when, by the clock of the recording, as sent out by the fan, s, rising
 * @param speedRadS rad/s; of several fans the middle of their lines
 * @param errorRadS 95 % of errors are smaller, rad/s
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never shown
public record FanSpeed(
        Voice voice, List<String> with, double[] timesS, double[] speedRadS, double[] errorRadS) {

    public FanSpeed {
        with = List.copyOf(with);
    }

    /** Whether its line is its own. */
    public boolean alone() {
        return with.size() == 1;
    }

    public int size() {
        return timesS.length;
    }
}
