package liftwright.answer;

import java.util.Optional;

/**
 * An answer as one line of JSON (docs/reference/answers.md): SI with every unit named, no clock
 * time, equal bytes for equal answers. The shape is {@link AnswerSchema}; within its major version
 * members are added and never taken away or given another meaning.
 */
public final class AnswerJson {

    private final JsonText json = new JsonText();
    private final Optional<Texts> texts;
    private final ValuesJson values;
    private final SectionsJson sections;

    private AnswerJson(Optional<Texts> texts) {
        this.texts = texts;
        values = new ValuesJson(json, texts);
        sections = new SectionsJson(json, values);
    }

    /**
     * @param answer to write
     * @param rigName as declared; left out when blank
     * @param toolVersion of the program
     * @return one line without its end
     * @throws IllegalStateException if the answer claims more than its own checks allow
     */
    public static String write(Answer answer, String rigName, String toolVersion) {
        return write(answer, rigName, toolVersion, Optional.empty());
    }

    /**
     * The same with texts for somebody who prints no number himself: beside each value {@code
     * shown} and {@code shownBand}, beside each sentence {@code shown}, in each remedy {@code
     * shownName} and {@code shownEffect}, and {@code fields}, which says how every field that
     * occurs is called and drawn on an axis. Without these members it is what the other method
     * writes.
     */
    public static String write(Answer answer, String rigName, String toolVersion, Texts texts) {
        return write(answer, rigName, toolVersion, Optional.of(texts));
    }

    private static String write(
            Answer answer, String rigName, String toolVersion, Optional<Texts> texts) {
        Checks.requireHonest(answer);
        var writer = new AnswerJson(texts);
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
                    json.texts("cautions", Cautions.ALL);
                    json.name("answer").object(() -> members(answer));
                    values.fields();
                });
    }

    private void members(Answer answer) {
        json.member("question", answer.question());
        json.name("verdict").object(() -> verdict(answer.verdict()));
        var numbers = new RemedyNumbers();
        json.each("findings", answer.findings(), f -> json.object(() -> finding(f, numbers)));
        json.each("sections", answer.sections(), s -> json.object(() -> sections.section(s)));
        json.name("evidence")
                .object(() -> new EvidenceJson(json, values).evidence(answer.evidence()));
    }

    private void verdict(Verdict verdict) {
        json.member("outcome", verdict.outcome().label());
        values.sentence("sentence", verdict.sentence());
        verdict.wouldTell()
                .ifPresent(
                        tell ->
                                json.name("wouldTell")
                                        .object(
                                                () -> {
                                                    json.member("path", tell.path());
                                                    values.sentence("sentence", tell.sentence());
                                                    json.name("bandShare").number(tell.bandShare());
                                                }));
        json.texts("downgrades", verdict.downgrades());
    }

    private void finding(Finding finding, RemedyNumbers numbers) {
        json.member("severity", severity(finding.severity()));
        json.member("code", finding.code());
        json.member("part", finding.part());
        json.member("path", finding.path());
        values.sentence("sentence", finding.sentence());
        finding.value().ifPresent(value -> values.value("value", value));
        finding.limit()
                .ifPresent(
                        limit ->
                                json.name("limit")
                                        .object(
                                                () -> {
                                                    values.value("value", limit.value());
                                                    json.member("origin", limit.origin());
                                                }));
        json.member("cause", finding.cause());
        json.each(
                "remedies",
                finding.remedies(),
                r -> json.object(() -> remedy(r, finding.severity(), numbers)));
    }

    private static String severity(Finding.Severity severity) {
        return switch (severity) {
            case STOPS -> "stops";
            case WARNS -> "warns";
            case NOTES -> "notes";
        };
    }

    private void remedy(Remedy remedy, Finding.Severity severity, RemedyNumbers numbers) {
        json.name("number").whole(numbers.next());
        values.sentence("name", "shownName", remedy.name());
        texts.ifPresent(reader -> json.member("shownEffect", reader.effect(remedy, severity)));
        json.each("changes", remedy.changes(), change -> ChangeJson.write(change, json));
        json.name("effect").object(() -> effect(remedy.effect()));
    }

    private void effect(Remedy.Effect effect) {
        switch (effect) {
            case Remedy.Effect.Clears clears -> {
                json.member("kind", "clears");
                values.value("after", clears.after());
                values.value("difference", clears.difference());
                values.sentence("step", clears.step());
            }
            case Remedy.Effect.Helps helps -> {
                json.member("kind", "helps");
                values.value("after", helps.after());
                values.value("difference", helps.difference());
            }
            case Remedy.Effect.Refused refused -> {
                json.member("kind", "refused");
                values.sentence("reason", refused.reason());
            }
        }
    }

    /** Remedies count from 1 through the whole answer: the number that the command line takes. */
    private static final class RemedyNumbers {
        private int last;

        int next() {
            return ++last;
        }
    }
}
