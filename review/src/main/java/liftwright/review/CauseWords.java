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
            case OVERHEATED -> "a part at its temperature limit";
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
            case FULL_THROTTLE -> rig.name();
            case OVERHEATED, FUSE_OPENED ->
                    throw new IllegalArgumentException("parts that warm have names of their own");
        };
    }

    /** The same in a run that is heated. */
    static String part(Rig rig, HeatParts parts, Cause cause, int part) {
        return switch (cause) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY, CUT_OFF, FULL_THROTTLE ->
                    part(rig, cause, part);
            case OVERHEATED, FUSE_OPENED -> parts.id(part);
        };
    }

    /** What ends a run that is heated, and where: {@code the reserve at p.2}. */
    static String told(Rig rig, HeatParts parts, Discharge.End end) {
        return end.part()
                .map(
                        part ->
                                switch (end.cause()) {
                                    case RESERVE,
                                            CELL_VOLTAGE,
                                            CELL_CURRENT,
                                            EMPTY,
                                            CUT_OFF,
                                            FULL_THROTTLE ->
                                            first(end.cause())
                                                    + " at "
                                                    + part(rig, end.cause(), part);
                                    case OVERHEATED -> "heat in the " + named(parts, part);
                                    case FUSE_OPENED -> "the opening of the " + named(parts, part);
                                })
                .orElseGet(() -> first(end.cause()));
    }

    private static String named(HeatParts parts, int part) {
        return parts.what(part) + " (" + parts.id(part) + ")";
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
            case OVERHEATED -> "it takes in more heat than it gives off until it is as hot as that";
            case FUSE_OPENED -> "a fuse carries heat from one moment to the next";
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
            case OVERHEATED -> Sentence.words("the limit of its temperature");
            case FUSE_OPENED -> Sentence.words("its curve of current against time");
        };
    }

    /** The limit itself, of a run that is heated. */
    static Sentence limit(Rig rig, HeatParts parts, Discharge.End end) {
        return switch (end.cause()) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY, CUT_OFF, FULL_THROTTLE, FUSE_OPENED ->
                    limit(rig, end.cause());
            case OVERHEATED ->
                    end.part()
                            .map(
                                    part ->
                                            Sentence.words("its limit is ")
                                                    .then(
                                                            Measure.TEMPERATURE,
                                                            parts.part(part).limitK()))
                            .orElseGet(() -> limit(rig, end.cause()));
        };
    }
}
