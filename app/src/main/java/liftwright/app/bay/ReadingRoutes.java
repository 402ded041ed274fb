package liftwright.app.bay;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import liftwright.app.bay.FaultException.Kind;
import liftwright.app.record.TestKeeping;
import liftwright.logbook.entry.TestEntry;
import liftwright.logbook.reading.LogMap;
import liftwright.logbook.reading.LogOutcome;
import liftwright.logbook.reading.Source;
import liftwright.logbook.store.StoredTest;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import liftwright.trials.CardId;

/**
 * {@code upload} and {@code forget}: logs on their way from the page; {@code reading}: what the
 * reader of logs understood of them; {@code keep}: kept as a test of the logbook.
 */
final class ReadingRoutes {

    /** Longer than any name or note that a hand writes. */
    private static final int MOST_LETTERS = 4_000;

    private final Bay bay;
    private final OnRecord onRecord;
    private final Incoming incoming;
    private final Lanes lanes = new Lanes();
    private final Map<Session, ReadIn> readings = new ConcurrentHashMap<>();
    private final AtomicInteger last = new AtomicInteger();

    /**
     * @param onRecord has the logbooks
     */
    ReadingRoutes(Bay bay, OnRecord onRecord) {
        this.bay = bay;
        this.onRecord = onRecord;
        incoming = new Incoming(bay.folder().own());
        bay.atTheEnd(incoming::end);
        bay.atTheEnd(() -> readings.values().forEach(ReadIn::close));
    }

    List<Route> routes() {
        return List.of(
                Route.ofText("upload", this::upload),
                Route.of("forget", this::forget),
                Route.of("reading", this::reading),
                Route.of("keep", this::keep));
    }

    private Reply upload(Call call) {
        Json.Members body = call.body();
        byte[] piece = bytes(body.text("bytes"));
        Optional<String> known = body.optionalText("upload");
        Incoming.Log log =
                onDisk(
                        () -> {
                            String id =
                                    known.isPresent()
                                            ? known.get()
                                            : incoming.begin(call.session(), body.text("name"))
                                                    .id();
                            return incoming.add(call.session(), id, body.number("at"), piece);
                        });
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.member("upload", log.id())
                                                .name("size")
                                                .whole(log.size())));
    }

    private static byte[] bytes(String base64) {
        try {
            return Base64.getDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            throw FaultException.badRequest("The member bytes is not base64.");
        }
    }

    private Reply forget(Call call) {
        Optional.ofNullable(readings.remove(call.session())).ifPresent(ReadIn::close);
        onDisk(
                () -> {
                    incoming.forget(call.session(), call.body().texts("uploads"));
                    return true;
                });
        return Reply.json(json -> json.object(() -> {}));
    }

    private Reply reading(Call call) {
        Json.Members body = call.body();
        Rig rig = rig(body);
        List<Source> sources = sources(call.session(), body.texts("uploads"));
        OptionalDouble turn = Asked.turn(body);
        return Reply.lines(
                told -> {
                    var work = new AskedWork(() -> {});
                    told.onGone(work::stop);
                    lanes.run(
                            call.session(),
                            turn,
                            work,
                            () -> read(call.session(), sources, rig, work, told));
                });
    }

    private List<Source> sources(Session session, List<String> uploads) {
        if (uploads.isEmpty()) {
            throw FaultException.badRequest("There is no log to be read in.");
        }
        var sources = new ArrayList<Source>();
        for (String id : uploads) {
            Incoming.Log log = incoming.of(session, id);
            sources.add(new Source(log.name(), log.file()));
        }
        return sources;
    }

    private void read(Session session, List<Source> sources, Rig rig, AskedWork work, Lines told) {
        Optional.ofNullable(readings.remove(session)).ifPresent(ReadIn::close);
        if (!work.stopped()) {
            ReadIn reading = onDisk(() -> fresh(sources));
            readings.put(session, reading);
            told.onGone(
                    () -> {
                        if (reading.imported().isEmpty()) {
                            reading.close();
                        }
                    });
            new Computing(AskRoutes.PROGRESS)
                    .run(work, () -> understand(reading, rig, told), () -> {});
        }
        told.tell(json -> json.object(() -> json.member("end", "done")));
    }

    private ReadIn fresh(List<Source> sources) throws IOException {
        return new ReadIn("reading-" + last.incrementAndGet(), sources, bay.folder().own());
    }

    private void understand(ReadIn reading, Rig rig, Lines told) {
        try {
            switch (reading.read(LogMap.NONE, rig)) {
                case LogOutcome.Read(var imported) ->
                        told.tell(json -> new LogRead(json).understood(reading.id(), imported));
                case LogOutcome.Refused(var problems) ->
                        told.tell(json -> new LogRead(json).problems(problems));
            }
        } catch (IOException e) {
            refuse(told, "The log cannot be read in: " + e.getMessage());
        } catch (Lines.GoneException e) {
            throw e;
        } catch (RuntimeException e) {
            bay.fault(e);
            refuse(told, "A fault of the program, not of your log.");
        }
    }

    private static void refuse(Lines told, String sentence) {
        told.tell(
                json -> json.object(() -> json.member("refused", AnswerLines.harmless(sentence))));
    }

    private Reply keep(Call call) {
        Json.Members body = call.body();
        String rig = body.text("rig");
        if (!bay.drafts().of(rig).view().saved()) {
            throw new FaultException(
                    Kind.REFUSED,
                    "Save the rig file first: a test keeps the rig that it was made with.");
        }
        RigReading made = reading(body);
        Optional<ReadIn> there = Optional.ofNullable(readings.get(call.session()));
        ReadIn read =
                there.filter(one -> one.id().equals(body.text("reading")))
                        .filter(one -> one.imported().isPresent())
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.MISSING,
                                                "What was read in is gone: choose the log"
                                                        + " again."));
        TestEntry said = said(body, rig, made);
        StoredTest kept =
                Logbooks.fromDisk(
                        () -> {
                            var keeping =
                                    TestKeeping.of(
                                            said, read.sources(), read.imported().orElseThrow());
                            return onRecord.logbooks()
                                    .of(rig)
                                    .add(keeping.entry(), made, keeping.files(), () -> false);
                        });
        readings.remove(call.session(), read);
        read.close();
        return Reply.json(
                json ->
                        json.object(
                                () ->
                                        json.member("test", kept.id().text())
                                                .member(
                                                        "sentence",
                                                        "Kept in the logbook as test "
                                                                + kept.id().text()
                                                                + ".")));
    }

    private TestEntry said(Json.Members body, String rig, RigReading made) {
        String card = body.text("card");
        Optional<CardId> id = CardId.parse(card);
        if (!card.isEmpty() && id.isEmpty()) {
            throw FaultException.badRequest("There is no such card.");
        }
        return new TestEntry(
                id,
                date(body.text("date")),
                people(line(body, "who")),
                TestEntry.Weather.UNKNOWN,
                line(body, "note"),
                "",
                Optional.empty(),
                List.of(),
                List.of(),
                new TestEntry.Snapshot(
                        rig.substring(rig.lastIndexOf('/') + 1),
                        made.digest(),
                        made.rig().map(Rig::revision).orElse(0)),
                List.of());
    }

    private static LocalDate date(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 0 && date.getYear() <= 9999) {
                return date;
            }
        } catch (DateTimeParseException e) {
            throw noDay();
        }
        throw noDay();
    }

    private static FaultException noDay() {
        return FaultException.badRequest("A day is written as 2026-03-14.");
    }

    private static List<TestEntry.Person> people(String text) {
        return Arrays.stream(text.split(",", -1))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .map(ReadingRoutes::person)
                .toList();
    }

    private static TestEntry.Person person(String word) {
        int is = word.indexOf('=');
        String name = is < 0 ? word : word.substring(0, is).strip();
        if (name.isEmpty()) {
            throw FaultException.badRequest(
                    "A role is written behind its name: A. Nobody=watcher.");
        }
        return new TestEntry.Person(name, is < 0 ? "" : word.substring(is + 1).strip());
    }

    private static String line(Json.Members body, String name) {
        String text = body.text(name);
        if (text.length() > MOST_LETTERS) {
            throw FaultException.badRequest("The member " + name + " is too long.");
        }
        return text;
    }

    private RigReading reading(Json.Members body) {
        Readings all = name -> bay.drafts().of(name).reading();
        return all.asked(body);
    }

    private Rig rig(Json.Members body) {
        RigReading reading = reading(body);
        return reading.rig()
                .orElseThrow(
                        () ->
                                new FaultException(
                                        Kind.REFUSED,
                                        AnswerLines.harmless(
                                                Answering.unreadable(reading.problems()))));
    }

    private static <T> T onDisk(Records.Read<T> does) {
        try {
            return does.now();
        } catch (IOException e) {
            throw new FaultException(
                    Kind.INTERNAL, "The disk could not be written: nothing was read in.");
        }
    }
}
