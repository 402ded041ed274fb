package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What searches for better arrangements say. */
final class SearchFields {

    private static final String SPINS = "SearchesTest.theBestSpinsAreThoseOfAllTried";
    private static final String CANT = "SearchesTest.cantCostsLiftAndBuysYaw";
    private static final String PAIRING = "SearchesTest.theBestPairingIsThatOfAllTried";
    private static final String STATICS = "statics";

    private static Field field(
            String id, String label, Measure measure, String meaning, String formula, String test) {
        return new Field(id, label, measure, meaning, formula, STATICS, test);
    }

    private static Field words(String id, String label, String meaning) {
        return new Field(id, label, Measure.COUNT, meaning, "named", "the search", SPINS);
    }

    static final List<Field> ROWS =
            List.of(
                    words(
                            "spin-pattern",
                            "spins",
                            "Spins as declared, or the best that were found."),
                    field(
                            "worst-yaw",
                            "greatest yaw",
                            Measure.ANGULAR_ACCELERATION,
                            "Greatest angular acceleration about the upright axis over throttles from half of lift-off to full and over the doubt of swirl, all fans at one throttle.",
                            "greatest of the yaw moments over the inertia",
                            SPINS),
                    field(
                            "worst-yaw-gain",
                            "change in greatest yaw",
                            Measure.ANGULAR_ACCELERATION,
                            "Greatest yaw with the other spins less that with those declared.",
                            "difference of two computed rigs",
                            SPINS),
                    field(
                            "worst-yaw-bound",
                            "none below",
                            Measure.ANGULAR_ACCELERATION,
                            "No spins have a greatest yaw below this; 0 where the best is below 0.001 rad/s², as good as none.",
                            "branch and bound over all spins",
                            "SignChoiceTest.isTheBestOfAllThereAre"),
                    field(
                            "reversed-fans",
                            "fans reversed",
                            Measure.COUNT,
                            "Fans that must turn the other way.",
                            "counted; the fewest of all spins with the same greatest yaw",
                            "SignChoiceTest.isTheBestOfAllThereAre"),
                    words("search-proof", "proof", "Whether the search went through all there is."),
                    field(
                            "cant-added",
                            "cant added",
                            Measure.ANGLE,
                            "How far each fan that can is leant along its circle about the upright axis, the way its own swirl turns the rig.",
                            "whole degrees from 0 to 15",
                            CANT),
                    field(
                            "cant-yaw-reserve",
                            "yaw reserve",
                            Measure.ANGULAR_ACCELERATION,
                            "Lesser of the two yaw reserves of the rig with that cant.",
                            "linear programme over the fans' shares, over inertia; rig computed anew",
                            CANT),
                    field(
                            "cant-lift",
                            "most lift",
                            Measure.THRUST,
                            "Most lift without roll, pitch and yaw of the rig with that cant.",
                            "linear programme over the fans' shares; rig computed anew",
                            CANT),
                    field(
                            "cant-lift-lost",
                            "lift lost",
                            Measure.THRUST,
                            "Most lift without added cant less that with it.",
                            "difference of two computed rigs",
                            CANT),
                    field(
                            "pack-loss-tilt",
                            "as wired",
                            Measure.ANGULAR_ACCELERATION,
                            "Roll and pitch acceleration, as one length, in the moment after the pack is lost, the other fans at the thrust of lift-off.",
                            "length of roll and pitch of the inverse inertia times the moments of the other fans",
                            PAIRING),
                    field(
                            "paired-loss-tilt",
                            "best found",
                            Measure.ANGULAR_ACCELERATION,
                            "The same with the best pairing that was found, rig computed anew.",
                            "length of roll and pitch of the inverse inertia times the moments of the other fans",
                            PAIRING),
                    field(
                            "worst-loss-tilt",
                            "tilt after a pack is lost",
                            Measure.ANGULAR_ACCELERATION,
                            "Greatest of these over all packs.",
                            "greatest over the packs",
                            PAIRING),
                    field(
                            "worst-loss-tilt-gain",
                            "change in tilt",
                            Measure.ANGULAR_ACCELERATION,
                            "The greatest with the other pairing less that as wired.",
                            "difference of two computed rigs",
                            PAIRING));

    private SearchFields() {}
}
