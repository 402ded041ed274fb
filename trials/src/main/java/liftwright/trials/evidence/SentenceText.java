package liftwright.trials.evidence;

import liftwright.answer.Sentence;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;

/** Sentences of the review in SI, for reasons that stand in a single line. */
final class SentenceText {

    private static final QuantityFormat SI = new QuantityFormat(UnitSystem.SI, false);

    private SentenceText() {}

    static String of(Sentence sentence) {
        var text = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            switch (part) {
                case Sentence.Part.Words(var words) -> text.append(words);
                case Sentence.Part.Amount(var measure, double si, var band) ->
                        text.append(
                                band.map(b -> SI.amountWithBand(measure, si, b))
                                        .orElseGet(() -> SI.amount(measure, si)));
            }
        }
        return text.toString();
    }
}
