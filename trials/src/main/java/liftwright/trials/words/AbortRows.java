package liftwright.trials.words;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Card.Block;
import liftwright.answer.Section.Card.Style;
import liftwright.answer.Value;
import liftwright.trials.Abort;

/** Where to stop, and how much is left from there to the limit. */
final class AbortRows {

    private AbortRows() {}

    static List<Block> blocks(CardFacts facts) {
        List<Block> blocks = new ArrayList<>();
        if (!facts.aborts().isEmpty()) {
            List<List<Value>> rows = new ArrayList<>();
            facts.aborts().forEach(abort -> rows.add(row(abort)));
            blocks.add(
                    CardText.rows(
                            facts.planned().id(),
                            "aborts",
                            "Stop at once at any of these values",
                            List.of(
                                    "abort-of",
                                    "abort-side",
                                    "abort-value",
                                    "abort-time",
                                    "abort-predicted",
                                    "abort-limit",
                                    "abort-origin"),
                            rows));
        }
        if (facts.planned().run().isPresent() || facts.planned().killProof()) {
            blocks.add(
                    CardText.lines(
                            "Stop at once, too, when",
                            Style.PLAIN,
                            List.of(
                                    "anybody says stop, or walks where nobody should be;",
                                    "a reading is missing, stands still or lies outside its band;",
                                    "there is a smell, smoke, a new noise, a shake or a spark;",
                                    "a fan does something that was not ordered.")));
        }
        return blocks;
    }

    private static List<Value> row(Abort abort) {
        String field = abort.channel().field();
        return List.of(
                Value.words("abort-of", Steps.channel(abort.channel())),
                Value.words(
                        "abort-side",
                        switch (abort.side()) {
                            case ABOVE -> "at or above";
                            case BELOW -> "at or below";
                        }),
                switch (abort.value()) {
                    case Abort.Worth.At(double si, var _) -> Value.of(field, si);
                    case Abort.Worth.None(var reason) ->
                            new Value("abort-value", new Value.Figure.NotComputed(reason));
                },
                switch (abort.value()) {
                    case Abort.Worth.At(var _, double left) when Double.isFinite(left) ->
                            Value.of("abort-time", left);
                    case Abort.Worth.At _ -> new Value("abort-time", new Value.Figure.Never());
                    case Abort.Worth.None _ ->
                            new Value("abort-time", new Value.Figure.NotComputed("no such value"));
                },
                Value.of(field, abort.predictedSi()),
                Value.of(field, abort.limitSi()),
                Value.words("abort-origin", abort.limitOrigin()));
    }
}
