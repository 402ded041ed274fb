package liftwright.plant.balance;

import java.util.List;
import liftwright.rig.Vec3;

/**
 * Something that a jet can strike, in rig axes.
 *
 * <p>How much of the momentum that meets it pushes it: half a drag coefficient. A limb is a
 * cylinder across a stream (drag coefficient 1.2), a box is blunt (2.0); both from memory, ± 40 %.
 */
public sealed interface Obstacle {

    /** What it is called. */
    String name();

    /** Share of the momentum it meets that pushes it. */
    double catches();

    /** Sphere about it: its middle, m. */
    Vec3 middle();

    /** Sphere about it: radius, m. */
    double reachM();

    /**
     * Way along a straight part of a ray to where it meets this, over the part's length.
     *
     * @return above 1 where it does not
     */
    double meets(Vec3 from, Vec3 to);

    /** What is never met. */
    double MISSED = 2;

    /** A limb: all within a radius of a line. */
    record Limb(String name, Vec3 from, Vec3 to, double radiusM) implements Obstacle {

        @Override
        public double catches() {
            return 0.6;
        }

        @Override
        public Vec3 middle() {
            return from.plus(to).times(0.5);
        }

        @Override
        public double reachM() {
            return to.minus(from).length() / 2 + radiusM;
        }

        /** Where the ray enters it; 0 where it starts inside. */
        @Override
        public double meets(Vec3 start, Vec3 end) {
            return meets(
                    start.x(), start.y(), start.z(), end.x(), end.y(), end.z(), from.x(), from.y(),
                    from.z(), to.x(), to.y(), to.z(), radiusM);
        }

        /**
         * The same on primitives, along a − b to a limb from c to d: the first of the two balls at
         * its ends and the cylinder between them.
         */
        static double meets(
                double ax,
                double ay,
                double az,
                double bx,
                double by,
                double bz,
                double cx,
                double cy,
                double cz,
                double dx,
                double dy,
                double dz,
                double radiusM) {
            double ux = bx - ax;
            double uy = by - ay;
            double uz = bz - az;
            double vx = dx - cx;
            double vy = dy - cy;
            double vz = dz - cz;
            double wx = ax - cx;
            double wy = ay - cy;
            double wz = az - cz;
            double uu = ux * ux + uy * uy + uz * uz;
            double vv = vx * vx + vy * vy + vz * vz;
            double uv = ux * vx + uy * vy + uz * vz;
            double uw = ux * wx + uy * wy + uz * wz;
            double vw = vx * wx + vy * wy + vz * wz;
            double ww = wx * wx + wy * wy + wz * wz;
            double square = radiusM * radiusM;
            double first =
                    Math.min(
                            enters(uu, uw, ww - square),
                            enters(uu, uw - uv, ww - 2 * vw + vv - square));
            if (vv > 0) {
                double across = uu - uv * uv / vv;
                if (across > 1e-12 * uu) {
                    double side = enters(across, uw - uv * vw / vv, ww - vw * vw / vv - square);
                    double along = vw + side * uv;
                    if (along >= 0 && along <= vv) {
                        first = Math.min(first, side);
                    }
                }
            }
            return first;
        }

        /** Least s in 0 to 1 with a s² + 2 b s + c ≤ 0. */
        private static double enters(double a, double b, double c) {
            if (c <= 0) {
                return 0;
            }
            double discriminant = b * b - a * c;
            if (b >= 0 || discriminant < 0) {
                return MISSED;
            }
            double s = c / (Math.sqrt(discriminant) - b);
            return s <= 1 ? s : MISSED;
        }
    }

    /**
     * A part with edges.
     *
     * @param axes unit vectors along its edges
     * @param halfM half its edges, m
     */
    record Box(String name, Vec3 middle, List<Vec3> axes, Vec3 halfM) implements Obstacle {

        public Box {
            axes = List.copyOf(axes);
        }

        @Override
        public double catches() {
            return 1;
        }

        @Override
        public double reachM() {
            return halfM.length();
        }

        @Override
        public double meets(Vec3 start, Vec3 end) {
            double[] of = new double[12];
            double[][] rows = {
                array(middle), array(axes.get(0)), array(axes.get(1)), array(axes.get(2))
            };
            for (int k = 0; k < 4; k++) {
                System.arraycopy(rows[k], 0, of, 3 * k, 3);
            }
            return meets(start.x(), start.y(), start.z(), end.x(), end.y(), end.z(), of, halfM);
        }

        private static double[] array(Vec3 v) {
            return new double[] {v.x(), v.y(), v.z()};
        }

        /**
         * The same on primitives, by slabs.
         *
         * @param of in: middle, then the three axes
         */
        static double meets(
                double ax,
                double ay,
                double az,
                double bx,
                double by,
                double bz,
                double[] of,
                Vec3 halfM) {
            double in = 0;
            double out = 1;
            for (int k = 0; k < 3; k++) {
                double nx = of[3 + 3 * k];
                double ny = of[4 + 3 * k];
                double nz = of[5 + 3 * k];
                double half = k == 0 ? halfM.x() : k == 1 ? halfM.y() : halfM.z();
                double p = (ax - of[0]) * nx + (ay - of[1]) * ny + (az - of[2]) * nz;
                double v = (bx - ax) * nx + (by - ay) * ny + (bz - az) * nz;
                if (v == 0) {
                    if (Math.abs(p) > half) {
                        return MISSED;
                    }
                } else {
                    double one = (-half - p) / v;
                    double other = (half - p) / v;
                    in = Math.max(in, Math.min(one, other));
                    out = Math.min(out, Math.max(one, other));
                }
            }
            return in <= out ? in : MISSED;
        }
    }
}
