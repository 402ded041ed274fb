package liftwright.answer;

import java.util.ArrayList;
import java.util.List;

/** A picture or a table, as data. */
public sealed interface Section {

    /** Stable name, lower case with hyphens. */
    String id();

    String title();

    /**
     * From a first value to a last in steps that add up exactly.
     *
     * @param start label and value it starts from
     * @param steps changes in physical order, each from a full re-solve
     * @param end what is left
     * @param against what the end is held against
     */
    record Waterfall(String id, String title, Step start, List<Step> steps, Step end, Step against)
            implements Section {
        public Waterfall {
            steps = List.copyOf(steps);
        }

        /**
         * @param label in words
         * @param value amount: for steps the signed change
         * @param note why, or empty
         */
        public record Step(String label, Value value, String note) {}
    }

    /**
     * @param columns column heads, field ids
     * @param rows cells in column order
     */
    record Table(String id, String title, List<String> columns, List<List<Value>> rows)
            implements Section {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A thing in space, for a picture: tables of places, directions and sizes in the axes of the
     * rig file (forward, right, up). What draws nothing leaves it out.
     *
     * @param layers one table for each kind of thing that is drawn
     */
    record Drawing(String id, String title, List<Table> layers) implements Section {
        public Drawing {
            layers = List.copyOf(layers);
        }
    }

    /**
     * Points and curves over one axis.
     *
     * @param x field of the horizontal axis
     * @param y field of the vertical axis
     * @param series what is drawn; later ones lie above earlier ones
     */
    record Plot(String id, String title, String x, String y, List<Series> series)
            implements Section {
        public Plot {
            series = List.copyOf(series);
        }

        /** How a series is drawn: shapes that differ without colour. */
        public enum Mark {
            DOT,
            CROSS,
            LINE,
            DASHES
        }

        /**
         * @param label in words; empty for one that belongs to the series before
         * @param points in the order of x for a curve
         */
        public record Series(String label, Mark mark, List<Point> points) {
            public Series {
                points = List.copyOf(points);
            }
        }

        /**
         * @param x SI, finite
         * @param y SI, finite
         */
        public record Point(double x, double y) {
            public Point {
                if (!Double.isFinite(x) || !Double.isFinite(y)) {
                    throw new IllegalArgumentException("a plotted point is finite");
                }
            }
        }
    }

    /**
     * What comes when, a bar a part: thermal, electrical and charge limits in one order. A picture
     * draws each bar from the start to its limit, and an open end where the limit is never reached.
     *
     * @param bars in order of time; what is never reached comes last
     * @param horizonS how far the calculation went, s: what came to no limit by then is {@code
     *     Never} within it
     */
    record Timeline(String id, String title, List<Bar> bars, double horizonS) implements Section {

        /** Field of the axis of time. */
        public static final String TIME = "time";

        public Timeline {
            if (!(horizonS > 0) || !Double.isFinite(horizonS)) {
                throw new IllegalArgumentException("a timeline needs a length of time");
            }
            bars = List.copyOf(bars);
        }

        /** The same as a table, for whoever has no picture. */
        public Table table() {
            return new Table(
                    id,
                    title,
                    List.of("part", "limit-kind", "time-to-limit", "extreme", "limit", "where"),
                    bars.stream().map(Bar::row).toList());
        }

        /**
         * One part and one limit.
         *
         * @param part in words or as its id
         * @param what which limit, in words: {@code insulation}
         * @param at when it is reached, from the start; or never
         * @param hottest the worst that was computed, in the unit of the limit
         * @param limit what it is held against
         * @param where on the part, or when in the task, in words; may be empty
         */
        public record Bar(
                String part, String what, Value at, Value hottest, Value limit, String where) {

            private List<Value> row() {
                return List.of(
                        Value.words("part", part),
                        Value.words("limit-kind", what),
                        at,
                        hottest,
                        limit,
                        Value.words("where", where));
            }
        }
    }

    /**
     * One amount and what it consists of.
     *
     * @param whole what the shares add up to
     * @param shares greatest first; each an amount in the unit of the whole
     */
    record Shares(String id, String title, Value whole, List<Share> shares) implements Section {

        public Shares {
            shares = List.copyOf(shares);
        }

        /** The same as a table with the share of each, for whoever has no picture. */
        public Table table() {
            var rows = new ArrayList<List<Value>>();
            shares.forEach(share -> rows.add(row(share.label(), share.value())));
            rows.add(row("together", whole));
            return new Table(id, title, List.of("what", whole.field(), "share-of-whole"), rows);
        }

        private List<Value> row(String label, Value value) {
            return List.of(Value.words("what", label), value, share(value));
        }

        /** Of the whole; not computed where there is no number, or nothing to be a share of. */
        public Value share(Value value) {
            return whole.figure() instanceof Value.Figure.Amount(double all, var _)
                            && value.figure() instanceof Value.Figure.Amount(double part, var _)
                            && all > 0
                    ? Value.of("share-of-whole", part / all)
                    : new Value("share-of-whole", new Value.Figure.NotComputed("no whole"));
        }

        /**
         * @param label in words
         * @param value amount
         */
        public record Share(String label, Value value) {}
    }

    /**
     * How a number of every part goes with time, to be played on a picture of the rig.
     *
     * @param timesS rising, s
     * @param field of the values
     * @param tracks a part each
     */
    record Playback(String id, String title, List<Double> timesS, String field, List<Track> tracks)
            implements Section {

        public Playback {
            timesS = List.copyOf(timesS);
            tracks = List.copyOf(tracks);
            for (int k = 0; k < timesS.size(); k++) {
                boolean rises = k == 0 || timesS.get(k) > timesS.get(k - 1);
                if (!Double.isFinite(timesS.get(k)) || !rises) {
                    throw new IllegalArgumentException("moments that do not rise");
                }
            }
            for (Track track : tracks) {
                if (track.values().size() != timesS.size()) {
                    throw new IllegalArgumentException("not one value a moment: " + track.part());
                }
            }
        }

        /**
         * One part, a line between two places or a point where they are one.
         *
         * @param part its id
         * @param kind in words, lower case: {@code wire}, {@code cells}
         * @param limit what the values are held against, SI
         * @param values one a moment, SI, finite; whoever makes them rounds them to what is known
         */
        public record Track(
                String part, String kind, Place from, Place to, double limit, List<Double> values) {
            public Track {
                values = List.copyOf(values);
                if (!Double.isFinite(limit) || !values.stream().allMatch(Double::isFinite)) {
                    throw new IllegalArgumentException("a played number is finite: " + part);
                }
            }
        }

        /** In the axes of the rig file, m. */
        public record Place(double forwardM, double rightM, double upM) {
            public Place {
                if (!Double.isFinite(forwardM + rightM + upM)) {
                    throw new IllegalArgumentException("a place is finite");
                }
            }
        }
    }
}
