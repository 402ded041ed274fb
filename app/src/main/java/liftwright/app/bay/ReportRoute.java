package liftwright.app.bay;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Semaphore;
import liftwright.answer.Answer;
import liftwright.app.bay.FaultException.Kind;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.UnitSystem;
import liftwright.report.html.HtmlReport;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/** {@code report}: the whole answers of every question as one sheet of HTML, to keep. */
final class ReportRoute {

    private final Readings readings;
    private final String version;
    private final Semaphore one = new Semaphore(1);

    /**
     * @param version of the program
     */
    ReportRoute(Readings readings, String version) {
        this.readings = readings;
        this.version = version;
    }

    List<Route> routes() {
        return List.of(Route.of("report", this::report));
    }

    private Reply report(Call call) {
        String file = call.body().text("rig");
        UnitSystem units = Asked.units(call.body().text("units"));
        RigReading reading = readings.asked(call.body());
        Rig rig =
                reading.rig()
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.REFUSED,
                                                "The file has errors: there is no rig to report"
                                                        + " on."));
        if (!one.tryAcquire()) {
            throw new FaultException(Kind.TOO_MANY, "A report is being written already.");
        }
        try {
            List<Answer> answers = computed(rig, reading.digest());
            return new Reply.Attachment(
                    name(rig.name()),
                    "text/html; charset=utf-8",
                    HtmlReport.write(answers, rig.name(), file, units, version).getBytes(UTF_8));
        } finally {
            one.release();
        }
    }

    /** On a thread of its own: those of requests are shared by all who ask. */
    private static List<Answer> computed(Rig rig, String digest) {
        var answers = new CompletableFuture<List<Answer>>();
        Thread.ofPlatform()
                .daemon()
                .name("report")
                .start(
                        () -> {
                            try {
                                answers.complete(answers(rig, digest));
                            } catch (RuntimeException | Error e) {
                                answers.completeExceptionally(e);
                            }
                        });
        try {
            return answers.join();
        } catch (CompletionException e) {
            throw switch (e.getCause()) {
                case NotToldException told -> refused(told);
                case ImpossibleValueException told -> refused(told);
                case RuntimeException other -> other;
                case null, default -> e;
            };
        }
    }

    private static List<Answer> answers(Rig rig, String digest) {
        var answers = new ArrayList<Answer>();
        var work = new AskedWork(() -> {}); // nobody stops it
        for (Question question : Question.OF_REVIEW) {
            question.amongAll(rig, digest, Settings.standard())
                    .answer(Stage.WHOLE, work)
                    .ifPresent(answers::add);
        }
        return answers;
    }

    private static FaultException refused(RuntimeException why) {
        return new FaultException(
                Kind.REFUSED, AnswerLines.harmless(String.valueOf(why.getMessage())));
    }

    /** Of the file that it is kept in: the rig's name in plain letters. */
    private static String name(String rig) {
        String plain =
                rig.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return (plain.isEmpty() ? "rig" : plain.substring(0, Math.min(60, plain.length())))
                + "-report.html";
    }
}
