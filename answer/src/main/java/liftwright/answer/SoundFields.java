package liftwright.answer;

import java.util.List;
import liftwright.quantity.Measure;

/** What a recording of sound tells of the fans. */
final class SoundFields {

    private static final String HOW = "docs/explanation/speed-from-sound.md";
    private static final String SPEEDS = "ListeningTest.oneFanIsFollowedWithAnIntervalThatHolds";
    private static final String WHOSE = "ListeningTest.whoseLineItIsIsRightWhereItIsClaimed";

    static final List<Field> ROWS =
            List.of(
                    words("sound-fan", "fan", "A fan that was heard.", WHOSE),
                    words(
                            "sound-with",
                            "told with",
                            "Fans from which it cannot be told apart by its sound.",
                            WHOSE),
                    number(
                            "sound-time",
                            "time",
                            Measure.TIME,
                            "Time by the clock of the recording, when the sound left the fan.",
                            "middle of a window - distance / 340 m/s",
                            SPEEDS),
                    number(
                            "sound-from",
                            "heard from",
                            Measure.TIME,
                            "When a fan is first followed.",
                            "first window of its lines",
                            SPEEDS),
                    number(
                            "sound-to",
                            "to",
                            Measure.TIME,
                            "When a fan is last followed.",
                            "last window of its lines",
                            SPEEDS),
                    number(
                            "sound-speed",
                            "speed",
                            Measure.ROTATION,
                            "What a fan turned; in a table its median where it turned fastest.",
                            "2 pi f / blades, f = frequency at which blades pass",
                            SPEEDS),
                    number(
                            "sound-error",
                            "error",
                            Measure.ROTATION,
                            "95 % of errors of its speed are smaller, median over its windows.",
                            "1.96 sqrt(noise^2 + wander^2 + lateness^2 + clock^2 + Doppler^2)",
                            SPEEDS),
                    number(
                            "sound-mismatch",
                            "of mean",
                            Measure.PERCENT,
                            "A fan's speed over the mean of those that were heard, at the same moments, less one.",
                            "median over moments of speed / mean - 1",
                            "ListeningTest.mismatchIsWhatTheFansDiffer"));

    private SoundFields() {}

    private static Field words(String id, String label, String meaning, String test) {
        return new Field(id, label, Measure.COUNT, meaning, "in words", HOW, test);
    }

    private static Field number(
            String id, String label, Measure measure, String meaning, String formula, String test) {
        return new Field(id, label, measure, meaning, formula, HOW, test);
    }
}
