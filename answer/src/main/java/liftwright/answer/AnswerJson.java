package liftwright.answer;

import java.util.Optional;
import liftwright.quantity.Band;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.rig.Change;

/**
 * An answer as one line of JSON (docs/reference/answers.md): SI with every unit named, no clock
 * time, equal bytes for equal answers. The shape is {@link AnswerSchema}; within its major version
 * members are added and never taken away or given another meaning.
 */
public final class AnswerJson {

    private static final QuantityFormat SHOWN = new QuantityFormat(UnitSystem.SI, false);

    private final JsonText json = new JsonText();

    private AnswerJson() {}

    /**
     * @param answer to write
     * @param rigName as declared; left out when blank
     * @param toolVersion of the program
     * @return one line without its end
     * @throws IllegalStateException if the answer claims more than its own checks allow
     */
    public static String write(Answer answer, String rigName, String toolVersion) {
        Checks.requireHonest(answer);
        var writer = new AnswerJson();
        writer.document(answer, rigName, toolVersion);
        return writer.json.toString();
    }

    private void document(Answer answer, String rigName, String toolVersion) {
        Evidence evidence = answer.evidence();
        json.object(
                () -> {
                    json.member("schema", AnswerSchema.id(answer.question()));
                    json.name("tool")
                            .object(
                                    () ->
                                            json.member("name", "liftwright")
                                                    .member("version", toolVersion));
                    json.name("rig")
                            .object(
                                    () -> {
                                        if (!rigName.isBlank()) {
                                            json.member("name", rigName);
                                        }
                                        json.member("digest", evidence.rigDigest());
                                    });
                    json.member("corrections", evidence.correctionsDigest());
                    json.name("seed").whole(evidence.seed());
                    json.name("answer").object(() -> members(answer));
                });
    }

    private void members(Answer answer) {
        json.member("question", answer.question());
        json.name("verdict").object(() -> verdict(answer.verdict()));
        var numbers = new RemedyNumbers();
        json.each("findings", answer.findings(), f -> json.object(() -> finding(f, numbers)));
        json.each("sections", answer.sections(), s -> json.object(() -> section(s)));
        json.name("evidence").object(() -> evidence(answer.evidence()));
    }

    private void verdict(Verdict verdict) {
        json.member("outcome", verdict.outcome().label());
        sentence("sentence", verdict.sentence());
        verdict.wouldTell()
                .ifPresent(
                        tell ->
                                json.name("wouldTell")
                                        .object(
                                                () -> {
                                                    json.member("path", tell.path());
                                                    sentence("sentence", tell.sentence());
                                                    json.name("bandShare").number(tell.bandShare());
                                                }));
        json.texts("downgrades", verdict.downgrades());
    }

    private void finding(Finding finding, RemedyNumbers numbers) {
        json.member("severity", severity(finding.severity()));
        json.member("code", finding.code());
        json.member("part", finding.part());
        json.member("path", finding.path());
        sentence("sentence", finding.sentence());
        finding.value().ifPresent(value -> value("value", value));
        finding.limit()
                .ifPresent(
                        limit ->
                                json.name("limit")
                                        .object(
                                                () -> {
                                                    value("value", limit.value());
                                                    json.member("origin", limit.origin());
                                                }));
        json.member("cause", finding.cause());
        json.each("remedies", finding.remedies(), r -> json.object(() -> remedy(r, numbers)));
    }

    private static String severity(Finding.Severity severity) {
        return switch (severity) {
            case STOPS -> "stops";
            case WARNS -> "warns";
            case NOTES -> "notes";
        };
    }

    private void remedy(Remedy remedy, RemedyNumbers numbers) {
        json.name("number").whole(numbers.next());
        sentence("name", remedy.name());
        json.each("changes", remedy.changes(), c -> json.object(() -> change(c)));
        json.name("effect").object(() -> effect(remedy.effect()));
    }

    private void change(Change change) {
        switch (change) {
            case Change.Set set -> change("set", set).member("value", set.value());
            case Change.Add add ->
                    change("add", add).member("key", add.key()).member("value", add.value());
            case Change.Remove remove -> change("remove", remove);
            case Change.Replace replace ->
                    change("replace", replace).member("value", replace.value());
            case Change.Move move -> change("move", move).name("index").whole(move.index());
        }
    }

    private JsonText change(String kind, Change change) {
        return json.member("kind", kind).member("at", change.at().toString());
    }

    private void effect(Remedy.Effect effect) {
        switch (effect) {
            case Remedy.Effect.Clears clears -> {
                json.member("kind", "clears");
                value("after", clears.after());
                value("difference", clears.difference());
                sentence("step", clears.step());
            }
            case Remedy.Effect.Helps helps -> {
                json.member("kind", "helps");
                value("after", helps.after());
                value("difference", helps.difference());
            }
            case Remedy.Effect.Refused refused -> {
                json.member("kind", "refused");
                sentence("reason", refused.reason());
            }
        }
    }

    private void section(Section section) {
        switch (section) {
            case Section.Waterfall waterfall -> {
                heading("waterfall", waterfall);
                step("start", waterfall.start());
                json.each("steps", waterfall.steps(), s -> json.object(() -> step(s)));
                step("end", waterfall.end());
                step("against", waterfall.against());
            }
            case Section.Table table -> table(table);
            case Section.Drawing drawing -> {
                heading("drawing", drawing);
                json.each("layers", drawing.layers(), layer -> json.object(() -> table(layer)));
            }
            case Section.Plot plot -> {
                heading("plot", plot);
                axis("x", plot.x());
                axis("y", plot.y());
                json.each("series", plot.series(), s -> json.object(() -> series(s)));
            }
        }
    }

    private void table(Section.Table table) {
        heading("table", table);
        json.texts("columns", table.columns());
        json.each(
                "rows",
                table.rows(),
                row -> json.array(() -> row.forEach(value -> json.object(() -> value(value)))));
    }

    private void axis(String name, String field) {
        json.name(name)
                .object(
                        () ->
                                json.member("field", field)
                                        .member("unit", SiUnit.of(Fields.of(field).measure())));
    }

    private void series(Section.Plot.Series series) {
        json.member("label", series.label());
        json.member(
                "mark",
                switch (series.mark()) {
                    case DOT -> "dot";
                    case CROSS -> "cross";
                    case LINE -> "line";
                    case DASHES -> "dashes";
                });
        json.each(
                "points",
                series.points(),
                point -> json.array(() -> json.number(point.x()).number(point.y())));
    }

    private void heading(String kind, Section section) {
        json.member("kind", kind).member("id", section.id()).member("title", section.title());
    }

    private void step(String name, Section.Waterfall.Step step) {
        json.name(name).object(() -> step(step));
    }

    private void step(Section.Waterfall.Step step) {
        json.member("label", step.label());
        value("value", step.value());
        json.member("note", step.note());
    }

    private void sentence(String name, Sentence sentence) {
        json.each(name, sentence.parts(), this::part);
        json.member("text", joined(sentence));
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

    private void value(String name, Value value) {
        json.name(name).object(() -> value(value));
    }

    private void value(Value value) {
        json.member("field", value.field());
        switch (value.figure()) {
            case Value.Figure.Amount amount -> {
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

    private void evidence(Evidence evidence) {
        json.name("draws").whole(evidence.draws());
        sentence("state", evidence.state());
        json.each(
                "laws",
                evidence.laws(),
                law ->
                        json.object(
                                () ->
                                        json.member("name", law.name())
                                                .member("source", law.source())
                                                .member("validity", law.validity())
                                                .name("within")
                                                .truth(law.within())));
        json.each(
                "assumptions",
                evidence.assumptions(),
                assumption ->
                        json.object(
                                () ->
                                        json.member("path", assumption.path())
                                                .member("value", assumption.value())
                                                .member("origin", assumption.origin())));
        json.each("checks", evidence.checks(), check -> json.object(() -> check(check)));
        json.each(
                "measured",
                evidence.measured(),
                told ->
                        json.object(
                                () -> {
                                    json.member("part", told.part());
                                    sentence("sentence", told.sentence());
                                }));
    }

    private void check(Evidence.Check check) {
        json.member("name", check.name());
        json.name("residual");
        // What could not even be computed has no number; it has failed all the same.
        Optional.of(check.residual())
                .filter(Double::isFinite)
                .ifPresentOrElse(json::number, json::nothing);
        json.name("allowed").number(check.allowed());
        json.name("passed").truth(check.passed());
    }

    /** Remedies count from 1 through the whole answer: the number that the command line takes. */
    private static final class RemedyNumbers {
        private int last;

        int next() {
            return ++last;
        }
    }
}
