package liftwright.app.bay;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Semaphore;
import liftwright.answer.Section;
import liftwright.app.bay.FaultException.Kind;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.PaperSize;
import liftwright.report.html.CardSheet;
import liftwright.report.pdf.CardPdf;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.trials.CardId;
import liftwright.trials.TrialsAnswer;

/** Cards as files to print, one at a time. */
final class CardSheets {

    private final String version;
    private final Semaphore one = new Semaphore(1);

    /**
     * @param version of the program
     */
    CardSheets(String version) {
        this.version = version;
    }

    /**
     * A card as a file.
     *
     * @param staged the trials of the rig
     * @param id of a card of its programme
     * @param body says units, paper and form
     * @throws FaultException where it cannot be made
     */
    Reply of(StagedTrials staged, CardId id, Json.Members body) {
        UnitSystem units = Asked.units(body.text("units"));
        PaperSize paper = paper(body.text("paper"));
        boolean pdf = isPdf(body.text("form"));
        if (!one.tryAcquire()) {
            throw new FaultException(Kind.TOO_MANY, "A sheet is being made already.");
        }
        try {
            TrialsAnswer answer = computed(staged, id);
            List<Section.Card> cards =
                    answer.sections().stream()
                            .filter(Section.Card.class::isInstance)
                            .map(Section.Card.class::cast)
                            .toList();
            var head =
                    new CardHead(
                            staged.about().rig().name(),
                            body.text("rig"),
                            "revision " + staged.about().rig().revision(),
                            staged.about().rigDigest(),
                            version);
            return pdf
                    ? new Reply.Attachment(
                            "card.pdf", "application/pdf", CardPdf.write(cards, head, units, paper))
                    : new Reply.Attachment(
                            "card.html",
                            "text/html; charset=utf-8",
                            CardSheet.html(cards, head, units, paper).getBytes(UTF_8));
        } finally {
            one.release();
        }
    }

    /** On a thread of its own: those of requests are shared by all who ask. */
    private static TrialsAnswer computed(StagedTrials staged, CardId id) {
        var answer = new CompletableFuture<TrialsAnswer>();
        Thread.ofPlatform()
                .daemon()
                .name("sheet")
                .start(
                        () -> {
                            try {
                                answer.complete(made(staged, id));
                            } catch (RuntimeException | Error e) {
                                answer.completeExceptionally(e);
                            }
                        });
        try {
            return answer.join();
        } catch (CompletionException e) {
            throw switch (e.getCause()) {
                case NotToldException told -> refused(told);
                case ImpossibleValueException told -> refused(told);
                case RuntimeException other -> other;
                case null, default -> e;
            };
        }
    }

    /**
     * What is printed shall not say that something was not asked yet: the review is asked first.
     */
    private static TrialsAnswer made(StagedTrials staged, CardId id) {
        var work = new AskedWork(() -> {}); // nobody stops it
        var about = staged.about();
        var needed =
                staged.trials().programme().card(id).orElseThrow().questions().stream()
                        .map(Question::of)
                        .filter(q -> staged.reviewed().of(about.rigDigest(), q.word()).isEmpty())
                        .toList();
        for (Question question : needed) {
            question.amongAll(about.rig(), about.rigDigest(), Settings.standard())
                    .answer(Stage.WHOLE, work)
                    .ifPresent(answer -> staged.reviewed().keep(about.rigDigest(), answer));
        }
        Optional<TrialsAnswer> made = staged.trials().cards(List.of(id), work);
        return made.orElseThrow(() -> new IllegalStateException("nobody stopped it"));
    }

    private static FaultException refused(RuntimeException why) {
        return new FaultException(
                Kind.REFUSED, AnswerLines.harmless(String.valueOf(why.getMessage())));
    }

    private static PaperSize paper(String word) {
        return switch (word) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw FaultException.badRequest("Paper is a4 or letter.");
        };
    }

    private static boolean isPdf(String word) {
        return switch (word) {
            case "pdf" -> true;
            case "html" -> false;
            default -> throw FaultException.badRequest("A sheet is pdf or html.");
        };
    }
}
