package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.quantity.Band;
import liftwright.rig.Rig;

/**
 * From what the fans are rated at to what lifts: each effect is switched on in physical order and
 * the whole rig is solved again, so that a step is what that effect takes in the presence of those
 * before it, and the steps add up to the rest.
 */
final class LiftWaterfall {

    /**
     * @param field id of the field
     * @param label in words
     * @param effects switched on up to and including this step
     */
    private record Stage(String field, String label, Effects effects, String note) {}

    private static final List<Stage> STAGES =
            List.of(
                    new Stage(
                            "step-density",
                            "air density",
                            Effects.RATED.withSiteDensity(true),
                            "thrust goes with density"),
                    new Stage(
                            "step-charge",
                            "charge left",
                            Effects.RATED.withSiteDensity(true).withCharge(true),
                            "rest voltage at the charge that lift is judged at"),
                    new Stage(
                            "step-group-share",
                            "throttle share of groups",
                            Effects.RATED
                                    .withSiteDensity(true)
                                    .withCharge(true)
                                    .withGroupShare(true),
                            "duty of each group at full throttle"),
                    new Stage(
                            "step-supply-sag",
                            "supply sag under full load",
                            Effects.RATED
                                    .withSiteDensity(true)
                                    .withCharge(true)
                                    .withGroupShare(true)
                                    .withSag(true),
                            "cells, links, joints, fuses and wires, out and back"),
                    new Stage(
                            "step-intake",
                            "intake and grille",
                            Effects.RATED
                                    .withSiteDensity(true)
                                    .withCharge(true)
                                    .withGroupShare(true)
                                    .withSag(true)
                                    .withIntake(true),
                            "pressure lost before the rotor"),
                    new Stage(
                            "step-lean",
                            "cant and arm angles",
                            Effects.RATED
                                    .withSiteDensity(true)
                                    .withCharge(true)
                                    .withGroupShare(true)
                                    .withSag(true)
                                    .withIntake(true)
                                    .withLean(true),
                            "only the upright part of thrust lifts"),
                    new Stage(
                            "step-installation",
                            "installation",
                            Effects.ALL,
                            "plates, backs, arms and neighbours near the intakes; sellers' optimism"));

    private LiftWaterfall() {}

    static Section.Waterfall of(Plant plant) {
        double[] p = plant.parameters().nominal();
        var workspace = plant.workspace();
        SteadyState state = plant.state();
        CutOffs cutOffs = new CutOffs(plant.rig());
        plant.solve(p, Effects.RATED, workspace, state);
        double rated = cutOffs.usableLiftN(state);
        List<Section.Waterfall.Step> steps = new ArrayList<>();
        double before = rated;
        for (Stage stage : STAGES) {
            plant.solve(p, stage.effects, workspace, state);
            double after = cutOffs.usableLiftN(state);
            if (after != before || stage.effects.equals(Effects.ALL)) {
                steps.add(
                        new Section.Waterfall.Step(
                                stage.label,
                                Value.of(stage.field, after - before),
                                stage.effects.equals(Effects.ALL)
                                        ? withLots(stage.note, plant.rig())
                                        : stage.note));
            }
            before = after;
        }
        return new Section.Waterfall(
                "lift-waterfall",
                "From rated thrust to usable lift",
                new Section.Waterfall.Step(
                        "rated thrust",
                        Value.of("thrust-rated", rated),
                        "every fan at full duty on a full, unloaded pack in standard air, as it was tested"),
                steps,
                new Section.Waterfall.Step("usable lift", Value.of("lift-usable", before), ""),
                new Section.Waterfall.Step("weight", Value.of("weight", plant.weightN(p)), ""));
    }

    /** What is known of the lot takes the place of what sellers promise. */
    private static String withLots(String note, Rig rig) {
        List<String> lots = Lots.of(rig);
        return lots.isEmpty() ? note : note.replace("sellers' optimism", String.join("; ", lots));
    }

    /** The same with the bands of its end and of what that is held against. */
    static Section.Waterfall banded(Section.Waterfall waterfall, Band lift, Band weight) {
        return new Section.Waterfall(
                waterfall.id(),
                waterfall.title(),
                waterfall.start(),
                waterfall.steps(),
                banded(waterfall.end(), lift),
                banded(waterfall.against(), weight));
    }

    private static Section.Waterfall.Step banded(Section.Waterfall.Step step, Band band) {
        return new Section.Waterfall.Step(
                step.label(),
                Value.of(step.value().field(), amount(step), Bands.shown(band)),
                step.note());
    }

    /** What the sum of start and steps leaves against the end, over the sum of absolute terms. */
    static double residual(Section.Waterfall waterfall) {
        double sum = amount(waterfall.start());
        double scale = Math.abs(sum);
        for (Section.Waterfall.Step step : waterfall.steps()) {
            sum += amount(step);
            scale += Math.abs(amount(step));
        }
        return scale == 0 ? 0 : Math.abs(sum - amount(waterfall.end())) / scale;
    }

    private static double amount(Section.Waterfall.Step step) {
        return switch (step.value().figure()) {
            case Value.Figure.Amount(double si, var _) -> si;
            case Value.Figure.Words _, Value.Figure.Never _, Value.Figure.NotComputed _ ->
                    throw new IllegalStateException("a waterfall is made of amounts");
        };
    }
}
