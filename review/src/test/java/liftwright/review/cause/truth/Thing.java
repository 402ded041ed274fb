package liftwright.review.cause.truth;

/** What a jet may strike, told by how far a point is from it. */
sealed interface Thing {

    /** Distance of a point from the surface, m; 0 or below inside. Allocates nothing. */
    double distance(double x, double y, double z);

    default double distance(double[] point) {
        return distance(point[0], point[1], point[2]);
    }

    /** Share of the momentum that is caught: half a drag coefficient, from memory. */
    double catches();

    /** All within a radius of a line. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Round(String name, double[] from, double[] to, double radius) implements Thing {
        @Override
        public double distance(double x, double y, double z) {
            double px = x - from[0];
            double py = y - from[1];
            double pz = z - from[2];
            double rx = to[0] - from[0];
            double ry = to[1] - from[1];
            double rz = to[2] - from[2];
            double share = (px * rx + py * ry + pz * rz) / (rx * rx + ry * ry + rz * rz);
            share = Math.max(0, Math.min(1, share));
            px -= share * rx;
            py -= share * ry;
            pz -= share * rz;
            return Math.sqrt(px * px + py * py + pz * pz) - radius;
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
        public double distance(double x, double y, double z) {
            double dx = Math.abs(x - middle[0]) - edges[0] / 2;
            double dy = Math.abs(y - middle[1]) - edges[1] / 2;
            double dz = Math.abs(z - middle[2]) - edges[2] / 2;
            double ox = Math.max(0, dx);
            double oy = Math.max(0, dy);
            double oz = Math.max(0, dz);
            double inside = Math.min(0, Math.max(dx, Math.max(dy, dz)));
            return Math.sqrt(ox * ox + oy * oy + oz * oz) + inside;
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
