package liftwright.review;

import java.util.List;
import java.util.Optional;
import liftwright.plant.LossPoint;
import liftwright.plant.Plant;
import liftwright.review.failures.Asked;
import liftwright.review.failures.FaultFate;
import liftwright.review.failures.FaultGroup;
import liftwright.review.failures.FaultRule;
import liftwright.rig.Rig;

/**
 * What {@code review failures} says of every single loss at the declared values, for whoever holds
 * it against something else: the same panel answers both.
 */
public final class LossFates {

    private LossFates() {}

    /**
     * One loss, or several that come to the same.
     *
     * @param group which
     * @param fate what becomes of the rig; empty where no operating point was found, or where
     *     nothing declared says which of two that disagree is right
     * @param loop least share of what a computer believes its channels do that they do: 1 where it
     *     is right, at or below 0 its loops run away ({@code LossPoint.Computer#loop}); 1 where the
     *     harm is not in lift and steering
     */
    public record Told(FaultGroup group, Optional<FaultFate> fate, double loop) {}

    /** All single losses, in the order of the rig's lists. */
    public static List<Told> of(Plant plant) {
        FaultPanel panel = new FaultPanel(plant);
        FaultPanel.Worker worker = panel.worker();
        double[] p = plant.parameters().nominal();
        return panel.groups().stream()
                .map(
                        group -> {
                            FaultPanel.Found found = worker.told(p, group);
                            boolean told = found.converged() && group.rule() != FaultRule.DISAGREES;
                            return new Told(
                                    group,
                                    told ? Optional.of(found.fate()) : Optional.empty(),
                                    found.point()
                                            .flatMap(LossPoint::computer)
                                            .map(LossPoint.Computer::loop)
                                            .orElse(1.0));
                        })
                .toList();
    }

    /** What is asked of the rig with each of them. */
    public static Asked asked(Rig rig) {
        return Asked.of(rig);
    }
}
