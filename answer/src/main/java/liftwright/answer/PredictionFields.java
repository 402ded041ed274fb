package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What the instruments of a test card are to show. */
final class PredictionFields {

    private static final String BANDS = "PredictedBandsTest.bandsHoldWhatARicherModelShows";
    private static final String ABORTS = "AbortValuesTest.aStopAtTheValueComesBeforeTheLimit";
    private static final String RUN = "the run of the card on packs, wires and fans that warm";
    private static final String STEPPED = "heat and charge stepped with the solved network";

    static final List<Field> ROWS =
            List.of(
                    read(
                            "card-thrust",
                            "thrust",
                            Measure.THRUST,
                            "Thrust of the fans that run, summed along their axes."),
                    read(
                            "card-mount-thrust",
                            "thrust of mount",
                            Measure.THRUST,
                            "Thrust of the fans of one mount, summed along their axes."),
                    new Field(
                            "card-scale",
                            "scale",
                            Measure.MASS,
                            "What the scale shows: weight less lift, plus what jets push onto its platform.",
                            RUN,
                            STEPPED,
                            "PredictionsTest.jetsOnThePlatformHideSomeOfTheLift"),
                    read(
                            "card-tether-load",
                            "load in tether",
                            Measure.THRUST,
                            "What of the weight the thrust leaves to the tether."),
                    read(
                            "card-pack-current",
                            "pack current",
                            Measure.CURRENT,
                            "Current of the pack that gives most."),
                    read(
                            "card-cell-voltage",
                            "lowest cell",
                            Measure.VOLTAGE,
                            "Least voltage of any cell under load."),
                    read(
                            "card-fan-speed",
                            "fan speed",
                            Measure.ROTATION,
                            "Speed of the fastest fan."),
                    read(
                            "card-winding-current",
                            "winding current",
                            Measure.CURRENT,
                            "Winding current of the fan that takes most."),
                    read(
                            "card-wire",
                            "wire",
                            Measure.TEMPERATURE,
                            "Copper of the wire nearest its limit."),
                    read("card-joint", "joint", Measure.TEMPERATURE, "Joint nearest its limit."),
                    read(
                            "card-controller",
                            "controller",
                            Measure.TEMPERATURE,
                            "Switches of the controller nearest its limit."),
                    read(
                            "card-winding",
                            "winding",
                            Measure.TEMPERATURE,
                            "Winding nearest its limit."),
                    read(
                            "card-magnets",
                            "magnets",
                            Measure.TEMPERATURE,
                            "Motor case nearest the limit of its magnets."),
                    read("card-cells", "cells", Measure.TEMPERATURE, "Core of the warmest cells."),
                    read(
                            "card-charge-left",
                            "charge left",
                            Measure.PERCENT,
                            "Share of charge left in the emptiest pack."),
                    read(
                            "card-energy",
                            "energy",
                            Measure.ENERGY,
                            "Energy given by all packs since the start of the run."),
                    stop(
                            "card-height",
                            "height",
                            Measure.LENGTH,
                            "Height of the lowest part of the rig above the ground."),
                    stop("card-time", "time", Measure.TIME, "Time since the start of the run."));

    private PredictionFields() {}

    private static Field read(String id, String label, Measure measure, String meaning) {
        return new Field(id, label, measure, meaning, RUN, STEPPED, BANDS);
    }

    private static Field stop(String id, String label, Measure measure, String meaning) {
        return new Field(id, label, measure, meaning, "read beside the run", "definition", ABORTS);
    }
}
