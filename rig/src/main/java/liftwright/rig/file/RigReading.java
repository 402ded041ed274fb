package liftwright.rig.file;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import liftwright.rig.Change;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.shape.RigReader;
import liftwright.rig.text.RigText;

/**
 * A rig file and the rig it declares: what every question starts from. Immutable; an edit gives
 * another reading, and to undo it is to go back to this one.
 *
 * @param text the file as it stands
 * @param rig the rig; empty when any problem is an error
 * @param problems everything wrong with the text or with what it says, in the order of the file
 */
public record RigReading(RigText text, Optional<Rig> rig, List<Problem> problems) {

    public RigReading {
        problems = List.copyOf(problems);
    }

    /**
     * Reads a file. Never throws, whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static RigReading read(String fileName, byte[] bytes) {
        return of(RigText.read(fileName, bytes));
    }

    /** What {@code text} declares. */
    public static RigReading of(RigText text) {
        if (text.root().isEmpty()) {
            return new RigReading(
                    text,
                    Optional.empty(),
                    text.problems().isEmpty() ? List.of(nothing(text)) : text.problems());
        }
        if (text.problems().stream().anyMatch(RigReading::ends)) {
            return new RigReading(text, Optional.empty(), text.problems());
        }
        var read = RigReader.read(text.fileName(), text.root().get());
        if (text.problems().isEmpty()) {
            return new RigReading(text, read.rig(), read.problems());
        }
        var problems = new ArrayList<>(text.problems());
        read.problems().stream().filter(p -> standsByItself(p, text)).forEach(problems::add);
        problems.sort(
                Comparator.comparingInt((Problem p) -> p.at().line())
                        .thenComparingInt(p -> p.at().column()));
        return new RigReading(text, Optional.empty(), problems);
    }

    private static Problem nothing(RigText text) {
        return new Problem(
                Problem.Code.MISSING_KEY,
                new Problem.Place(text.fileName(), 1, 1, ""),
                "a file that says nothing",
                "a rig",
                "`liftwright new` writes one to start from.");
    }

    /** Whether reading ended there, so that what was read says little about the file. */
    private static boolean ends(Problem problem) {
        return problem.code() == Problem.Code.TOO_LARGE || problem.code() == Problem.Code.TOO_DEEP;
    }

    /**
     * Whether a problem is one however the unread parts of the file may read: what seems to be
     * missing may stand in a line that a slip spoils.
     */
    private static boolean standsByItself(Problem problem, RigText text) {
        if (text.problems().stream().anyMatch(p -> p.at().line() == problem.at().line())) {
            return false;
        }
        return switch (problem.code()) {
            case MISSING_KEY, NO_SUCH_PART, CONTRADICTION, DUPLICATE_ID -> false;
            case WRONG_KIND, NOT_A_QUANTITY ->
                    text.span(RigPath.parse(problem.at().path()))
                            .filter(span -> span.from() < span.to())
                            .isPresent();
            case NOT_TEXT,
                    TOO_LARGE,
                    TOO_DEEP,
                    SYNTAX,
                    NOT_ALLOWED_IN_RIG_FILES,
                    DUPLICATE_KEY,
                    UNKNOWN_KEY,
                    WRONG_UNIT,
                    OUT_OF_RANGE,
                    UNKNOWN_WORD,
                    BAD_ID,
                    OUTSIDE_FOLDER,
                    UNSUPPORTED_VERSION,
                    USED_BY_NO_QUESTION_YET ->
                    true;
        };
    }

    /** What came of an edit. */
    public sealed interface Edit {

        /**
         * @param reading the file after all changes; its rig may be empty where the changes make
         *     the file wrong, and its problems then say why
         * @param steps what each change did in the text
         */
        record Changed(RigReading reading, List<RigText.Step> steps) implements Edit {
            public Changed {
                steps = List.copyOf(steps);
            }
        }

        /**
         * Nothing was changed.
         *
         * @param change the first that could not be made
         * @param reason a sentence for the one who asked
         */
        record Refused(Change change, String reason) implements Edit {}
    }

    /** Makes the changes one after the other, all or none; see {@link RigText#with}. */
    public Edit with(List<Change> changes) {
        return switch (text.with(changes)) {
            case RigText.Edit.Changed(var changed, var steps) ->
                    new Edit.Changed(of(changed), steps);
            case RigText.Edit.Refused(var change, var reason) -> new Edit.Refused(change, reason);
        };
    }

    /** Where the value at {@code path} stands; empty if nothing stands there. */
    public Optional<Problem.Place> place(RigPath path) {
        return text.place(path);
    }
}
