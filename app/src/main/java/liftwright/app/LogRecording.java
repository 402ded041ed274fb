package liftwright.app;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import liftwright.logbook.ask.Happened;
import liftwright.logbook.ask.Inspected;
import liftwright.logbook.ask.Life;
import liftwright.logbook.ask.LogbookAnswer;
import liftwright.logbook.ask.LogbookAnswer.About;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.EntryReading;
import liftwright.logbook.entry.Incident;
import liftwright.logbook.entry.Note;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.entry.PartSheet;
import liftwright.logbook.entry.Typed;
import liftwright.logbook.life.PackLife;
import liftwright.logbook.store.Logbook;
import liftwright.logbook.store.NewFile;
import liftwright.logbook.store.Records;
import liftwright.logbook.store.StoredIncident;
import liftwright.report.ProblemReport;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/**
 * {@code log note}, {@code part}, {@code pack} and {@code incident}: what is written down besides
 * logs.
 */
record LogRecording(
        Options options,
        Surroundings around,
        LocalDate date,
        Consumer<String> say,
        BiFunction<RigSource, LogbookAnswer, Exit> show) {

    Exit act(String action, About about, RigSource source, Logbook logbook, List<String> rest)
            throws IOException {
        return switch (action) {
            case LogGrammar.NOTE_ON -> note(logbook, rest);
            case LogGrammar.PART -> part(about, source, logbook.records(), rest);
            case LogGrammar.PACK -> pack(about, source, logbook.records(), rest);
            case LogGrammar.INCIDENT -> incident(about, source, logbook, rest);
            default -> throw new IllegalStateException(action);
        };
    }

    private Exit note(Logbook logbook, List<String> rest) throws IOException {
        if (rest.size() != 2) {
            throw new UsageException("log note RIG TEST TEXT: name a test, and what was learned");
        }
        EntryId about =
                EntryId.parse(rest.getFirst())
                        .filter(id -> isThere(logbook, id))
                        .orElseThrow(
                                () -> new UsageException("no test or incident " + rest.getFirst()));
        var note = new Note(about, date, by(), rest.getLast());
        say.accept("wrote " + logbook.records().add(note));
        return Exit.CLEAR;
    }

    private static boolean isThere(Logbook logbook, EntryId id) {
        try {
            return logbook.test(id).isPresent() || incident(logbook, id).isPresent();
        } catch (IOException e) {
            throw new UsageException(String.valueOf(e.getMessage()));
        }
    }

    private static Optional<StoredIncident> incident(Logbook logbook, EntryId id)
            throws IOException {
        return logbook.records().incidents().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    private String by() {
        return options.text(LogGrammar.BY).orElse("");
    }

    private List<String> typed(List<String> words) {
        for (String word : words) {
            if (word.indexOf('=') < 1) {
                throw new UsageException(
                        "what is written down is KEY=VALUE, such as \"note=a scratch\", not "
                                + word);
            }
        }
        return Typed.with(
                "note",
                options.text(LogGrammar.NOTE).orElse(""),
                Typed.with("by", by(), Typed.on(date, words)));
    }

    private Exit part(About about, RigSource source, Records records, List<String> rest)
            throws IOException {
        String id = named("part", rest);
        List<String> words = rest.subList(1, rest.size());
        if (words.isEmpty()) {
            PartSheet sheet =
                    records.part(id)
                            .orElseThrow(
                                    () ->
                                            new UsageException(
                                                    "nothing is written down of "
                                                            + id
                                                            + " yet: log part RIG "
                                                            + id
                                                            + " accepted=yes"
                                                            + " \"mass=0.418 kg / 0.412 kg\""
                                                            + " --by NAME"));
            return show.apply(source, Inspected.of(about, sheet));
        }
        PartSheet.Inspection inspection = whole(Typed.inspection(id, typed(words)));
        PartSheet sheet = records.add(id, inspection);
        say.accept("wrote parts/" + id + ".yaml");
        return show.apply(source, Inspected.of(about, sheet));
    }

    private static String named(String action, List<String> rest) {
        if (rest.isEmpty() || !Records.isGoodId(rest.getFirst())) {
            throw new UsageException(
                    "log "
                            + action
                            + " RIG ID: name one by its id"
                            + (rest.isEmpty() ? "" : ", not " + rest.getFirst()));
        }
        return rest.getFirst();
    }

    private Exit pack(About about, RigSource source, Records records, List<String> rest)
            throws IOException {
        String id = named("pack", rest);
        List<String> words = rest.subList(1, rest.size());
        Optional<PackSheet> known = records.pack(id);
        if (words.isEmpty() && known.isEmpty()) {
            throw new UsageException(
                    "nothing is written down of "
                            + id
                            + " yet: log pack RIG "
                            + id
                            + " \"resistance=23 mΩ ± 3 %\" \"at=18 °C\" \"capacity=15.1 Ah\"");
        }
        PackSheet sheet = known.isPresent() ? known.get() : begun(id, source);
        if (!words.isEmpty()) {
            PackSheet read = whole(Typed.pack(sheet, typed(words)));
            PackSheet head = read.with(List.of());
            if (known.isPresent() && !isSameHead(head, known.get())) {
                throw new UsageException(
                        "the sheet of "
                                + id
                                + " is begun: serial number, new values and rule of retirement stand"
                                + " fast. Another pack under this id needs a sheet of its own");
            }
            sheet = records.add(head, read.rows().getLast());
            say.accept("wrote packs/" + id + ".yaml");
        }
        var drawn = new About(about.rigDigest(), about.folder(), about.seed(), PackLife.DRAWS);
        return show.apply(source, Life.of(drawn, sheet, PackLife.of(sheet, date, about.seed())));
    }

    /** Typed words tell nothing of the head, or the same as it says. */
    private static boolean isSameHead(PackSheet typed, PackSheet known) {
        return typed.serial().equals(known.serial())
                && (typed.newResistance().isEmpty()
                        || typed.newResistance().equals(known.newResistance()))
                && (typed.newCapacity().isEmpty()
                        || typed.newCapacity().equals(known.newCapacity()))
                && (!typed.retire().declared() || typed.retire().equals(known.retire()))
                && typed.temperatureCoefficient().si() == known.temperatureCoefficient().si();
    }

    private static PackSheet begun(String id, RigSource source) {
        Rig rig =
                source.read()
                        .rig()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                "a sheet begins with what the rig file says of the"
                                                        + " pack, and "
                                                        + source.file().named()
                                                        + " does not read"));
        Pack pack =
                rig.packs().stream()
                        .filter(one -> one.id().text().equals(id))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                "this rig has no pack "
                                                        + id
                                                        + ". Its packs: "
                                                        + rig.packs().stream()
                                                                .map(one -> one.id().text())
                                                                .collect(
                                                                        Collectors.joining(", "))));
        return Typed.begun(id, "", pack.cell().temperatureCoefficient());
    }

    private Exit incident(About about, RigSource source, Logbook logbook, List<String> rest)
            throws IOException {
        if (rest.isEmpty()) {
            return show.apply(source, Happened.all(about, logbook.records().incidents()));
        }
        Optional<EntryId> id = EntryId.parse(rest.getFirst());
        StoredIncident stored =
                id.isPresent() && rest.size() == 1
                        ? incident(logbook, id.get())
                                .orElseThrow(
                                        () -> new UsageException("no incident " + rest.getFirst()))
                        : frozen(logbook, rest);
        return show.apply(
                source,
                Happened.of(
                        about,
                        stored,
                        logbook.records().notes(stored.id()),
                        logbook.records().flawsOf(stored)));
    }

    private StoredIncident frozen(Logbook logbook, List<String> files) throws IOException {
        UserFile draft =
                new UserFile(files.getFirst(), UserFile.path(files.getFirst(), around.folder()));
        EntryReading<Incident> read = EntryReading.incident(draft.named(), draft.read());
        if (read.entry().isEmpty()) {
            throw new UsageException(
                    ProblemReport.write(
                                    draft.named(),
                                    "an incident",
                                    "",
                                    read.problems(),
                                    options.look())
                            .strip());
        }
        var more = new ArrayList<NewFile>();
        for (String named : files.subList(1, files.size())) {
            Path file = UserFile.path(named, around.folder());
            more.add(new NewFile.Copied("files/" + file.getFileName(), file));
        }
        StoredIncident stored = logbook.records().add(read.entry().get(), more, () -> false);
        say.accept("wrote incidents/" + stored.id());
        return stored;
    }

    private static <T> T whole(EntryReading<T> reading) {
        return reading.entry()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        reading.problems().stream()
                                                .map(LogAdding::words)
                                                .collect(Collectors.joining("; "))));
    }
}
