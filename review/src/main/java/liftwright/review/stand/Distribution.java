package liftwright.review.stand;

import java.util.ArrayList;
import java.util.List;
import liftwright.numerics.Gaussian;
import liftwright.numerics.StudentT;
import liftwright.quantity.Tolerance;
import liftwright.rig.stand.Stand;

/** How the error of a thrust lies about its mean, N. */
sealed interface Distribution {

    /**
     * Standard uncertainty, N. Of Student's t half of the 95.45 % interval, since few runs have no
     * variance to speak of.
     */
    double standardN();

    /** The same error, smaller or greater. */
    Distribution times(double factor);

    /** In words. */
    String words();

    /** As a declared ± says. */
    static Distribution of(Stand.Doubt doubt, double sensitivity) {
        double halfN = doubt.halfWidth() * sensitivity;
        return switch (doubt.form()) {
            case NORMAL -> new Normal(halfN / 2);
            case BOUND -> new Rectangle(halfN);
        };
    }

    record Normal(double standardN) implements Distribution {
        @Override
        public Normal times(double factor) {
            return new Normal(factor * standardN);
        }

        @Override
        public String words() {
            return "normal";
        }
    }

    /**
     * @param halfN half-width
     */
    record Rectangle(double halfN) implements Distribution {
        @Override
        public double standardN() {
            return halfN / Math.sqrt(3);
        }

        @Override
        public Rectangle times(double factor) {
            return new Rectangle(factor * halfN);
        }

        @Override
        public String words() {
            return "rectangle";
        }
    }

    /**
     * The sum of two like rectangles: half a step of a display at the tare and at the reading.
     *
     * @param halfN half-width
     */
    record Triangle(double halfN) implements Distribution {
        @Override
        public double standardN() {
            return halfN / Math.sqrt(6);
        }

        @Override
        public Triangle times(double factor) {
            return new Triangle(factor * halfN);
        }

        @Override
        public String words() {
            return "triangle";
        }
    }

    /**
     * The mean of few runs.
     *
     * @param scaleN standard deviation of the mean as the runs show it
     * @param freedom ν, runs less one
     */
    record Student(double scaleN, int freedom) implements Distribution {
        @Override
        public double standardN() {
            return scaleN * StudentT.within(Gaussian.COVERAGE_K2, freedom) / StandBudget.K;
        }

        @Override
        public Student times(double factor) {
            return new Student(factor * scaleN, freedom);
        }

        @Override
        public String words() {
            return "Student’s t";
        }
    }

    /**
     * What a doubtful angle does to a thrust that is divided by its cosine: flat and one-sided near
     * 0, so no law of small errors holds. Known at points across the doubt.
     *
     * @param form how the angle itself lies
     * @param points the error at each, and its probability
     */
    record Tilt(Tolerance.Form form, List<Point> points) implements Distribution {

        private static final int POINTS = 1001;
        private static final double REACH = 5;

        record Point(double errorN, double probability) {}

        public Tilt {
            points = List.copyOf(points);
        }

        /** Mean of 1/cos over the doubt of the angle. */
        static double stretch(Stand.Doubted angle) {
            double mean = 0;
            for (Point point : stretches(angle)) {
                mean += point.probability * point.errorN;
            }
            return mean;
        }

        static Tilt of(Stand.Doubted angle, double thrustN) {
            double mean = stretch(angle);
            return new Tilt(
                    angle.doubt().form(),
                    stretches(angle).stream()
                            .map(
                                    one ->
                                            new Point(
                                                    thrustN * (one.errorN / mean - 1),
                                                    one.probability))
                            .toList());
        }

        private static List<Point> stretches(Stand.Doubted angle) {
            List<Point> points = new ArrayList<>();
            double half = angle.doubt().halfWidth();
            for (int i = 0; i < POINTS; i++) {
                double low = -1 + 2.0 * i / POINTS;
                double high = -1 + 2.0 * (i + 1) / POINTS;
                double middle = (low + high) / 2;
                points.add(
                        switch (angle.doubt().form()) {
                            case NORMAL ->
                                    new Point(
                                            stretch(angle.si() + REACH * middle * half / 2),
                                            (Gaussian.cdf(REACH * high) - Gaussian.cdf(REACH * low))
                                                    / (1 - 2 * Gaussian.cdf(-REACH)));
                            case BOUND ->
                                    new Point(stretch(angle.si() + middle * half), 1.0 / POINTS);
                        });
            }
            return points;
        }

        private static double stretch(double angleRad) {
            return 1 / Math.cos(angleRad);
        }

        @Override
        public double standardN() {
            double squares = 0;
            for (Point point : points) {
                squares += point.probability * point.errorN * point.errorN;
            }
            return Math.sqrt(squares);
        }

        @Override
        public Tilt times(double factor) {
            return new Tilt(
                    form,
                    points.stream()
                            .map(point -> new Point(factor * point.errorN, point.probability))
                            .toList());
        }

        @Override
        public String words() {
            return switch (form) {
                case NORMAL -> "normal angle";
                case BOUND -> "rectangle of the angle";
            };
        }
    }
}
