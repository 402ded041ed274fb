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
import liftwright.trials.CardId;
import liftwright.trials.TrialsAnswer;
import liftwright.trials.ask.Trials;
import liftwright.trials.day.Day;

/** Cards as files to print, one at a time. */
final class CardSheets {

    private final String version;
    private final Semaphore one = new Semaphore(1);

    /** What is printed. */
    sealed interface Wanted {
        /**
         * @param id of a card of the programme
         */
        record OneCard(CardId id) implements Wanted {}

        /**
         * @param day as it was written down
         */
        record Today(Day day) implements Wanted {}
    }

    /**
     * @param version of the program
     */
    CardSheets(String version) {
        this.version = version;
    }

    /**
     * A sheet as a file.
     *
     * @param staged the trials of the rig
     * @param wanted what is printed
     * @param body says units, paper and form
     * @throws FaultException where it cannot be made
     */
    Reply of(StagedTrials staged, Wanted wanted, Json.Members body) {
        UnitSystem units = Asked.units(body.text("units"));
        PaperSize paper = paper(body.text("paper"));
        boolean pdf = isPdf(body.text("form"));
        if (!one.tryAcquire()) {
            throw new FaultException(Kind.TOO_MANY, "A sheet is being made already.");
        }
        try {
            TrialsAnswer answer = computed(staged, wanted);
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
    private static TrialsAnswer computed(StagedTrials staged, Wanted wanted) {
        var answer = new CompletableFuture<TrialsAnswer>();
        Thread.ofPlatform()
                .daemon()
                .name("sheet")
                .start(
                        () -> {
                            try {
                                answer.complete(made(staged, wanted));
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

    private static TrialsAnswer made(StagedTrials staged, Wanted wanted) {
        var work = new AskedWork(() -> {}); // nobody stops it
        Trials trials = staged.asking(work);
        Optional<TrialsAnswer> made =
                switch (wanted) {
                    case Wanted.OneCard(CardId id) -> trials.cards(List.of(id), work);
                    case Wanted.Today(Day day) -> trials.today(day, work);
                };
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
