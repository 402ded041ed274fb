package liftwright.logbook.entry;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import liftwright.rig.Problem;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.text.Node;
import liftwright.rig.text.YamlText;

/**
 * A file of the logbook and what it says.
 *
 * @param entry empty where there is any problem: half an entry proves nothing
 * @param problems everything wrong with it, in the order of the file
 */
public record EntryReading<T>(Optional<T> entry, List<Problem> problems) {

    public EntryReading {
        problems = List.copyOf(problems);
    }

    /** Reads a test. Never throws, whatever stands in it. */
    public static EntryReading<TestEntry> test(String fileName, byte[] bytes) {
        return read(
                fileName,
                bytes,
                "a test",
                TestKeys.HEAD.name(),
                (root, problems) -> new TestBinder(problems).read(root));
    }

    /** The text of a test: read again it gives the same. */
    public static String text(TestEntry entry) {
        return TestText.of(entry);
    }

    /** Reads the life sheet of a pack. Never throws. */
    public static EntryReading<PackSheet> pack(String fileName, byte[] bytes) {
        return read(
                fileName,
                bytes,
                "the life sheet of a pack",
                PackKeys.HEAD.name(),
                (root, problems) -> new PackBinder(problems).read(root));
    }

    /** Reads the sheet of a part. Never throws. */
    public static EntryReading<PartSheet> part(String fileName, byte[] bytes) {
        return read(
                fileName,
                bytes,
                "the sheet of a part",
                PartKeys.HEAD.name(),
                (root, problems) -> new PartBinder(problems).read(root));
    }

    /** Reads an incident, frozen or still a draft. Never throws. */
    public static EntryReading<Incident> incident(String fileName, byte[] bytes) {
        return read(
                fileName,
                bytes,
                "an incident",
                IncidentKeys.HEAD.name(),
                (root, problems) -> new IncidentBinder(problems).read(root));
    }

    /** The text of an incident: read again it gives the same. */
    public static String text(Incident incident) {
        return IncidentText.of(incident);
    }

    /** Reads a note. Never throws. */
    public static EntryReading<Note> note(String fileName, byte[] bytes) {
        return read(fileName, bytes, "a note", NoteKeys.HEAD.name(), NoteKeys::read);
    }

    /** The text of a note: read again it gives the same. */
    public static String text(Note note) {
        return NoteKeys.text(note);
    }

    static <T> EntryReading<T> read(
            String fileName,
            byte[] bytes,
            String what,
            String head,
            BiFunction<Node, Problems, Optional<T>> binder) {
        var text = YamlText.read(fileName, bytes);
        if (!text.problems().isEmpty()) {
            return new EntryReading<>(Optional.empty(), text.problems());
        }
        if (text.root().isEmpty()) {
            var nothing =
                    new Problem(
                            Problem.Code.MISSING_KEY,
                            new Problem.Place(fileName, 1, 1, ""),
                            "a file that says nothing",
                            what,
                            "Put back what stood there.");
            return new EntryReading<>(Optional.empty(), List.of(nothing));
        }
        var problems = new Problems(fileName);
        if (isOfAnotherFormat(text.root().get(), head, problems)) {
            return new EntryReading<>(Optional.empty(), problems.inOrder());
        }
        Optional<T> entry = binder.apply(text.root().get(), problems);
        return problems.hasErrors()
                ? new EntryReading<>(Optional.empty(), problems.inOrder())
                : new EntryReading<>(entry, List.of());
    }

    /** Of a later format only the version is a problem. */
    private static boolean isOfAnotherFormat(Node root, String head, Problems problems) {
        if (!(root instanceof Node.Entries map)
                || !(map.value(head).orElse(null) instanceof Node.Scalar version)
                || !version.value().matches("[1-9][0-9]{0,5}")
                || version.value().equals("1")) {
            return false;
        }
        problems.add(
                Problem.Code.UNSUPPORTED_VERSION,
                Spot.top(root.span()).child(head, version.span()),
                "format " + version.value(),
                "format 1",
                "A newer Liftwright wrote this file: use that one.");
        return true;
    }
}
