package liftwright.review;

import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.MotorHeat;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Measure;

/** What full throttle is once motors and controllers are hot, solved anew. */
final class HotMotors {

    private HotMotors() {}

    /** Empty where no pack feeds any fan, or the voltages did not settle. */
    static Optional<Finding> finding(Plant plant) {
        double[] p = plant.parameters().nominal();
        SteadyState hot = plant.state();
        plant.solve(p, Effects.ALL, MotorHeat.HOT, plant.workspace(), hot);
        int most = -1;
        for (int fan = 0; fan < hot.fans(); fan++) {
            if (hot.fanFed(fan) && (most < 0 || hot.fanWindingA(fan) > hot.fanWindingA(most))) {
                most = fan;
            }
        }
        if (most < 0 || !hot.converged()) {
            return Optional.empty();
        }
        double ratio = new CutOffs(plant.rig()).usableLiftN(hot) / plant.weightN(p);
        return Optional.of(
                Finding.of(
                                Severity.NOTES,
                                "hot-motors",
                                Sentence.words("hot motors: lift over weight ")
                                        .then(Measure.RATIO, ratio)
                                        .then(", greatest motor current ")
                                        .then(Measure.CURRENT, hot.fanWindingA(most))
                                        .then(
                                                " in "
                                                        + plant.rig().fans().get(most).id()
                                                        + "; magnets at ")
                                        .then(Measure.TEMPERATURE, MotorHeat.HOT.magnetK())
                                        .then(", windings and switches at ")
                                        .then(Measure.TEMPERATURE, MotorHeat.HOT.windingK()),
                                "warm magnets are weaker: the motor turns faster and draws more; copper and"
                                        + " switches resist more")
                        .judging(Value.of("thrust-to-weight", ratio)));
    }
}
