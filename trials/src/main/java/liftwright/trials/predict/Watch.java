package liftwright.trials.predict;

import java.util.Optional;
import liftwright.trials.Channel;

/**
 * One reading of a card.
 *
 * @param gauge what it is
 * @param part of what, in words
 * @param members numbers of the fans, packs or heat parts of which the worst is read
 * @param limit what must not be reached; empty where nothing limits it
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
record Watch(Gauge gauge, String part, int[] members, Optional<Limit> limit) {

    /**
     * @param si the limit
     * @param origin where it comes from
     */
    record Limit(double si, String origin) {}

    Channel channel() {
        return gauge.channel(part);
    }

    /** Address of its random numbers. */
    String stream() {
        return "card/" + channel().field() + "/" + part;
    }
}
