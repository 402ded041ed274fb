package liftwright.flight.run;

import java.util.ArrayList;
import java.util.List;
import liftwright.flight.motion.Airframe;
import liftwright.plant.Plant;
import liftwright.rig.Vec3;

/**
 * The outside of a rig as balls round its fans and points at its feet, and the jets that leave it;
 * in the axes of the rig file.
 *
 * @param balls fans first, in the rig's order
 * @param jets one a fan
 */
record Shell(List<Ball> balls, List<Jet> jets) {

    Shell {
        balls = List.copyOf(balls);
        jets = List.copyOf(jets);
    }

    record Ball(Vec3 at, double radiusM) {}

    /**
     * @param at where it leaves
     * @param along where it goes, of length 1
     */
    record Jet(Vec3 at, Vec3 along, double exitM2) {}

    /**
     * @param centre of mass in the axes of the rig file, which is where the frame counts from
     */
    static Shell of(Plant plant, Airframe frame, Vec3 centre) {
        List<Ball> balls = new ArrayList<>();
        List<Jet> jets = new ArrayList<>();
        for (int fan = 0; fan < frame.fans().size(); fan++) {
            Airframe.FanLine line = frame.fans().get(fan);
            var type = plant.rig().fans().get(fan).type();
            Vec3 at = line.at().plus(centre);
            balls.add(new Ball(at, type.tip().si() / 2));
            jets.add(new Jet(at, line.axis().times(-1), type.exitArea().si()));
        }
        for (Airframe.Foot foot : frame.feet()) {
            balls.add(new Ball(foot.at().plus(centre), 0));
        }
        return new Shell(balls, jets);
    }
}
