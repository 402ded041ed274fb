package liftwright.plant.balance;

import java.util.List;
import liftwright.rig.Vec3;

/**
 * Something that a jet can strike, in rig axes.
 *
 * <p>How much of the momentum that meets it pushes it: half a drag coefficient. A limb is a cylinder
 * across a stream (drag coefficient 1.2), a box is blunt (2.0); both from memory, ± 40 %.
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

        /** Where ray and limb are nearest to each other, if that is within the radius. */
        @Override
        public double meets(Vec3 start, Vec3 end) {
            Vec3 d1 = end.minus(start);
            Vec3 d2 = to.minus(from);
            Vec3 r = start.minus(from);
            double a = dot(d1, d1);
            double e = dot(d2, d2);
            double f = dot(d2, r);
            double c = dot(d1, r);
            double b = dot(d1, d2);
            double denominator = a * e - b * b;
            double s =
                    denominator > 1e-12 * a * e
                            ? Math.clamp((b * f - c * e) / denominator, 0, 1)
                            : 0;
            double t = e > 0 ? (b * s + f) / e : 0;
            if (t < 0) {
                t = 0;
                s = Math.clamp(-c / a, 0, 1);
            } else if (t > 1) {
                t = 1;
                s = Math.clamp((b - c) / a, 0, 1);
            }
            Vec3 apart = start.plus(d1.times(s)).minus(from.plus(d2.times(t)));
            return dot(apart, apart) <= radiusM * radiusM ? s : MISSED;
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
            Vec3 at = start.minus(middle);
            Vec3 way = end.minus(start);
            double[] half = {halfM.x(), halfM.y(), halfM.z()};
            double in = 0;
            double out = 1;
            for (int k = 0; k < 3; k++) {
                double p = dot(at, axes.get(k));
                double v = dot(way, axes.get(k));
                if (v == 0) {
                    if (Math.abs(p) > half[k]) {
                        return MISSED;
                    }
                } else {
                    double one = (-half[k] - p) / v;
                    double other = (half[k] - p) / v;
                    in = Math.max(in, Math.min(one, other));
                    out = Math.min(out, Math.max(one, other));
                }
            }
            return in <= out ? in : MISSED;
        }
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }
}
