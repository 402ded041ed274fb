package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.AnswerJson;
import liftwright.app.bay.FaultException.Kind;
import liftwright.logbook.store.StoredTest;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.quantity.UnitSystem;
import liftwright.report.ReaderTexts;
import liftwright.review.Sensitivities;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.review.compare.Comparison;
import liftwright.review.compare.Put;
import liftwright.review.compare.Puts;
import liftwright.review.compare.Revision;
import liftwright.rig.Rig;
import liftwright.rig.file.Folder;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/**
 * {@code compare}: the rig as it stands beside another revision (its file as saved, another file of
 * the folder, or the rig of a logged test), which is the first of the two; {@code sensitivities}:
 * the declared values that move the verdict of one question most, with what the file would say over
 * their bands.
 */
final class CompareRoutes {

    private final Bay bay;
    private final OnRecord onRecord;
    private final Lanes comparing = new Lanes();
    private final Lanes sensing = new Lanes();

    /**
     * @param onRecord has the logbooks
     */
    CompareRoutes(Bay bay, OnRecord onRecord) {
        this.bay = bay;
        this.onRecord = onRecord;
    }

    List<Route> routes() {
        return List.of(
                Route.of("compare", this::compare), Route.of("sensitivities", this::sensitivities));
    }

    private Reply compare(Call call) {
        Json.Members body = call.body();
        RigReading now = asked(body);
        List<String> questions = questions(body);
        UnitSystem units = Asked.units(body.text("units"));
        Revision second = revision("as it stands", now);
        Revision first = other(body);
        return streamed(
                call,
                comparing,
                (work, lines) -> {
                    for (String question : pictured(questions)) {
                        lines.tell(drawn("before", question, first, units, work));
                        lines.tell(drawn("after", question, second, units, work));
                    }
                    Settings settings = Settings.standard().withoutRemedies();
                    List<Put> puts = new ArrayList<>();
                    for (String question : questions) {
                        puts.add(Puts.of(question, first, second, settings));
                    }
                    Comparison.of(first, second, puts, settings, work)
                            .ifPresent(
                                    answer ->
                                            lines.tell(
                                                    told("compared", answer, second.rig(), units)));
                });
    }

    private Reply sensitivities(Call call) {
        Json.Members body = call.body();
        RigReading now = asked(body);
        String question = questions(List.of(body.text("question"))).getFirst();
        UnitSystem units = Asked.units(body.text("units"));
        return streamed(
                call,
                sensing,
                (work, lines) -> {
                    Rig rig = rig(now);
                    Settings settings = Settings.standard().withoutRemedies();
                    Optional<Sensitivities> found =
                            Puts.question(question, rig, now.digest(), settings)
                                    .sensitivities(work);
                    found.ifPresent(told -> lines.tell(SensitivitiesOut.of(told, units)));
                });
    }

    /** What is computed for a stream. */
    private interface Told {
        void tell(AskedWork work, Lines lines);
    }

    private Reply streamed(Call call, Lanes lanes, Told told) {
        return Reply.lines(
                lines -> {
                    var work = new AskedWork(() -> {});
                    lines.onGone(work::stop);
                    lanes.run(
                            call.session(),
                            Asked.turn(call.body()),
                            work,
                            () ->
                                    new Computing(AskRoutes.PROGRESS)
                                            .run(
                                                    work,
                                                    () -> compute(told, work, lines),
                                                    () -> progress(work, lines)));
                });
    }

    private void compute(Told told, AskedWork work, Lines lines) {
        try {
            if (!work.stopped()) {
                told.tell(work, lines);
            }
        } catch (NotToldException | ImpossibleValueException e) {
            refuse(lines, String.valueOf(e.getMessage()));
        } catch (Lines.GoneException e) {
            return;
        } catch (RuntimeException e) {
            bay.fault(e);
            refuse(lines, "This could not be computed, by a mistake of the program.");
        }
        lines.tell(
                json -> json.object(() -> json.member("end", work.stopped() ? "stopped" : "done")));
    }

    private static void refuse(Lines lines, String sentence) {
        lines.tell(
                json -> json.object(() -> json.member("refused", AnswerLines.harmless(sentence))));
    }

    private static void progress(AskedWork work, Lines lines) {
        work.progress()
                .ifPresent(
                        far ->
                                lines.tell(
                                        json ->
                                                json.object(
                                                        () ->
                                                                json.name("progress")
                                                                        .object(
                                                                                () ->
                                                                                        json.member(
                                                                                                        "stage",
                                                                                                        far
                                                                                                                .stage())
                                                                                                .name(
                                                                                                        "done")
                                                                                                .whole(
                                                                                                        far
                                                                                                                .done())
                                                                                                .name(
                                                                                                        "total")
                                                                                                .whole(
                                                                                                        far
                                                                                                                .total())))));
    }

    /**
     * Balance, which draws the rig, and what else is asked whose declared values are computed at
     * once.
     */
    private static List<String> pictured(List<String> questions) {
        return Stream.of("balance", "lift", "endurance")
                .filter(question -> question.equals("balance") || questions.contains(question))
                .toList();
    }

    /** A nominal answer, for its pictures. */
    private String drawn(
            String name, String question, Revision of, UnitSystem units, AskedWork work) {
        Settings settings = Settings.standard().withoutRemedies();
        Optional<? extends Answer> drawing =
                Puts.question(question, of.rig(), of.digest(), settings)
                        .answer(Stage.NOMINAL, work);
        return drawing.map(answer -> told(name, answer, of.rig(), units)).orElse("{}");
    }

    private String told(String name, Answer answer, Rig rig, UnitSystem units) {
        return "{\""
                + name
                + "\":"
                + AnswerJson.write(answer, rig.name(), bay.version(), new ReaderTexts(units))
                + "}";
    }

    private RigReading asked(Json.Members body) {
        Readings readings = rig -> bay.drafts().of(rig).reading();
        return readings.asked(body);
    }

    private static List<String> questions(Json.Members body) {
        return questions(body.texts("questions"));
    }

    private static List<String> questions(List<String> asked) {
        List<String> known = asked.stream().filter(Puts.QUESTIONS::contains).distinct().toList();
        if (known.size() != asked.size() || known.isEmpty()) {
            throw FaultException.badRequest("There is no such question.");
        }
        return known;
    }

    /** The revision that is compared with. */
    private Revision other(Json.Members body) {
        String rig = body.text("rig");
        Optional<String> test = body.optionalText("test");
        Optional<String> file = body.optionalText("file");
        if (test.isPresent()) {
            StoredTest stored = onRecord.logbooks().test(rig, test.get());
            return revision("test " + stored.id().text(), onRecord.logbooks().rigOf(rig, stored));
        }
        return file.isPresent()
                ? revision(file.get(), bay.drafts().of(file.get()).reading())
                : revision("as saved", saved(rig));
    }

    private RigReading saved(String rig) {
        Path file = bay.folder().rig(rig);
        Path parent = file.getParent();
        try {
            return RigReading.read(
                    String.valueOf(file.getFileName()),
                    RigFiles.read(file),
                    new Folder(parent == null ? bay.folder().path() : parent));
        } catch (IOException e) {
            throw new FaultException(Kind.MISSING, "The file as saved cannot be read.");
        }
    }

    private static Revision revision(String name, RigReading reading) {
        return new Revision(name, rig(reading), reading.digest(), reading.tables());
    }

    private static Rig rig(RigReading reading) {
        return reading.rig()
                .orElseThrow(
                        () ->
                                new FaultException(
                                        Kind.REFUSED,
                                        "One of the two does not read as a rig: see its problems."));
    }
}
