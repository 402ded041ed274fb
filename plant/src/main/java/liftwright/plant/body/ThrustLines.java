package liftwright.plant.body;

import java.util.List;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Which way each fan pushes. A jet leaves along the declared direction plus Σ tan(lean) · towards,
 * turned with the mount and the limb; leans are its cants and what its seat turns. Thrust is
 * against the jet, so its upward share is the jet's downward one.
 */
public final class ThrustLines {

    private final int[] mount;
    private final Vec3[] blows;

    /** First lean of each fan in the arrays below, and one more. */
    private final int[] start;

    /** First lean of each fan that its seat turns; those before are its cants. */
    private final int[] seat;

    private final int[] lean;
    private final Vec3[] towards;

    private ThrustLines(int fans, int leans) {
        mount = new int[fans];
        blows = new Vec3[fans];
        start = new int[fans + 1];
        seat = new int[fans];
        lean = new int[leans];
        towards = new Vec3[leans];
    }

    /** Declares the parameters of all leans. */
    public static ThrustLines declare(Rig rig, Pose pose, ParameterRows table) {
        List<Fan> fans = rig.fans();
        int leans = fans.stream().mapToInt(fan -> fan.leans().size() + fan.seat().size()).sum();
        ThrustLines lines = new ThrustLines(fans.size(), leans);
        int next = 0;
        for (int k = 0; k < fans.size(); k++) {
            Fan fan = fans.get(k);
            lines.mount[k] = pose.number(fan.mount());
            lines.blows[k] = fan.blows();
            next = lines.declare(fan, fan.leans(), "cant at ", next, table);
            lines.seat[k] = next;
            next = lines.declare(fan, fan.seat(), "seat at ", next, table);
            lines.start[k + 1] = next;
        }
        return lines;
    }

    private int declare(
            Fan fan, List<Fan.Lean> leans, String words, int from, ParameterRows table) {
        int next = from;
        for (Fan.Lean each : leans) {
            lean[next] =
                    table.row(
                            each.declaredAt(),
                            words + each.declaredAt(),
                            fan.id(),
                            each.angle(),
                            Range.ANY);
            towards[next++] = each.towards();
        }
        return next;
    }

    /** Direction of one fan's jet, leans included, in its mount's axes. */
    Vec3 jet(double[] p, int fan) {
        return jet(p, fan, start[fan + 1]);
    }

    /** The same were its seat true. */
    Vec3 declaredJet(double[] p, int fan) {
        return jet(p, fan, seat[fan]);
    }

    private Vec3 jet(double[] p, int fan, int end) {
        Vec3 jet = blows[fan];
        for (int k = start[fan]; k < end; k++) {
            jet = jet.plus(towards[k].times(Math.tan(p[lean[k]])));
        }
        return jet.times(1 / jet.length());
    }

    /**
     * Upward share of one fan's thrust, −1 to 1.
     *
     * @param frames turns of the mounts, from {@link Pose#frames} at the same vector
     */
    public double upShare(double[] p, double[] frames, int fan) {
        double x = blows[fan].x();
        double y = blows[fan].y();
        double z = blows[fan].z();
        for (int k = start[fan]; k < start[fan + 1]; k++) {
            double tangent = Math.tan(p[lean[k]]);
            x += tangent * towards[k].x();
            y += tangent * towards[k].y();
            z += tangent * towards[k].z();
        }
        int at = mount[fan] * Pose.FRAME;
        double down = frames[at + 6] * x + frames[at + 7] * y + frames[at + 8] * z;
        return down / Math.sqrt(x * x + y * y + z * z);
    }
}
