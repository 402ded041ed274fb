package liftwright.learning.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.learning.explain.Explained;
import liftwright.learning.replay.Event;
import liftwright.learning.replay.MissingLift;
import liftwright.learning.replay.Replay;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;

/** The first line: did the test give what was predicted, and what is missing. */
final class LearningVerdict {

    private LearningVerdict() {}

    static Verdict of(Replay replay, Explained explained) {
        List<String> downgrades = new ArrayList<>();
        if (replay.lift().isEmpty()) {
            return new Verdict(
                    Outcome.CANNOT_BE_TOLD,
                    Sentence.words(
                            "neither the thrust of all, nor a scale, nor the load in a tether tells"
                                    + " lift under load; "
                                    + cause(explained)),
                    Optional.empty(),
                    downgrades);
        }
        MissingLift lift = replay.lift().get();
        Optional<Event> failed =
                replay.events().stream().filter(LearningVerdict::fails).findFirst();
        if (lift.isWithin() && failed.isEmpty()) {
            return new Verdict(
                    Outcome.HOLDS,
                    Sentence.words("the test gave ")
                            .then(Measure.THRUST, lift.measuredN())
                            .then(" of lift where ")
                            .then(Measure.THRUST, lift.predictedN())
                            .then(" were predicted, within the bands" + yet(explained)),
                    Optional.empty(),
                    downgrades);
        }
        return new Verdict(
                Outcome.DOES_NOT_HOLD,
                missing(lift, failed).then("; " + cause(explained)),
                Optional.empty(),
                downgrades);
    }

    /** A cause can be plain in other channels and small in lift. */
    private static String yet(Explained explained) {
        return switch (explained.finding()) {
            case FOUND, CANNOT_BE_TOLD_APART -> "; " + cause(explained);
            case NOTHING_BEYOND_DECLARED, NONE_OF_THESE, CANNOT_BE_TOLD -> "";
        };
    }

    /** Something without which nothing can be as predicted. */
    static boolean fails(Event event) {
        return switch (event.kind()) {
            case NEVER_TURNED, FAN_STOPPED, CURRENT_GONE, RAN_AWAY, BROWN_OUT, THROTTLE_MOVED ->
                    true;
            case LOST_SPEED, LOST_CURRENT, SAG, LIMIT_REACHED, TURNING, ENDS_AT_LOAD -> false;
        };
    }

    private static Sentence missing(MissingLift lift, Optional<Event> failed) {
        Sentence happened =
                failed.map(
                                event ->
                                        Sentence.words(event.part() + " " + event.kind().words())
                                                .then(" at ")
                                                .then(Measure.TIME, event.timeS())
                                                .then(": "))
                        .orElse(Sentence.start());
        boolean less = lift.missingN() >= 0;
        return happened.then(Measure.THRUST, Math.abs(lift.missingN()), band(lift))
                .then(less ? " of " : " more than ")
                .then(Measure.THRUST, lift.predictedN())
                .then(less ? " of lift are missing" : " of lift were measured");
    }

    private static Band band(MissingLift lift) {
        var of = lift.band();
        return lift.missingN() >= 0
                ? of
                : new Band(
                        -of.high(),
                        -of.low(),
                        of.coverage(),
                        of.method(),
                        of.draws(),
                        of.monteCarloError());
    }

    /** What can be said of the cause. */
    static String cause(Explained explained) {
        String named =
                explained.named().stream()
                        .map(weighed -> weighed.cause().words())
                        .collect(Collectors.joining(" and "));
        String either =
                explained.named().stream()
                        .map(weighed -> weighed.cause().words())
                        .collect(Collectors.joining(", "));
        return switch (explained.finding()) {
            case NOTHING_BEYOND_DECLARED ->
                    "nothing beyond what was declared is needed to explain it";
            case FOUND -> "most likely: " + named;
            case CANNOT_BE_TOLD_APART -> "one of these, which cannot be told apart: " + either;
            case NONE_OF_THESE -> "none of the causes on the list explains it";
            case CANNOT_BE_TOLD -> "the cause cannot be told";
        };
    }
}
