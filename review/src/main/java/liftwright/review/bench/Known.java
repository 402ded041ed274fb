package liftwright.review.bench;

import java.util.Optional;
import liftwright.physics.FanLaw;
import liftwright.plant.identify.FanPriors;
import liftwright.quantity.Quantity;
import liftwright.rig.FanType;
import liftwright.rig.shape.words.ControllerKeys;

/**
 * What is known of a fan beside its rows.
 *
 * @param type as a rig file declares it: motor values count as measurements, claims are compared
 * @param exitArea m²; before that of the type
 * @param tip rotor tip diameter, m; before that of the type
 * @param hub hub diameter, m; with the tip it gives the exit area of a straight duct
 */
public record Known(
        Optional<FanType> type,
        Optional<Quantity> exitArea,
        Optional<Quantity> tip,
        Optional<Quantity> hub) {

    public Known {
        if (tip.isPresent() && hub.isPresent() && hub.get().si() >= tip.get().si()) {
            throw new IllegalArgumentException("a hub is smaller than the tip");
        }
    }

    /** Nothing at all. */
    public static final Known NOTHING =
            new Known(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Area of the jet, m²; empty where nothing tells it. */
    Optional<Double> exitM2() {
        if (exitArea.isPresent()) {
            return exitArea.map(Quantity::si);
        }
        if (tip.isPresent() && hub.isPresent()) {
            return Optional.of(FanLaw.annulusM2(tip.get().si(), hub.get().si()));
        }
        return type.map(one -> one.exitArea().si());
    }

    /** Rotor diameter, m; empty where nothing tells it. */
    Optional<Double> tipM() {
        return tip.map(Quantity::si).or(() -> type.map(one -> one.tip().si()));
    }

    /**
     * For the fit. Without a type nothing is known of the motor, and the controller is taken as the
     * rig file's defaults have it.
     *
     * @param tipM that stands in where nothing tells it, m
     */
    FanPriors priors(double tipM) {
        return type.map(FanPriors::of)
                .map(
                        own ->
                                new FanPriors(
                                        own.speedConstant(),
                                        own.winding(),
                                        own.noLoad(),
                                        own.onResistance(),
                                        own.switching(),
                                        own.fixedPower(),
                                        tipM().orElse(own.tipM())))
                .orElseGet(
                        () ->
                                new FanPriors(
                                        Optional.empty(),
                                        Optional.empty(),
                                        Optional.empty(),
                                        ControllerKeys.usual(ControllerKeys.ON_RESISTANCE).si(),
                                        ControllerKeys.usual(ControllerKeys.SWITCHING_LOSS),
                                        ControllerKeys.usual(ControllerKeys.FIXED_POWER).si(),
                                        tipM().orElse(tipM)));
    }
}
