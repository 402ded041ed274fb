package liftwright.logbook.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.BooleanSupplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.logbook.entry.EntryId;
import liftwright.logbook.entry.EntryReading;
import liftwright.logbook.entry.Incident;
import liftwright.logbook.entry.Incident.FrozenLog;
import liftwright.logbook.entry.Note;
import liftwright.logbook.entry.PackSheet;
import liftwright.logbook.entry.PartSheet;
import liftwright.logbook.entry.SheetText;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;

/** What a logbook holds besides tests: parts, packs, incidents, and notes on any of it. */
public final class Records {

    static final String PARTS = "parts";
    static final String PACKS = "packs";
    static final String INCIDENTS = "incidents";
    static final String NOTES = "notes";
    static final String INCIDENT_FILE = "incident.yaml";

    private static final Pattern NOTE = Pattern.compile("(.+)\\.([1-9]\\d{0,3})\\.yaml");

    private final Logbook logbook;
    private final Disk disk;
    private final Sheets<PackSheet> packs;
    private final Sheets<PartSheet> parts;

    Records(Logbook logbook, Disk disk) {
        this.logbook = logbook;
        this.disk = disk;
        this.packs = new Sheets<>(logbook.folder(), PACKS, disk, EntryReading::pack);
        this.parts = new Sheets<>(logbook.folder(), PARTS, disk, EntryReading::part);
    }

    /** Whether a part of that id can have a sheet: as the name of a file it leads nowhere else. */
    public static boolean isGoodId(String id) {
        return Sheets.isGood(id);
    }

    /** The life sheet of a pack; empty where there is none. */
    public Optional<PackSheet> pack(String id) throws IOException {
        return packs.read(id);
    }

    /** Life sheets by the ids of their packs; what cannot be read is left to the check. */
    public SortedMap<String, PackSheet> packs() throws IOException {
        return packs.all(new ArrayList<>());
    }

    /**
     * Puts a row behind.
     *
     * @param head what the sheet begins with where there is none yet; its rows do not matter
     * @return the sheet as it stands: it lasts through a loss of power
     */
    public PackSheet add(PackSheet head, PackSheet.Row row) throws IOException {
        return packs.add(
                head.pack(),
                SheetText.of(head, row),
                sheet ->
                        sheet.pack().equals(head.pack())
                                && !sheet.rows().isEmpty()
                                && sheet.rows().getLast().equals(row));
    }

    /** The sheet of a part; empty where there is none. */
    public Optional<PartSheet> part(String id) throws IOException {
        return parts.read(id);
    }

    /** Sheets by the ids of their parts; what cannot be read is left to the check. */
    public SortedMap<String, PartSheet> parts() throws IOException {
        return parts.all(new ArrayList<>());
    }

    /** Puts an inspection behind. */
    public PartSheet add(String part, PartSheet.Inspection inspection) throws IOException {
        return parts.add(
                part,
                SheetText.of(new PartSheet(part, List.of()), inspection),
                sheet ->
                        sheet.part().equals(part)
                                && !sheet.inspections().isEmpty()
                                && sheet.inspections().getLast().equals(inspection));
    }

    /** Incidents that can be read, in the order of their days. */
    public List<StoredIncident> incidents() throws IOException {
        return incidents(new ArrayList<>());
    }

    List<StoredIncident> incidents(List<Flaw> flaws) throws IOException {
        var incidents = new ArrayList<StoredIncident>();
        for (var entry : Folders.entries(among(INCIDENTS)).entrySet()) {
            new EntryFolder<>(INCIDENTS, INCIDENT_FILE, EntryReading::incident, Incident::date)
                    .read(entry.getKey(), entry.getValue(), flaws)
                    .ifPresent(
                            read ->
                                    incidents.add(
                                            new StoredIncident(
                                                    entry.getKey(),
                                                    read.entry(),
                                                    read.digest(),
                                                    entry.getValue())));
        }
        return incidents;
    }

    private Path among(String kind) {
        return logbook.folder().resolve(kind);
    }

    /**
     * Adds an incident: the logs that it names are frozen by their digests as they are now.
     *
     * @param files that go with it
     * @throws SpoiltException where a log is not as it was written, or is not there
     */
    public StoredIncident add(Incident draft, List<NewFile> files, BooleanSupplier stopped)
            throws IOException {
        var frozen = new ArrayList<FrozenLog>();
        for (FrozenLog log : draft.logs()) {
            frozen.add(new FrozenLog(log.test(), Optional.of(logbook.digest(log.test()))));
        }
        Incident incident = draft.with(frozen);
        byte[] text = EntryReading.text(incident).getBytes(StandardCharsets.UTF_8);
        EntryReading<Incident> again = EntryReading.incident(INCIDENT_FILE, text);
        if (!again.entry().equals(Optional.of(incident))) {
            throw new IOException(
                    "this incident could not be read back, so it was not written: "
                            + again.problems());
        }
        var all = new ArrayList<NewFile>();
        all.add(NewFile.Said.of(INCIDENT_FILE, text));
        all.addAll(files);
        EntryId id = new FreshFolder(among(INCIDENTS), disk, stopped).add(incident.date(), all);
        return incidents().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IOException(id + " is gone again"));
    }

    /**
     * Writes a note on a test or an incident, in a file of its own.
     *
     * @return its name in the logbook
     */
    public String add(Note note) throws IOException {
        byte[] text = Seals.sealed(new byte[0], EntryReading.text(note));
        EntryReading<Note> again = EntryReading.note("note", text);
        if (!again.entry().equals(Optional.of(note))) {
            throw new IOException(
                    "this note could not be read back, so it was not written: " + again.problems());
        }
        for (int number = 1; number <= EntryId.MOST; number++) {
            String name = note.about() + "." + number + ".yaml";
            Path file = among(NOTES).resolve(name);
            if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                try {
                    RigFiles.create(file, text, disk);
                    return NOTES + "/" + name;
                } catch (FileAlreadyExistsException e) {
                    // somebody else was quicker: the next number
                }
            }
        }
        throw new IOException("no more than " + EntryId.MOST + " notes on " + note.about());
    }

    /** Notes on a test or an incident, in the order in which they were written. */
    public List<Note> notes(EntryId about) throws IOException {
        return notes(new ArrayList<>()).stream().filter(n -> n.about().equals(about)).toList();
    }

    List<Note> notes(List<Flaw> flaws) throws IOException {
        if (!Files.isDirectory(among(NOTES), LinkOption.NOFOLLOW_LINKS)) {
            return List.of();
        }
        List<Path> files;
        try (var all = Files.list(among(NOTES))) {
            files = all.sorted(Comparator.comparingInt(Records::number)).toList();
        }
        var notes = new ArrayList<Note>();
        for (Path file : files) {
            note(file, flaws).ifPresent(notes::add);
        }
        return notes;
    }

    private static int number(Path file) {
        Matcher name = NOTE.matcher(String.valueOf(file.getFileName()));
        return name.matches() ? Integer.parseInt(name.group(2)) : 0;
    }

    private static Optional<Note> note(Path file, List<Flaw> flaws) throws IOException {
        String name = String.valueOf(file.getFileName());
        String shown = NOTES + "/" + name;
        Matcher parts = NOTE.matcher(name);
        if (name.startsWith(".")) {
            flaws.add(Flaw.of(Flaw.Kind.REMAINS, shown, Remains.WORDS));
            return Optional.empty();
        }
        if (!parts.matches() || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            flaws.add(
                    Digests.told(
                            Files.isSymbolicLink(file) ? Flaw.Kind.LINK : Flaw.Kind.TOO_MANY,
                            shown));
            return Optional.empty();
        }
        byte[] bytes = RigFiles.read(file);
        if (!Seals.isWhole(bytes)) {
            flaws.add(Digests.told(Flaw.Kind.CHANGED, shown));
            return Optional.empty();
        }
        EntryReading<Note> reading = EntryReading.note(shown, bytes);
        reading.problems().forEach(problem -> flaws.add(Flaw.unreadable(shown, problem)));
        if (reading.entry().filter(n -> !n.about().text().equals(parts.group(1))).isPresent()) {
            flaws.add(Flaw.of(Flaw.Kind.CHANGED, shown, "is a note on something else: renamed"));
            return Optional.empty();
        }
        return reading.entry();
    }

    /** What of an incident, its files and the logs that it froze is not as it was written. */
    public List<Flaw> flawsOf(StoredIncident incident) throws IOException {
        var flaws = new ArrayList<Flaw>();
        Optional<Digests> digests = Digests.of(incident.folder());
        if (digests.isPresent()) {
            flaws.addAll(digests.get().flaws(incident.folder(), INCIDENTS + "/" + incident.id()));
        }
        for (FrozenLog log : incident.entry().logs()) {
            thawed(incident, log).ifPresent(flaws::add);
        }
        return flaws;
    }

    /** Everything of these that is not as it was written. */
    List<Flaw> flaws() throws IOException {
        var flaws = new ArrayList<Flaw>();
        packs.all(flaws)
                .forEach((id, sheet) -> renamed(PACKS, id, sheet.pack()).ifPresent(flaws::add));
        parts.all(flaws)
                .forEach((id, sheet) -> renamed(PARTS, id, sheet.part()).ifPresent(flaws::add));
        flaws.addAll(Folders.strangers(among(INCIDENTS), INCIDENTS));
        for (StoredIncident incident : incidents(flaws)) {
            for (FrozenLog log : incident.entry().logs()) {
                thawed(incident, log).ifPresent(flaws::add);
            }
        }
        notes(flaws);
        Set<String> known =
                new HashSet<>(List.of(Logbook.TESTS, PARTS, PACKS, INCIDENTS, NOTES, ".lock"));
        flaws.addAll(strangers(known));
        return flaws;
    }

    private static Optional<Flaw> renamed(String kind, String file, String says) {
        return file.equals(says)
                ? Optional.empty()
                : Optional.of(
                        Flaw.of(
                                Flaw.Kind.CHANGED,
                                kind + "/" + file + ".yaml",
                                "is the sheet of " + says + ": it was renamed or copied"));
    }

    private Optional<Flaw> thawed(StoredIncident incident, FrozenLog log) throws IOException {
        String now;
        try {
            now = logbook.digest(log.test());
        } catch (SpoiltException e) {
            now = "";
        }
        return log.digest().equals(Optional.of(now))
                ? Optional.empty()
                : Optional.of(
                        Flaw.of(
                                Flaw.Kind.CHANGED,
                                Logbook.TESTS + "/" + log.test(),
                                "is not what incident " + incident.id() + " froze"));
    }

    private List<Flaw> strangers(Set<String> known) throws IOException {
        if (!logbook.isThere()) {
            return List.of();
        }
        var flaws = new ArrayList<Flaw>();
        try (var all = Files.list(logbook.folder())) {
            for (Path file : all.sorted().toList()) {
                String name = String.valueOf(file.getFileName());
                if (name.startsWith(".engine-")) {
                    flaws.add(Flaw.of(Flaw.Kind.REMAINS, name, Remains.WORDS));
                } else if (Files.isSymbolicLink(file)) {
                    flaws.add(Digests.told(Flaw.Kind.LINK, name));
                } else if (!known.contains(name)) {
                    flaws.add(Digests.told(Flaw.Kind.TOO_MANY, name));
                }
            }
        }
        return flaws;
    }
}
