package liftwright.flight.run;

import java.util.Locale;
import liftwright.flight.profile.Profile;

/** Steps and aborts as events say them. */
final class StepWords {

    private StepWords() {}

    static String of(Profile.Step step) {
        return switch (step) {
            case Profile.Step.MakeLive _ -> "made live";
            case Profile.Step.Lift(double height, double _) ->
                    String.format(Locale.ROOT, "lift to %.1f m", height);
            case Profile.Step.Hold(double forS) ->
                    String.format(Locale.ROOT, "hold for %.0f s", forS);
            case Profile.Step.Move(var forward, var right, var _, var _) ->
                    String.format(
                            Locale.ROOT, "move to %.1f m forward, %.1f m right", forward, right);
            case Profile.Step.Turn(double by, double _) ->
                    String.format(Locale.ROOT, "turn by %.0f°", Math.toDegrees(by));
            case Profile.Step.Land _ -> "land";
            case Profile.Step.MakeDead _ -> "made dead";
        };
    }

    static String of(Profile.Abort abort) {
        String what =
                switch (abort.watch()) {
                    case TILT -> "tilt above " + number(Math.toDegrees(abort.level()), "°");
                    case DRIFT -> "drift above " + number(abort.level(), " m");
                    case HEIGHT -> "height above " + number(abort.level(), " m");
                    case SINK -> "sink above " + number(abort.level(), " m/s");
                    case CHARGE -> "charge below " + number(100 * abort.level(), " %");
                    case CELL -> "a cell below " + number(abort.level(), " V");
                };
        return switch (abort.then()) {
            case LAND -> "abort, " + what + ": it lands";
            case MAKE_DEAD -> "abort, " + what + ": made dead";
        };
    }

    private static String number(double value, String unit) {
        return String.format(Locale.ROOT, "%.3g", value) + unit;
    }
}
