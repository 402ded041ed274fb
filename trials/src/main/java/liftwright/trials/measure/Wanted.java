package liftwright.trials.measure;

import liftwright.quantity.Measure;
import liftwright.trials.Channel;

/**
 * A reading that is to be predicted.
 *
 * @param channel what is read, of what, with what
 * @param leftOut what the law behind it leaves out
 */
record Wanted(Channel channel, Doubts.LeftOut leftOut) {

    /**
     * @param what is read, in words
     */
    static Wanted of(
            String what, Measure measure, Channel.Instrument instrument, Doubts.LeftOut leftOut) {
        return new Wanted(
                new Channel(ReadingField.of(measure), what, measure, instrument), leftOut);
    }

    /** Of a law that leaves out nothing that counts. */
    static Wanted of(String what, Measure measure, Channel.Instrument instrument) {
        return of(what, measure, instrument, Doubts.LeftOut.NOTHING);
    }
}
