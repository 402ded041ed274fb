package liftwright.app.bay;

import java.time.Duration;

/**
 * How much, how often and how long.
 *
 * @param requestsPerSecond of all who ask; the page asks once a frame while something is dragged
 * @param requestsAtOnce after a rest
 * @param knocksPerSecond of those who know no key: they may try slowly
 * @param knocksAtOnce after a rest
 * @param requests being answered at one time
 * @param streams of these
 * @param bodyTime until a body must be there
 * @param replyTime until a reply, or a line of a stream, must be taken
 * @param heartbeat pause after which a stream says that it still is one
 */
record Limits(
        double requestsPerSecond,
        double requestsAtOnce,
        double knocksPerSecond,
        double knocksAtOnce,
        int requests,
        int streams,
        Duration bodyTime,
        Duration replyTime,
        Duration heartbeat) {

    /** What the program runs with. */
    static final Limits STANDARD =
            new Limits(
                    400,
                    800,
                    2,
                    40,
                    48,
                    12,
                    Duration.ofSeconds(10),
                    Duration.ofSeconds(20),
                    Duration.ofSeconds(2));
}
