package liftwright.flight.run;

import java.util.List;

/**
 * Thinned records of a flight, one row a moment. Angles are as read: roll, pitch, heading.
 *
 * @param timesS rising, s
 * @param channels one each
 */
@SuppressWarnings("ArrayRecordComponent") // handed through, never compared
public record FlightSeries(double[] timesS, List<Channel> channels) {

    public FlightSeries {
        channels = List.copyOf(channels);
    }

    /**
     * @param kind what it is
     * @param values SI, one a moment, finite
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    public record Channel(Kind kind, double[] values) {}

    /** What is recorded. */
    public enum Kind {
        FORWARD("forward", "m"),
        RIGHT("right", "m"),
        HEIGHT("height", "m"),
        WANTED_FORWARD("wanted forward", "m"),
        WANTED_RIGHT("wanted right", "m"),
        WANTED_HEIGHT("wanted height", "m"),
        TILT("tilt", "rad"),
        ROLL("roll", "rad"),
        PITCH("pitch", "rad"),
        HEADING("heading", "rad"),
        CLIMB("climb", "m/s"),
        THRUST("thrust", "N"),
        GREATEST_DUTY("greatest throttle", "1"),
        LEAST_CELL("lowest cell", "V"),
        PACK_CURRENT("pack current", "A"),
        CHARGE("charge left", "1"),
        PULL("pull of a line", "N");

        private final String words;
        private final String unit;

        Kind(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }
    }

    public double[] of(Kind kind) {
        return channels.stream()
                .filter(channel -> channel.kind() == kind)
                .findFirst()
                .orElseThrow()
                .values();
    }
}
