package liftwright.app.bay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.quantity.UnitSystem;
import liftwright.review.Stage;
import liftwright.rig.file.RigReading;

/**
 * What the page asks.
 *
 * @param rig its path from the folder
 * @param reading of the rig
 * @param questions in the order they are answered in
 * @param units of the reader
 * @param to the last stage that is wanted
 * @param profile that is flown, by the name of its file; empty for the first beside the rig
 * @param anew whether also what is known is to be computed once more
 */
record Asked(
        String rig,
        RigReading reading,
        List<Question> questions,
        UnitSystem units,
        Stage to,
        Optional<String> profile,
        boolean anew) {

    Asked {
        questions = List.copyOf(questions);
    }

    /**
     * What a request asks of a rig.
     *
     * @throws FaultException where it asks nothing that can be answered
     */
    static Asked of(Json.Members body, RigReading reading, Stage to) {
        List<Question> questions =
                body.texts("questions").stream().map(Question::of).distinct().toList();
        return new Asked(
                body.text("rig"),
                reading,
                questions,
                units(body.text("units")),
                to,
                body.optionalText("profile"),
                body.optional("anew").isPresent() && body.truth("anew"));
    }

    /** The same of another state of the rig. */
    Asked with(RigReading changed) {
        return new Asked(rig, changed, questions, units, to, profile, anew);
    }

    /**
     * The units that a word means.
     *
     * @throws FaultException where it means none
     */
    static UnitSystem units(String word) {
        return switch (word) {
            case "si" -> UnitSystem.SI;
            case "us" -> UnitSystem.US;
            default -> throw FaultException.badRequest("Units are si or us.");
        };
    }

    /** Number of a request among those of its page, which grows; empty where none is given. */
    static OptionalDouble turn(Json.Members body) {
        return body.optional("turn").isPresent()
                ? OptionalDouble.of(body.number("turn"))
                : OptionalDouble.empty();
    }

    /**
     * The stage that a word means.
     *
     * @throws FaultException where it means none
     */
    static Stage stage(String word) {
        for (Stage stage : Stage.values()) {
            if (stage.label().equals(word)) {
                return stage;
            }
        }
        throw FaultException.badRequest("There is no such stage of an answer.");
    }
}
