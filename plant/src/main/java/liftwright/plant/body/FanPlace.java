package liftwright.plant.body;

import java.util.ArrayList;
import java.util.List;
import liftwright.rig.Fan;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;

/**
 * Where a fan is and which way it pushes, in rig axes, with what turns it taken apart.
 *
 * @param at place, m
 * @param held direction of thrust as the limb gives it, were the fan to blow along the limb and its
 *     mount not tilted; straight up on frame and trunk
 * @param canted the same with its declared direction and cants
 * @param seated the same with what its seat turns
 * @param actual the same with the tilt of its mount; what beams give is not in it
 */
public record FanPlace(Vec3 at, Vec3 held, Vec3 canted, Vec3 seated, Vec3 actual) {

    private static final Vec3 DOWN = new Vec3(0, 0, 1);

    /** All fans of a rig at the values of {@code p}. Allocates. */
    public static List<FanPlace> of(Rig rig, Pose pose, ThrustLines lines, double[] p) {
        Pose.Placed placed = pose.placed(p);
        List<FanPlace> places = new ArrayList<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            Fan fan = rig.fans().get(k);
            Vec3 jet = lines.jet(p, k);
            Vec3 declared = lines.declaredJet(p, k);
            places.add(
                    new FanPlace(
                            placed.at(fan.mount(), fan.at()),
                            placed.onLimb(fan.mount(), DOWN).times(-1),
                            placed.onLimb(fan.mount(), declared).times(-1),
                            placed.onLimb(fan.mount(), jet).times(-1),
                            placed.turned(fan.mount(), jet).times(-1)));
        }
        return places;
    }
}
