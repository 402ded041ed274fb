package liftwright.app.bay;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.record.PassWriting;
import liftwright.quantity.UnitSystem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;
import liftwright.trials.evidence.Gate;
import liftwright.trials.evidence.Pass;

/**
 * {@code card}: one card to be read; {@code sheet}: one to be printed; {@code pass}: what came of
 * one, written beside the rig file.
 */
final class CardRoutes {

    /** Longer than any name or note that a hand writes. */
    private static final int MOST_LETTERS = 4_000;

    /** As the page calls the sheet of the day. */
    private static final String TODAY = "today";

    private final Bay bay;
    private final OnRecord onRecord;
    private final CardSheets sheets;
    private final Lanes lanes = new Lanes();

    /**
     * @param onRecord what trials rest on
     */
    CardRoutes(Bay bay, OnRecord onRecord) {
        this.bay = bay;
        this.onRecord = onRecord;
        sheets = new CardSheets(bay.version());
    }

    List<Route> routes() {
        return List.of(
                Route.of("card", this::card),
                Route.of("sheet", this::sheet),
                Route.of("pass", this::pass));
    }

    private Reply card(Call call) {
        StagedTrials staged = staged(call.body());
        CardId id = named(staged, call.body().text("card"));
        UnitSystem units = Asked.units(call.body().text("units"));
        OptionalDouble turn = Asked.turn(call.body());
        return Reply.lines(
                told -> {
                    var work = new AskedWork(() -> {});
                    told.onGone(work::stop);
                    var answering =
                            new CardAnswering(
                                    staged,
                                    id,
                                    work,
                                    AnswerLines.of(told, bay.version(), units),
                                    bay::fault);
                    lanes.run(
                            call.session(),
                            turn,
                            work,
                            () ->
                                    new Computing(AskRoutes.PROGRESS)
                                            .run(work, answering::run, answering::tellProgress));
                });
    }

    private Reply sheet(Call call) {
        StagedTrials staged = staged(call.body());
        return sheets.of(staged, wanted(staged, call.body().text("card")), call.body());
    }

    /** A card, or the sheet of the day where one is written down. */
    private static CardSheets.Wanted wanted(StagedTrials staged, String text) {
        return staged.day()
                .filter(_ -> text.equals(TODAY))
                .<CardSheets.Wanted>map(CardSheets.Wanted.Today::new)
                .orElseGet(() -> new CardSheets.Wanted.OneCard(named(staged, text)));
    }

    private Reply pass(Call call) {
        Json.Members body = call.body();
        String rig = body.text("rig");
        if (!bay.drafts().of(rig).view().saved()) {
            throw new FaultException(
                    Kind.REFUSED,
                    "Save the rig file first: a pass speaks of what is written in it.");
        }
        StagedTrials staged = staged(body);
        CardId id = named(staged, body.text("card"));
        var writing = new PassWriting(onRecord.records().of(rig), staged.about(), staged.trials());
        try {
            return switch (writing.write(id, said(body))) {
                case PassWriting.Outcome.Written(Pass pass, int needed) -> written(pass, needed);
                case PassWriting.Outcome.Refused(var reasons) ->
                        throw new FaultException(
                                Kind.REFUSED,
                                AnswerLines.harmless(
                                        "The card is closed today, so nothing done on it counts as"
                                                + " passed: "
                                                + Gate.words(reasons)
                                                + ". What went wrong can be recorded."));
            };
        } catch (IOException e) {
            throw new FaultException(
                    Kind.INTERNAL, "The disk could not be written: nothing was recorded.");
        }
    }

    private static Reply written(Pass pass, int needed) {
        String few =
                pass.isPassed() && pass.cleanRuns() < needed
                        ? " " + needed + " clean runs in a row make a pass."
                        : "";
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.member(
                                                "sentence",
                                                "Written as number "
                                                        + pass.number()
                                                        + ": "
                                                        + pass.outcome().word()
                                                        + " on "
                                                        + pass.on()
                                                        + "."
                                                        + few)));
    }

    private static PassWriting.Said said(Json.Members body) {
        String word = body.text("outcome");
        Pass.Outcome outcome =
                Arrays.stream(Pass.Outcome.values())
                        .filter(one -> one.word().equals(word))
                        .findFirst()
                        .orElseThrow(() -> FaultException.badRequest("There is no such outcome."));
        List<String> who =
                Arrays.stream(line(body, "who").split(",", -1)).map(String::strip).toList();
        int repeats = body.whole("repeats");
        if (who.stream().anyMatch(String::isBlank)
                || repeats < (outcome == Pass.Outcome.PASSED ? 1 : 0)) {
            throw FaultException.badRequest(
                    "A pass needs at least one clean run and who answers for it; names with"
                            + " commas between.");
        }
        return new PassWriting.Said(outcome, who, repeats, line(body, "notes"));
    }

    private static String line(Json.Members body, String name) {
        String text = body.text(name);
        if (text.length() > MOST_LETTERS) {
            throw FaultException.badRequest("The member " + name + " is too long.");
        }
        return text;
    }

    /** The trials of the rig that a request means, in the state that it means. */
    private StagedTrials staged(Json.Members body) {
        Readings readings = rig -> bay.drafts().of(rig).reading();
        RigReading reading = readings.asked(body);
        Rig rig =
                reading.rig()
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.REFUSED,
                                                AnswerLines.harmless(
                                                        Answering.unreadable(reading.problems()))));
        return onRecord.trials(body.text("rig"), rig, reading.digest());
    }

    private static CardId named(StagedTrials staged, String text) {
        return CardId.parse(text)
                .filter(id -> staged.trials().programme().card(id).isPresent())
                .orElseThrow(() -> new FaultException(Kind.MISSING, "This rig has no such card."));
    }
}
