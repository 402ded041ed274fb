package liftwright.app.bay;

import java.time.Duration;

/** Limits with one of them moved. */
final class Allowing {

    private Allowing() {}

    /** As many tries without a key as a table of them needs. */
    static Limits manyKnocks(Limits l) {
        return new Limits(
                l.requestsPerSecond(),
                l.requestsAtOnce(),
                10_000,
                10_000,
                l.requests(),
                l.streams(),
                l.bodyTime(),
                l.replyTime(),
                l.heartbeat());
    }

    static Limits rate(Limits l, double perSecond, double atOnce) {
        return new Limits(
                perSecond,
                atOnce,
                l.knocksPerSecond(),
                l.knocksAtOnce(),
                l.requests(),
                l.streams(),
                l.bodyTime(),
                l.replyTime(),
                l.heartbeat());
    }

    static Limits knocks(Limits l, double perSecond, double atOnce) {
        return new Limits(
                l.requestsPerSecond(),
                l.requestsAtOnce(),
                perSecond,
                atOnce,
                l.requests(),
                l.streams(),
                l.bodyTime(),
                l.replyTime(),
                l.heartbeat());
    }

    static Limits atOnce(Limits l, int requests, int streams) {
        return new Limits(
                l.requestsPerSecond(),
                l.requestsAtOnce(),
                l.knocksPerSecond(),
                l.knocksAtOnce(),
                requests,
                streams,
                l.bodyTime(),
                l.replyTime(),
                l.heartbeat());
    }

    static Limits times(Limits l, Duration body, Duration reply, Duration heartbeat) {
        return new Limits(
                l.requestsPerSecond(),
                l.requestsAtOnce(),
                l.knocksPerSecond(),
                l.knocksAtOnce(),
                l.requests(),
                l.streams(),
                body,
                reply,
                heartbeat);
    }
}
