package liftwright.review.wiring;

import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.rig.Element;
import liftwright.rig.Rig;

/** Wires of which nobody said what insulates them. */
final class Uncovered {

    private Uncovered() {}

    static List<Element.Run> runs(Rig rig) {
        return rig.wiring().chains().stream()
                .flatMap(chain -> chain.elements().stream())
                .filter(Element.Run.class::isInstance)
                .map(Element.Run.class::cast)
                .filter(run -> !run.covering().declared())
                .toList();
    }

    static Optional<Finding> finding(Rig rig) {
        List<Element.Run> runs = runs(rig);
        if (runs.isEmpty()) {
            return Optional.empty();
        }
        Element.Run first = runs.getFirst();
        double classK = first.covering().classK();
        return Optional.of(
                Finding.of(
                                Severity.WARNS,
                                "insulation-not-declared",
                                Sentence.words(
                                                "no insulation is declared for "
                                                        + first.id()
                                                        + Unfused.others(runs.size())
                                                        + ": taken as "
                                                        + first.covering().material().word()
                                                        + ", which bears ")
                                        .then(Measure.TEMPERATURE, classK),
                                "the least heat-proof stands in for what is not known: write “insulation”")
                        .about(first.id().text())
                        .at(first.declaredAt().toString())
                        .judging(Value.of("insulation-class", classK)));
    }
}
