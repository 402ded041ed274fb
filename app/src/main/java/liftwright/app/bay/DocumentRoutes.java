package liftwright.app.bay;

import java.io.IOException;
import java.util.List;
import liftwright.app.bay.FaultException.Kind;
import liftwright.rig.complete.Completion;
import liftwright.rig.draft.Draft;
import liftwright.rig.draft.DraftView;
import liftwright.rig.draft.Outcome;

/** What the page asks of a rig file: to read it, to edit it, to save it. */
final class DocumentRoutes {

    private final Bay bay;

    DocumentRoutes(Bay bay) {
        this.bay = bay;
        bay.atTheEnd(bay.drafts()::close);
    }

    List<Route> routes() {
        return List.of(
                Route.of("document", this::document),
                Route.of("change", call -> edited(call, DocumentRoutes::change)),
                Route.ofText("text", call -> edited(call, DocumentRoutes::text)),
                Route.of("undo", call -> edited(call, (draft, _, base) -> draft.undo(base))),
                Route.of("redo", call -> edited(call, (draft, _, base) -> draft.redo(base))),
                Route.of("save", call -> edited(call, (draft, _, base) -> draft.save(base))),
                Route.of("resolve", call -> edited(call, DocumentRoutes::resolve)),
                Route.ofText("complete", this::complete));
    }

    private Reply document(Call call) {
        String rig = call.body().text("rig");
        Draft draft = bay.drafts().of(rig);
        try {
            draft.look();
        } catch (IOException e) {
            // What the disk holds now could not be merged: the draft as it stood is still right.
            return shown(rig, draft.view());
        }
        return shown(rig, draft.view());
    }

    /** One edit of a draft. */
    private interface Edit {
        Outcome make(Draft draft, Json.Members body, String base) throws IOException;
    }

    private Reply edited(Call call, Edit edit) {
        String rig = call.body().text("rig");
        String base = call.body().text("base");
        Draft draft = bay.drafts().of(rig);
        try {
            return switch (edit.make(draft, call.body(), base)) {
                case Outcome.Done(var view) -> shown(rig, view);
                case Outcome.Stale(var view, var sentence) ->
                        throw fault(Kind.STALE, sentence, rig, view);
                case Outcome.Refused(var view, var sentence) ->
                        throw fault(Kind.REFUSED, sentence, rig, view);
                case Outcome.Conflicting(var view, var sentence) ->
                        throw fault(Kind.CONFLICT, sentence, rig, view);
            };
        } catch (IOException e) {
            throw fault(
                    Kind.INTERNAL,
                    "The disk could not be written: nothing was done. Is it full, or may this"
                            + " program not write there?",
                    rig,
                    draft.view());
        }
    }

    private static Outcome change(Draft draft, Json.Members body, String base) throws IOException {
        return draft.change(base, ChangesIn.of(body), body.text("label"));
    }

    private static Outcome text(Draft draft, Json.Members body, String base) throws IOException {
        return draft.text(base, body.text("text"));
    }

    private static Outcome resolve(Draft draft, Json.Members body, String base) throws IOException {
        String take = body.text("take");
        return switch (take) {
            case "mine" -> draft.resolve(base, Draft.Side.MINE);
            case "disk" -> draft.resolve(base, Draft.Side.DISK);
            default -> throw FaultException.badRequest("The member take is mine or disk.");
        };
    }

    private Reply complete(Call call) {
        var completion = Completion.at(call.body().text("text"), call.body().whole("from"));
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.name("from")
                                                .whole(completion.from())
                                                .name("to")
                                                .whole(completion.to())
                                                .each(
                                                        "options",
                                                        completion.options(),
                                                        option ->
                                                                json.object(
                                                                        () ->
                                                                                json.member(
                                                                                                "label",
                                                                                                option
                                                                                                        .label())
                                                                                        .member(
                                                                                                "insert",
                                                                                                option
                                                                                                        .insert())
                                                                                        .member(
                                                                                                "detail",
                                                                                                option
                                                                                                        .detail())))));
    }

    private static Reply shown(String rig, DraftView view) {
        return Reply.json(json -> DocumentOut.write(rig, view, json));
    }

    private static FaultException fault(Kind kind, String sentence, String rig, DraftView view) {
        return new FaultException(kind, sentence, json -> DocumentOut.write(rig, view, json));
    }
}
