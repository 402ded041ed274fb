package liftwright.app.bay;

import java.util.List;
import liftwright.answer.CompareFields;
import liftwright.answer.Fields;
import liftwright.answer.JsonText;
import liftwright.answer.Value;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.Sensitivities;
import liftwright.review.Sensitivity;

/** Sensitivities for sliders: every text that the page shows, and every change it may try. */
final class SensitivitiesOut {

    private final ReaderTexts texts;
    private final String moved;

    private SensitivitiesOut(Sensitivities of, UnitSystem units) {
        texts = new ReaderTexts(units);
        moved = CompareFields.change(Fields.of(of.field()).measure());
    }

    static String of(Sensitivities told, UnitSystem units) {
        var out = new SensitivitiesOut(told, units);
        var json = new JsonText();
        json.object(
                () -> {
                    json.member("judged", Fields.of(told.field()).label());
                    json.each(
                            "sensitivities",
                            told.inputs(),
                            one -> json.object(() -> out.one(one, json)));
                });
        return json.toString();
    }

    private void one(Sensitivity one, JsonText json) {
        json.member("path", one.at().toString());
        json.member("label", AnswerLines.harmless(one.label()));
        Value moves = Value.of(moved, one.moves());
        json.name("moves").number(one.moves());
        json.member("shownMoves", texts.value(moves));
        one.varianceShare()
                .ifPresent(
                        share -> {
                            json.name("share").number(share);
                            json.member(
                                    "shownShare",
                                    texts.value(Value.of("sensitivity-share", share)));
                        });
        List<String> stops = one.stops();
        json.texts("stops", stops);
        json.each("shown", stops, stop -> json.text(AnswerLines.harmless(stop)));
    }
}
