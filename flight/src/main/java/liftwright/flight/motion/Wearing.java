package liftwright.flight.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.plant.body.MassItem;
import liftwright.plant.body.MassProperties;
import liftwright.rig.Vec3;

/**
 * A wearer as loose masses: trunk, head and arms as one mass in the harness of the rigid rig, and
 * each leg as one that hangs from it. How the wearer's own body is turned follows the frame, so the
 * inertia about the wearer's own centre stays with the frame.
 *
 * <p>Stiffness of the harness along an axis is ω² over the mobility of both ends, 1/m + 1/M + r ×
 * I⁻¹ × r: a push between wearer (m) and frame (M, I) at r from the frame's centre gives one the
 * acceleration 1/m and the other the rest. So the mode of a rig in the air has the frequency that
 * was asked for, exactly where the axes are those of the frame's inertia. Upright the legs go with
 * the wearer; to the side they are far too slow to.
 */
final class Wearing {

    private static final String LEGS = ".*(thigh|shank|foot)";

    private final MassProperties whole;
    private final Give give;

    Wearing(MassProperties whole, Give give) {
        this.whole = whole;
        this.give = give;
    }

    /** A part of the wearer as a point. */
    private record Point(double kg, Vec3 at) {}

    private Point point(String name, List<MassItem> items) {
        double kg = 0;
        Vec3 moment = Vec3.ZERO;
        for (MassItem item : items) {
            kg += item.massKg();
            moment = moment.plus(item.at().times(item.massKg()));
        }
        if (!(kg > 0)) {
            throw new IllegalArgumentException("no mass in the " + name);
        }
        return new Point(kg, moment.times(1 / kg).minus(whole.centre()));
    }

    private List<MassItem> items(String pattern) {
        return whole.items().stream()
                .filter(item -> item.kind() == MassItem.Kind.WEARER)
                .filter(item -> item.name().toLowerCase(Locale.ROOT).matches(pattern))
                .toList();
    }

    List<Airframe.Loose> masses() {
        Point left = point("left leg", items("left" + LEGS));
        Point right = point("right leg", items("right" + LEGS));
        Point body = point("trunk", items("(?!" + LEGS + ").*"));
        List<Airframe.Loose> masses = new ArrayList<>();
        masses.add(harness(body, left, right));
        masses.add(leg("left leg", left));
        masses.add(leg("right leg", right));
        return masses;
    }

    private Airframe.Loose harness(Point body, Point left, Point right) {
        Airframe.Loose soft =
                new Airframe.Loose(
                        "wearer", body.kg, body.at, Airframe.FRAME, Vec3.ZERO, Vec3.ZERO);
        FrameNumbers frame =
                new FrameNumbers(
                        new Airframe(
                                whole.massKg(),
                                whole.inertia(),
                                List.of(),
                                List.of(soft, leg("left leg", left), leg("right leg", right)),
                                List.of(),
                                Airframes.ground(1, 1),
                                Airframe.Drag.NONE,
                                List.of(),
                                0));
        double[] r = {
            body.at.x() - frame.centre[0],
            body.at.y() - frame.centre[1],
            body.at.z() - frame.centre[2]
        };
        double worn = body.kg + left.kg + right.kg;
        double k = Math.TAU * give.harnessHz();
        double[] stiff = new double[3];
        for (int axis = 0; axis < 3; axis++) {
            double kg = axis == 2 ? worn : body.kg;
            stiff[axis] = k * k / (1 / kg + frame.perFrameKg + turning(r, axis, frame.inverse));
        }
        Vec3 stiffness = new Vec3(stiff[0], stiff[1], stiff[2]);
        return new Airframe.Loose(
                "wearer",
                body.kg,
                body.at,
                Airframe.FRAME,
                stiffness,
                stiffness.times(2 * give.harnessDamping() / k));
    }

    /** What a unit of force along an axis at r moves that place by turning the frame, 1/kg. */
    private static double turning(double[] r, int axis, double[] j) {
        double[] e = new double[3];
        e[axis] = 1;
        double[] m = {
            r[1] * e[2] - r[2] * e[1], r[2] * e[0] - r[0] * e[2], r[0] * e[1] - r[1] * e[0]
        };
        return m[0] * (j[0] * m[0] + j[3] * m[1] + j[4] * m[2])
                + m[1] * (j[3] * m[0] + j[1] * m[1] + j[5] * m[2])
                + m[2] * (j[4] * m[0] + j[5] * m[1] + j[2] * m[2]);
    }

    private Airframe.Loose leg(String name, Point leg) {
        double swing = Math.TAU * give.legsHz();
        double along = Math.TAU * Give.LEG_ALONG_HZ;
        double side = leg.kg * swing * swing;
        double sideC = 2 * give.legsDamping() * leg.kg * swing;
        return new Airframe.Loose(
                name,
                leg.kg,
                leg.at,
                0,
                new Vec3(side, side, leg.kg * along * along),
                new Vec3(sideC, sideC, 2 * Give.LEG_ALONG_DAMPING * leg.kg * along));
    }
}
