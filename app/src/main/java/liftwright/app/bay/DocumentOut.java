package liftwright.app.bay;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.JsonText;
import liftwright.plant.move.Mover;
import liftwright.rig.Problem;
import liftwright.rig.draft.DraftView;
import liftwright.rig.draft.FoundProblem;
import liftwright.rig.draft.Outline;
import liftwright.rig.draft.ShownPart;
import liftwright.rig.text.Span;

/** A draft as the page reads it. */
final class DocumentOut {

    private final JsonText json;

    private DocumentOut(JsonText json) {
        this.json = json;
    }

    /**
     * Writes a draft.
     *
     * @param rig the name that the page asked for
     */
    static void write(String rig, DraftView view, JsonText json) {
        new DocumentOut(json).document(rig, view);
    }

    private void document(String rig, DraftView view) {
        var reading = view.reading();
        Optional<Mover> mover = Mover.of(reading);
        json.object(
                () -> {
                    json.member("rig", rig)
                            .member("revision", view.revision())
                            .member("text", reading.text().text())
                            .name("saved")
                            .truth(view.saved())
                            .name("readable")
                            .truth(reading.rig().isPresent())
                            .each("problems", FoundProblem.of(reading), this::problem)
                            .each("parts", ShownPart.of(reading), part -> part(part, mover))
                            .each("outline", Outline.of(reading.text()), this::node)
                            .member("undo", view.undo())
                            .member("redo", view.redo());
                    view.conflict().ifPresent(this::conflict);
                    json.member("told", view.told());
                });
    }

    private void conflict(DraftView.Conflict conflict) {
        json.name("conflict")
                .object(
                        () ->
                                json.member("diskText", conflict.diskText())
                                        .member("sentence", conflict.sentence()));
    }

    private void problem(FoundProblem found) {
        Problem problem = found.problem();
        json.object(
                () -> {
                    json.member("code", word(problem.code()))
                            .member("severity", problem.code().isError() ? "error" : "note")
                            .name("line")
                            .whole(found.span().line())
                            .name("column")
                            .whole(found.span().column());
                    ends(found.span());
                    json.member("path", problem.at().path())
                            .member("found", found.found())
                            .member("expected", problem.expected())
                            .member("suggestion", problem.advice());
                });
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A part that merely stands where a mirror image would has a twin too. */
    private void part(ShownPart part, Optional<Mover> mover) {
        Optional<String> why = mover.flatMap(m -> m.whyNot(part.id()));
        Optional<String> twin = part.twin().or(() -> mover.flatMap(m -> m.twin(part.id())));
        json.object(
                () -> {
                    json.member("id", part.id())
                            .member("kind", word(part.kind()))
                            .member("path", part.path().toString())
                            .name("line")
                            .whole(part.span().line());
                    ends(part.span());
                    json.name("movable")
                            .truth(why.isEmpty())
                            .member("why", why)
                            .member("twin", twin);
                });
    }

    private void node(Outline node) {
        json.object(
                () -> {
                    json.member("path", node.path().toString())
                            .member("key", node.key())
                            .member("value", node.value())
                            .name("line")
                            .whole(node.span().line());
                    ends(node.span());
                    json.each("children", List.copyOf(node.children()), this::node);
                });
    }

    private void ends(Span span) {
        json.name("from").whole(span.from()).name("to").whole(span.to());
    }
}
