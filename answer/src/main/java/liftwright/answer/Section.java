package liftwright.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

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
     * @param zones stretches of the horizontal axis that have a name of their own
     */
    record Plot(String id, String title, String x, String y, List<Series> series, List<Zone> zones)
            implements Section {
        public Plot {
            series = List.copyOf(series);
            zones = List.copyOf(zones);
        }

        /** Without zones. */
        public Plot(String id, String title, String x, String y, List<Series> series) {
            this(id, title, x, y, series, List.of());
        }

        /**
         * A stretch of the horizontal axis, drawn hatched behind the curves.
         *
         * @param label in words
         * @param from SI, finite
         * @param to SI, finite, greater
         */
        public record Zone(String label, double from, double to) {
            public Zone {
                if (!Double.isFinite(to - from) || !(from < to)) {
                    throw new IllegalArgumentException("a zone goes from a number to a greater");
                }
            }
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

    /**
     * What is left under each fault, a line a fault or a class of faults that do the same.
     *
     * @param columns fields of the cells
     * @param lines in the order in which they matter
     */
    record Matrix(String id, String title, List<String> columns, List<Line> lines)
            implements Section {

        public Matrix {
            columns = List.copyOf(columns);
            lines = List.copyOf(lines);
            for (Line line : lines) {
                if (!line.cells().stream().map(c -> c.value().field()).toList().equals(columns)) {
                    throw new IllegalArgumentException("not one cell a column: " + line.part());
                }
            }
        }

        /** The same as a table, for whoever has no picture. */
        public Table table() {
            return MatrixTable.of(this);
        }

        /**
         * @param part what fails, in words or as its id: no two lines have the same, unless their
         *     {@code what} differs
         * @param what how it fails, in words
         * @param members what else does the very same when it fails; empty where nothing does
         * @param cells one a column, of the column's field
         */
        public record Line(String part, String what, List<String> members, List<Cell> cells) {
            public Line {
                members = List.copyOf(members);
                cells = List.copyOf(cells);
            }

            /** What a case that belongs to it is called. */
            public String label() {
                return part + ", " + what;
            }
        }

        /**
         * @param value a number, words, or why there is none
         * @param standing how it stands against what is asked of it
         */
        public record Cell(Value value, Standing standing) {}

        /** How a number stands against what is asked; colour only repeats it. */
        public enum Standing {
            /** As asked or better. */
            HOLDS("holds"),
            /** Less than is asked. */
            SHORT("short"),
            /** Something is asked, and whether it holds is not known. */
            UNTOLD("cannot be told"),
            /** Nothing is asked of it. */
            TOLD("told");

            private final String word;

            Standing(String word) {
                this.word = word;
            }

            /** For a reader. */
            public String word() {
                return word;
            }
        }
    }

    /**
     * What becomes of the parts of the rig in each of several cases, to be stepped through on a
     * picture of it.
     *
     * @param field of the values
     * @param spots where the parts are
     * @param cases each has one entry a spot
     */
    record Cases(String id, String title, String field, List<Spot> spots, List<Case> cases)
            implements Section {

        public Cases {
            spots = List.copyOf(spots);
            cases = List.copyOf(cases);
            for (Case one : cases) {
                if (one.lost().size() != spots.size() || one.values().size() != spots.size()) {
                    throw new IllegalArgumentException("not one entry a spot: " + one.label());
                }
            }
        }

        /**
         * @param part its id
         * @param kind in words, lower case: {@code fan}, {@code pack}
         */
        public record Spot(String part, String kind, Playback.Place at) {}

        /**
         * @param label {@link Matrix.Line#label} of the line it belongs to, or words of its own
         *     where it belongs to none
         * @param outcome what comes of it, in words
         * @param lost whether the part at each spot is lost
         * @param values of the parts that are left, SI, finite; 0 of one that is lost
         */
        public record Case(String label, String outcome, List<Boolean> lost, List<Double> values) {
            public Case {
                lost = List.copyOf(lost);
                values = List.copyOf(values);
                if (!values.stream().allMatch(Double::isFinite)) {
                    throw new IllegalArgumentException("a shown number is finite: " + label);
                }
            }
        }
    }

    /**
     * A side view of what holds the rig, with what pulls at it. Places are metres across, to the
     * right of the drawing, and up from the ground.
     *
     * @param shapes what is drawn; later ones lie above earlier ones
     * @param loads arrows
     * @param space the same in space, as tables for whoever draws it so; may be empty
     */
    record Elevation(
            String id, String title, List<Shape> shapes, List<Load> loads, List<Table> space)
            implements Section {

        /** Field of the axis across. */
        public static final String ACROSS = "across";

        /** Field of the axis up. */
        public static final String UP = "height-above-ground";

        public Elevation {
            shapes = List.copyOf(shapes);
            loads = List.copyOf(loads);
            space = List.copyOf(space);
        }

        /** From the side alone. */
        public Elevation(String id, String title, List<Shape> shapes, List<Load> loads) {
            this(id, title, shapes, loads, List.of());
        }

        /** The same as tables, of what pulls and of what is drawn, for whoever has no picture. */
        public List<Table> tables() {
            return ElevationTables.of(this);
        }

        /** What a shape shows, which decides how it is drawn. */
        public enum Kind {
            GROUND,
            STAND,
            RIG,
            PERSON,
            ANCHOR,
            BEAM,
            LINE,
            DOWN_LINE,
            PLATFORM,
            MAT,
            KEEP_OUT,
            REACH,
            GANTRY;

            /** In words, lower case. */
            public String word() {
                return name().toLowerCase(Locale.ROOT).replace('_', ' ');
            }
        }

        /**
         * @param label in words; empty for one that needs none
         * @param outline at least one point: one alone is a mark
         * @param closed whether it encloses an area
         */
        public record Shape(Kind kind, String label, List<Spot2> outline, boolean closed) {
            public Shape {
                outline = List.copyOf(outline);
                if (outline.isEmpty()) {
                    throw new IllegalArgumentException("nothing to draw: " + label);
                }
            }
        }

        /** In the plane of the drawing. */
        public record Spot2(double acrossM, double upM) {
            public Spot2 {
                if (!Double.isFinite(acrossM + upM)) {
                    throw new IllegalArgumentException("a place is finite");
                }
            }
        }

        /**
         * @param label in words
         * @param at where it acts
         * @param acrossN to the right of the drawing
         * @param upN up
         * @param value the load that is told
         */
        public record Load(String label, Spot2 at, double acrossN, double upN, Value value) {
            public Load {
                if (!Double.isFinite(acrossN + upN)) {
                    throw new IllegalArgumentException("a load is finite: " + label);
                }
            }
        }
    }

    /**
     * What was measured over time beside what was expected, a strip a channel, with what happened.
     *
     * @param strips in the order in which they matter
     * @param events in the order of time
     */
    record Strips(String id, String title, List<Strip> strips, List<Event> events)
            implements Section {

        /** More points of a strip than these nobody sees. */
        public static final int MOST_POINTS = 2000;

        public Strips {
            strips = List.copyOf(strips);
            events = List.copyOf(events);
        }

        /**
         * @param label in words
         * @param field of its values
         * @param part of what it was read
         * @param channel name of the channel in the log
         * @param timesS on the clock of the recording, rising, s
         * @param measured one a time, SI, finite
         * @param expected likewise
         * @param low lower end of the band of what its instrument would show
         * @param high upper end
         */
        public record Strip(
                String label,
                String field,
                String part,
                String channel,
                List<Double> timesS,
                List<Double> measured,
                List<Double> expected,
                List<Double> low,
                List<Double> high) {
            public Strip {
                timesS = List.copyOf(timesS);
                measured = List.copyOf(measured);
                expected = List.copyOf(expected);
                low = List.copyOf(low);
                high = List.copyOf(high);
                if (timesS.isEmpty() || timesS.size() > MOST_POINTS) {
                    throw new IllegalArgumentException(timesS.size() + " points: " + channel);
                }
                for (List<Double> values : List.of(measured, expected, low, high)) {
                    if (values.size() != timesS.size()
                            || !values.stream().allMatch(Double::isFinite)) {
                        throw new IllegalArgumentException("not a number a time: " + channel);
                    }
                }
            }

            /** Whether the value at a time lies within its band. */
            public boolean isInside(int at) {
                return measured.get(at) >= low.get(at) && measured.get(at) <= high.get(at);
            }
        }

        /**
         * @param timeS on the clock of the recording, s, finite
         * @param label in words
         * @param part of what; empty where the whole is meant
         */
        public record Event(double timeS, String label, String part) {
            public Event {
                if (!Double.isFinite(timeS)) {
                    throw new IllegalArgumentException("an event has a time: " + label);
                }
            }
        }
    }

    /**
     * A test card: one job with all that is needed to do it, to be printed and signed.
     *
     * @param state where it stands, in words: {@code open}, {@code closed}, {@code passed}
     * @param purpose what is known after it that was not before
     * @param blocks in reading order
     */
    record Card(String id, String title, String state, Sentence purpose, List<Block> blocks)
            implements Section {

        public Card {
            blocks = List.copyOf(blocks);
        }

        /** The tables on it, those of its side views too. */
        public List<Table> tables() {
            return blocks.stream()
                    .flatMap(
                            block ->
                                    switch (block) {
                                        case Block.Lines _ -> Stream.<Table>empty();
                                        case Block.Rows rows -> Stream.of(rows.table());
                                        case Block.View view -> view.elevation().tables().stream();
                                    })
                    .toList();
        }

        /** One part of a card. */
        public sealed interface Block {

            String title();

            /**
             * @param style how each is printed
             * @param lines one below the other
             */
            record Lines(String title, Style style, List<Sentence> lines) implements Block {
                public Lines {
                    lines = List.copyOf(lines);
                }
            }

            /** A table; its title is the block's. */
            record Rows(Table table) implements Block {
                @Override
                public String title() {
                    return table.title();
                }
            }

            /** A side view of what holds the rig. */
            record View(Elevation elevation) implements Block {
                @Override
                public String title() {
                    return elevation.title();
                }
            }
        }

        /** How a line is printed. */
        public enum Style {
            PLAIN,
            /** With a box to tick. */
            TICK,
            /** Numbered, in the order in which it is done. */
            NUMBER,
            /** With a line to write on. */
            WRITE;

            /** In words, lower case. */
            public String word() {
                return name().toLowerCase(Locale.ROOT);
            }
        }
    }
}
