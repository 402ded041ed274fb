package liftwright.review;

import liftwright.answer.Sentence;
import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/** What ends a flight, in words. */
final class CauseWords {

    private CauseWords() {}

    static String first(Cause cause) {
        return switch (cause) {
            case RESERVE -> "the reserve";
            case CELL_VOLTAGE -> "the least cell voltage";
            case CELL_CURRENT -> "the peak current of a cell";
            case CUT_OFF -> "the cut-off of a controller";
            case FULL_THROTTLE -> "full throttle";
            case EMPTY -> "an empty cell";
            case OVERHEATED -> "the temperature of a part";
            case FUSE_OPENED -> "a fuse that opens";
        };
    }

    /** Where, as a sentence goes on; empty where the whole rig is meant. */
    static Sentence where(Rig rig, Discharge.End end) {
        return end.part()
                .map(part -> Sentence.words(" at " + part(rig, end.cause(), part)))
                .orElseGet(Sentence::start);
    }

    static String part(Rig rig, Cause cause, int part) {
        return switch (cause) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> rig.packs().get(part).id().text();
            case CUT_OFF -> rig.fans().get(part).id().text();
            case FULL_THROTTLE, OVERHEATED, FUSE_OPENED -> rig.name();
        };
    }

    /** Why it comes when it does. */
    static String why(Cause cause) {
        return switch (cause) {
            case RESERVE, CELL_VOLTAGE, EMPTY ->
                    "the weakest cell of a pack decides, not the mean of its cells";
            case CELL_CURRENT ->
                    "packs sag as they empty, and the same power asks for more current";
            case CUT_OFF ->
                    "packs sag as they empty, and a controller below its cut-off stops its motor";
            case FULL_THROTTLE ->
                    "packs sag as they empty, and the fans turn slower at full throttle";
            case OVERHEATED -> "losses go by the square of the current";
            case FUSE_OPENED -> "a fuse remembers the load before";
        };
    }

    /** The limit itself. */
    static Sentence limit(Rig rig, Cause cause) {
        return switch (cause) {
            case RESERVE ->
                    Sentence.start()
                            .then(Measure.PERCENT, rig.demands().reserve().si())
                            .then(" of charge left in the emptiest cell");
            case CELL_VOLTAGE ->
                    Sentence.start()
                            .then(Measure.VOLTAGE, rig.limits().si(LimitName.CELL_UNDER_LOAD))
                            .then(" at the weakest cell under load");
            case CELL_CURRENT -> Sentence.words("the declared peak current of a cell");
            case CUT_OFF -> Sentence.words("the declared cut-off of a controller");
            case FULL_THROTTLE -> Sentence.words("full throttle carries the weight no longer");
            case EMPTY -> Sentence.words("nothing left in the emptiest cell");
            case OVERHEATED -> Sentence.words("the limit of a part's temperature");
            case FUSE_OPENED -> Sentence.words("what a fuse carries");
        };
    }
}
