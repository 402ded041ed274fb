package liftwright.answer;

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
}
