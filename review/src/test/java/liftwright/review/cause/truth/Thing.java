package liftwright.review.cause.truth;

import static liftwright.review.cause.truth.Solid.dot;
import static liftwright.review.cause.truth.Solid.minus;
import static liftwright.review.cause.truth.Solid.times;

/** What a jet may strike, told by how far a point is from it. */
sealed interface Thing {

    /** Distance of a point from the surface, m; 0 or below inside. */
    double distance(double[] point);

    /** Share of the momentum that is caught: half a drag coefficient, from memory. */
    double catches();

    /** All within a radius of a line. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Round(String name, double[] from, double[] to, double radius) implements Thing {
        @Override
        public double distance(double[] point) {
            double[] run = minus(to, from);
            double[] off = minus(point, from);
            double share = Math.clamp(dot(off, run) / dot(run, run), 0.0, 1.0);
            double[] near = minus(off, times(share, run));
            return Math.sqrt(dot(near, near)) - radius;
        }

        @Override
        public double catches() {
            return 0.6;
        }
    }

    /** A box along the axes of the rig. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Block(double[] middle, double[] edges) implements Thing {
        @Override
        public double distance(double[] point) {
            double[] off = minus(point, middle);
            double[] out = new double[3];
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < 3; k++) {
                double beyond = Math.abs(off[k]) - edges[k] / 2;
                out[k] = Math.max(0, beyond);
                most = Math.max(most, beyond);
            }
            return Math.sqrt(dot(out, out)) + Math.min(0, most);
        }

        @Override
        public double catches() {
            return 1;
        }
    }

    /** The limb of a person's density, 1,050 kg/m³ from memory. */
    static Round of(Body.Limb limb) {
        double radius = Math.sqrt(limb.kg() / 1050 / Math.PI / limb.length());
        return new Round(limb.name(), limb.from(), limb.to(), radius);
    }

}
