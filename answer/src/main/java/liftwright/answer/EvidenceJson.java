package liftwright.answer;

import java.util.Optional;

/** What an answer rests on in JSON. */
final class EvidenceJson {

    private final JsonText json;
    private final ValuesJson values;

    EvidenceJson(JsonText json, ValuesJson values) {
        this.json = json;
        this.values = values;
    }

    void evidence(Evidence evidence) {
        json.name("draws").whole(evidence.draws());
        values.sentence("state", evidence.state());
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
                                    values.sentence("sentence", told.sentence());
                                }));
        if (!evidence.corrected().equals(Evidence.Corrected.NONE)) {
            json.name("corrected").object(() -> corrected(evidence.corrected()));
        }
    }

    private void corrected(Evidence.Corrected corrected) {
        json.name("held").whole(corrected.held());
        json.name("void").whole(corrected.voided());
        json.name("ofAnotherRevision").truth(corrected.ofAnotherRevision());
        json.texts("why", corrected.why());
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
}
