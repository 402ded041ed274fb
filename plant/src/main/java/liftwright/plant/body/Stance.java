package liftwright.plant.body;

import liftwright.physics.LimbAngles;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * How the wearer's legs and trunk are held. Hips and knees bend the legs against the trunk; the
 * lean turns the whole body, and all that it wears, about the middle between the shoulders: {@code
 * R_y(−forward) R_x(right)}, so that the head goes forward, then right.
 */
final class Stance {

    private static final RigPath POSTURE = RigPath.of("wearer", "posture");

    private record Leg(int flexion, int abduction, int knee) {}

    private final Leg left;
    private final Leg right;
    private final int forward;
    private final int side;

    private Stance(Rig rig, Wearer.Stance stance, ParameterRows table) {
        DeclaredKeys keys = new DeclaredKeys(rig.declaration());
        left = leg("left", stance.left(), keys, table);
        right = leg("right", stance.right(), keys, table);
        RigPath lean = POSTURE.child("lean");
        forward = table.row(lean.child("forward"), "lean forward", stance.leanForward(), Range.ANY);
        side = table.row(lean.child("right"), "lean to the right", stance.leanRight(), Range.ANY);
    }

    static Stance declare(Rig rig, Wearer wearer, ParameterRows table) {
        return new Stance(rig, wearer.stance(), table);
    }

    private static Leg leg(String which, Wearer.Leg leg, DeclaredKeys keys, ParameterRows table) {
        return new Leg(
                angle(which, "hip", "flexion", leg.hipFlexion(), keys, table),
                angle(which, "hip", "abduction", leg.hipAbduction(), keys, table),
                angle(which, "knee", "flexion", leg.kneeFlexion(), keys, table));
    }

    /** An angle declared for both sides has one error for both. */
    private static int angle(
            String which,
            String joint,
            String angle,
            Quantity value,
            DeclaredKeys keys,
            ParameterRows table) {
        String own = which + " " + joint;
        String both = "both " + joint + "s";
        boolean shared =
                keys.has(POSTURE.child(both).child(angle))
                        && !keys.has(POSTURE.child(own).child(angle));
        String place = shared ? both : own;
        return table.row(
                POSTURE.child(place).child(angle),
                angle + " of the " + place,
                new PartId(own),
                value,
                Range.ANY);
    }

    private Leg of(double which) {
        return which == LimbAngles.LEFT ? left : right;
    }

    /** Turn of a thigh into {@code frame}, body axes. */
    void thigh(double[] p, double which, double[] frame) {
        Leg leg = of(which);
        LimbAngles.upper(which, p[leg.flexion], p[leg.abduction], 0, frame, 0);
    }

    /** Turn of a shank into {@code frame}, body axes: a knee bends to the back. */
    void shank(double[] p, double which, double[] frame) {
        Leg leg = of(which);
        LimbAngles.lower(which, p[leg.flexion], p[leg.abduction], 0, -p[leg.knee], frame, 0);
    }

    /** Whether the body leans at all. */
    boolean leans(double[] p) {
        return p[forward] != 0 || p[side] != 0;
    }

    /** Turns a frame from body axes into rig axes, in place. */
    void lean(double[] p, double[] frame) {
        if (!leans(p)) {
            return;
        }
        double cf = Math.cos(p[forward]);
        double sf = Math.sin(p[forward]);
        double cr = Math.cos(p[side]);
        double sr = Math.sin(p[side]);
        for (int column = 0; column < 3; column++) {
            double x = frame[column];
            double y = frame[3 + column];
            double z = frame[6 + column];
            double low = y * sr + z * cr;
            frame[column] = x * cf - low * sf;
            frame[3 + column] = y * cr - z * sr;
            frame[6 + column] = x * sf + low * cf;
        }
    }

    /** A vector in body axes, in rig axes. */
    Vec3 leant(double[] p, Vec3 v) {
        double[] frame = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        lean(p, frame);
        return Pose.turned(frame, 0, v);
    }
}
