package liftwright.logbook.entry;

import static liftwright.rig.shape.kind.Key.open;
import static liftwright.rig.shape.kind.Key.required;

import java.time.LocalDate;
import java.util.Optional;
import liftwright.rig.Problem.Code;
import liftwright.rig.shape.kind.Key;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Section;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Stated;
import liftwright.rig.shape.kind.Text;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.text.Node;

/** The words of a note, format 1, and what they say. */
final class NoteKeys {

    static final Key<Integer> HEAD =
            required("liftwright note", new Whole("the format", 1, 1), "Format of the file.", "1");
    static final Key<String> ABOUT =
            required("about", new Text("the name of a test"), "Of what.", "2026-03-14-1");
    static final Key<String> DATE =
            required("date", new Text(Stating.DATE), "The day.", "2026-03-15");
    static final Key<String> BY =
            open("by", new Text("a name"), "Who.", "\"A. Wader\"", "not told");
    static final Key<String> TEXT =
            required("note", new Text("a note"), "What was learned.", "\"the joint was dry\"");
    static final Section SECTION =
            Section.of("note", "What was learned afterwards.", HEAD, ABOUT, DATE, BY, TEXT);

    private NoteKeys() {}

    static Optional<Note> read(Node root, Problems problems) {
        var stating = new Stating(problems);
        return SECTION.read(root, Spot.top(root.span()), problems)
                .flatMap(
                        fields -> {
                            Optional<Stated<String>> about = fields.stated(ABOUT);
                            Optional<EntryId> id = about.flatMap(a -> EntryId.parse(a.value()));
                            if (about.isPresent() && id.isEmpty()) {
                                problems.add(
                                        Code.UNKNOWN_WORD,
                                        about.get().spot(),
                                        Problems.quote(about.get().value()),
                                        "the name of a test such as 2026-03-14-1",
                                        "");
                            }
                            Optional<LocalDate> date = stating.date(fields, DATE);
                            Optional<String> text = stating.words(fields, TEXT);
                            return problems.hasErrors()
                                    ? Optional.empty()
                                    : Optional.of(
                                            new Note(
                                                    id.orElseThrow(),
                                                    date.orElseThrow(),
                                                    fields.get(BY).orElse(""),
                                                    text.orElseThrow()));
                        });
    }

    static String text(Note note) {
        return new Writing()
                .comment("Learned afterwards. Never edit it: write another.")
                .line(HEAD.name(), "1")
                .line(ABOUT.name(), note.about().text())
                .line(DATE.name(), note.date().toString())
                .textIfAny(BY.name(), note.by())
                .text(TEXT.name(), note.text())
                .toString();
    }
}
