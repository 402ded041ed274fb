package liftwright.flight.ask;

import java.util.List;
import liftwright.flight.motion.Airframe;
import liftwright.rig.Vec3;

/** What feet stand on as seen from above: the outline round them. */
final class Stance {

    private Stance() {}

    /**
     * How far the outline reaches from under the centre of mass one way, m: beyond that what
     * carries the rig would have to push outside it, and it tips.
     *
     * @param x forward of a direction of length 1
     * @param y right of it
     */
    static double reachM(Airframe frame, double x, double y) {
        List<Airframe.Foot> feet = frame.feet();
        double reach = Double.POSITIVE_INFINITY;
        for (Airframe.Foot from : feet) {
            for (Airframe.Foot to : feet) {
                double outX = to.at().y() - from.at().y();
                double outY = from.at().x() - to.at().x();
                double along = outX * x + outY * y;
                double edge = out(from.at(), outX, outY);
                if (along > 0 && feet.stream().allMatch(foot -> inside(foot, outX, outY, edge))) {
                    reach = Math.min(reach, edge / along);
                }
            }
        }
        return Double.isInfinite(reach) ? 0 : Math.max(0, reach);
    }

    private static boolean inside(Airframe.Foot foot, double outX, double outY, double edge) {
        return out(foot.at(), outX, outY) <= edge + 1e-12;
    }

    private static double out(Vec3 at, double outX, double outY) {
        return at.x() * outX + at.y() * outY;
    }
}
