package liftwright.rig;

import java.util.List;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;

/**
 * When a fuse opens.
 *
 * @param speed its form of curve
 * @param points time against current from cold, current rising, time falling, two or more; the
 *     first is about the least current that opens it at all
 * @param timeDoubt factor on every time of the curve, about 1
 * @param timeConstant in which its element settles, s
 */
public record FuseOpening(
        Speed speed, List<Point> points, Quantity timeDoubt, Quantity timeConstant) {

    private static final Dimension CURRENT = new Dimension(0, 0, 0, 1, 0, 0);
    private static final Dimension TIME = new Dimension(0, 0, 1, 0, 0, 0);

    /** How much longer and how much shorter the times of a fuse of the form may be, 1. */
    private static final Tolerance WINDOW =
            new Tolerance(1.5, 0.6, Tolerance.Form.BOUND, Tolerance.Scope.SHARED);

    public FuseOpening {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve has two points or more");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).current().si() > points.get(i - 1).current().si()
                    && points.get(i).time().si() < points.get(i - 1).time().si())) {
                throw new IllegalArgumentException("a larger current opens a fuse sooner");
            }
        }
    }

    /**
     * One point.
     *
     * @param current A
     * @param time until it opens, s
     */
    public record Point(Quantity current, Quantity time) {}

    /**
     * The forms of curve. Each has points at multiples of the rating: the geometric middle of the
     * window that a standard leaves to makers.
     */
    public enum Speed {
        /** IEC 60127-2, fast cartridge: middle between 150 % and 210 %, then 275 % and 400 %. */
        VERY_FAST(
                2,
                new double[] {1.5, 2.1, 2.75, 4, 10},
                new double[] {36_000, 60, 0.32, 0.055, 0.009}),
        /** ISO 8820-3, blade: 110 %, 135 %, 160 %, 200 %, 350 % and 600 %. */
        FAST(
                10,
                new double[] {1.1, 1.35, 1.6, 2, 3.5, 6},
                new double[] {360_000, 21, 3.5, 0.87, 0.20, 0.045}),
        /** ISO 8820-3, large blade of 40 A: 135 %, 200 %, 350 % and 600 %. */
        SLOW(60, new double[] {1.1, 1.35, 2, 3.5, 6}, new double[] {360_000, 330, 10, 1.2, 0.2});

        private final double timeConstantS;
        private final double[] multiples;
        private final double[] timesS;

        Speed(double timeConstantS, double[] multiples, double[] timesS) {
            this.timeConstantS = timeConstantS;
            this.multiples = multiples;
            this.timesS = timesS;
        }

        public double timeConstantS() {
            return timeConstantS;
        }

        public int points() {
            return multiples.length;
        }

        /** Current of a point over the rating. */
        public double multiple(int point) {
            return multiples[point];
        }

        public double timeS(int point) {
            return timesS[point];
        }
    }

    /** The usual curve of a form for a rating, A, above 0. */
    public static FuseOpening usual(Speed speed, double ratingA) {
        var points = new java.util.ArrayList<Point>();
        for (int i = 0; i < speed.points(); i++) {
            points.add(
                    new Point(
                            Quantity.exact(ratingA * speed.multiple(i), CURRENT),
                            Quantity.exact(speed.timeS(i), TIME)));
        }
        return new FuseOpening(
                speed,
                points,
                new Quantity(1, Dimension.NONE, WINDOW),
                Cooling.doubted(speed.timeConstantS(), TIME, 0.5));
    }
}
