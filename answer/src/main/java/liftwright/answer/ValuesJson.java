package liftwright.answer;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import liftwright.quantity.Band;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;

/** Values and sentences in JSON, with texts for a reader where somebody gives them. */
final class ValuesJson {

    private static final QuantityFormat SHOWN = new QuantityFormat(UnitSystem.SI, false);

    private final JsonText json;
    private final Optional<Texts> texts;

    /** Fields that occur, with the greatest number shown of each. */
    private final Map<String, Double> sizes = new TreeMap<>();

    ValuesJson(JsonText json, Optional<Texts> texts) {
        this.json = json;
        this.texts = texts;
    }

    void sentence(String name, Sentence sentence) {
        sentence(name, "shown", sentence);
    }

    /**
     * @param shown name of the text for the reader
     */
    void sentence(String name, String shown, Sentence sentence) {
        json.each(name, sentence.parts(), this::part);
        json.member("text", joined(sentence));
        texts.ifPresent(reader -> json.member(shown, reader.sentence(sentence)));
    }

    /** For programs that only show it: amounts rounded, in SI, no-break spaces as plain ones. */
    private static String joined(Sentence sentence) {
        var text = new StringBuilder();
        for (Sentence.Part part : sentence.parts()) {
            switch (part) {
                case Sentence.Part.Words words -> text.append(words.text());
                case Sentence.Part.Amount amount ->
                        text.append(shown(amount).replace('\u00a0', ' '));
            }
        }
        return text.toString();
    }

    private static String shown(Sentence.Part.Amount amount) {
        return amount.band()
                .map(band -> SHOWN.amountWithBand(amount.measure(), amount.si(), band))
                .orElseGet(() -> SHOWN.amount(amount.measure(), amount.si()));
    }

    private void part(Sentence.Part part) {
        switch (part) {
            case Sentence.Part.Words words -> json.text(words.text());
            case Sentence.Part.Amount amount ->
                    json.object(
                            () -> {
                                json.member("measure", SiUnit.word(amount.measure()));
                                json.name("si").number(amount.si());
                                json.member("unit", SiUnit.of(amount.measure()));
                                amount.band().ifPresent(this::band);
                            });
        }
    }

    void value(String name, Value value) {
        json.name(name).object(() -> value(value));
    }

    /** Shown to the digits that make sense beside a number of {@code sizeSi}. */
    void valueBeside(String name, Value value, double sizeSi) {
        json.name(name).object(() -> value(value, reader -> reader.beside(sizeSi, value)));
    }

    void value(Value value) {
        value(value, reader -> reader.value(value));
    }

    private void value(Value value, Function<Texts, String> shown) {
        json.member("field", value.field());
        occurs(value.field(), 0);
        switch (value.figure()) {
            case Value.Figure.Amount amount -> {
                occurs(value.field(), amount.si());
                json.member("kind", "amount");
                json.name("si").number(amount.si());
                json.member("unit", SiUnit.of(Fields.of(value.field()).measure()));
                amount.band().ifPresent(this::band);
            }
            case Value.Figure.Words words ->
                    json.member("kind", "words").member("text", words.text());
            case Value.Figure.Never _ -> json.member("kind", "never");
            case Value.Figure.NotComputed not ->
                    json.member("kind", "not computed").member("reason", not.reason());
        }
        texts.ifPresent(
                reader ->
                        json.member("shown", shown.apply(reader))
                                .member("shownBand", reader.band(value)));
    }

    /** Notes that a field is shown, for {@link #fields}. */
    void occurs(String field, double si) {
        sizes.merge(field, Math.abs(si), Math::max);
    }

    /** How each field that occurs is called and drawn, and what holds it; nothing without texts. */
    void fields() {
        texts.ifPresent(reader -> json.name("fields").object(() -> fields(reader)));
    }

    private void fields(Texts reader) {
        sizes.forEach(
                (id, size) -> {
                    Field field = Fields.of(id);
                    json.name(id).object(() -> field(field, reader.scale(field, size)));
                });
    }

    private void field(Field field, Texts.Scale scale) {
        json.member("label", field.label()).member("unit", scale.unit());
        json.member("meaning", field.meaning()).member("formula", field.formula());
        json.member("source", field.source()).member("test", field.test());
        json.name("per").number(scale.per());
        json.name("plus").number(scale.plus());
    }

    private void band(Band band) {
        json.name("band")
                .object(
                        () -> {
                            json.name("low").number(band.low());
                            json.name("high").number(band.high());
                            json.name("coverage").number(band.coverage());
                            json.member("method", band.method());
                            json.name("draws").whole(band.draws());
                            json.name("samplingError").number(band.monteCarloError());
                        });
    }
}
