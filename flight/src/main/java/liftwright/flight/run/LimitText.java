package liftwright.flight.run;

import liftwright.plant.Cause;
import liftwright.plant.Discharge;
import liftwright.rig.Rig;

/** Limits of supply and heat as events say them. */
final class LimitText {

    private LimitText() {}

    static String of(Cause cause) {
        return switch (cause) {
            case RESERVE -> "the charge kept for the landing is reached: it lands";
            case CELL_VOLTAGE -> "a cell is at its least voltage: it lands";
            case CELL_CURRENT -> "a cell gives its peak current";
            case CUT_OFF -> "a controller cuts off: it lands";
            case FULL_THROTTLE -> "full throttle no longer lifts: it lands";
            case EMPTY -> "a cell is empty: it lands";
            case OVERHEATED -> "a part is at its limit of temperature: it lands";
            case FUSE_OPENED -> "a fuse opens: it lands";
        };
    }

    /** Whether a flight ends by it, as endurance counts it. */
    static boolean grounds(Cause cause) {
        return switch (cause) {
            case CELL_CURRENT -> false;
            case RESERVE, CELL_VOLTAGE, CUT_OFF, FULL_THROTTLE, EMPTY, OVERHEATED, FUSE_OPENED ->
                    true;
        };
    }

    static String part(FlightCase flight, Discharge.End end) {
        if (end.part().isEmpty()) {
            return "";
        }
        int number = end.part().get();
        Rig rig = flight.plant().rig();
        return switch (end.cause()) {
            case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> rig.packs().get(number).id().text();
            case CUT_OFF -> rig.fans().get(number).id().text();
            case FULL_THROTTLE -> "";
            case OVERHEATED, FUSE_OPENED -> flight.plant().heatParts().get(number).id().text();
        };
    }
}
