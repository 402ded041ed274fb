package liftwright.rig.file;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import liftwright.rig.Change;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.csv.Beside;
import liftwright.rig.shape.RigReader;
import liftwright.rig.shape.bind.Shelf;
import liftwright.rig.text.RigText;

/**
 * A rig file and the rig it declares: what every question starts from. Immutable; an edit gives
 * another reading, and to undo it is to go back to this one.
 *
 * @param text the file as it stands
 * @param rig the rig; empty when any problem is an error
 * @param problems everything wrong with the text or with what it says, in the order of the file,
 *     then what is wrong with its tables
 * @param tables SHA-256 of every table that was read, by its path, sorted
 * @param beside where tables come from
 */
public record RigReading(
        RigText text,
        Optional<Rig> rig,
        List<Problem> problems,
        Map<String, String> tables,
        Beside beside) {

    public RigReading {
        problems = List.copyOf(problems);
        tables = Collections.unmodifiableMap(new TreeMap<>(tables));
    }

    /**
     * Reads a file without its folder: that it names a table is then a problem. Never throws,
     * whatever stands in it.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     */
    public static RigReading read(String fileName, byte[] bytes) {
        return read(fileName, bytes, Beside.NOTHING);
    }

    /**
     * Reads a file and the tables that it names. Never throws, whatever stands in them.
     *
     * @param fileName as problems shall call it
     * @param bytes the file
     * @param beside what stands beside it, such as a {@link Folder}
     */
    public static RigReading read(String fileName, byte[] bytes, Beside beside) {
        return of(RigText.read(fileName, bytes), beside);
    }

    /** What {@code text} declares, without its folder. */
    public static RigReading of(RigText text) {
        return of(text, Beside.NOTHING);
    }

    /** What {@code text} and its tables declare. */
    public static RigReading of(RigText text, Beside beside) {
        if (text.root().isEmpty()) {
            return broken(
                    text,
                    text.problems().isEmpty() ? List.of(nothing(text)) : text.problems(),
                    beside);
        }
        if (text.problems().stream().anyMatch(RigReading::ends)) {
            return broken(text, text.problems(), beside);
        }
        var shelf = Shelf.beside(text.fileName(), beside);
        var read = RigReader.read(text.fileName(), text.root().get(), shelf);
        var tables = new TreeMap<String, String>();
        shelf.files().forEach((path, bytes) -> tables.put(path, sha256(bytes)));
        if (text.problems().isEmpty()) {
            return new RigReading(text, read.rig(), read.problems(), tables, beside)
                    .with(CorrectionsBeside.of(text.fileName(), beside));
        }
        var problems = new ArrayList<>(text.problems());
        var spoiled = new HashSet<Integer>();
        text.problems().forEach(p -> spoiled.add(p.at().line()));
        read.problems().stream()
                .filter(p -> isOf(text, p) && standsByItself(p, text, spoiled))
                .forEach(problems::add);
        problems.sort(
                Comparator.comparingInt((Problem p) -> p.at().line())
                        .thenComparingInt(p -> p.at().column()));
        read.problems().stream().filter(p -> !isOf(text, p)).forEach(problems::add);
        return new RigReading(text, Optional.empty(), problems, tables, beside);
    }

    /** The same with what lies beside it; what cannot be read is a problem as of a table. */
    private RigReading with(CorrectionsBeside found) {
        if (found.problems().isEmpty()) {
            return new RigReading(
                    text,
                    rig.map(declared -> declared.with(found.read(digest()))),
                    problems,
                    tables,
                    beside);
        }
        var all = new ArrayList<>(problems);
        all.addAll(found.problems());
        return new RigReading(text, Optional.empty(), all, tables, beside);
    }

    /**
     * The same with what counts for another reading of the file: a condition that is set in memory
     * makes no other revision of the rig.
     */
    public RigReading counting(CorrectionsRead found) {
        return new RigReading(
                text, rig.map(declared -> declared.with(found)), problems, tables, beside);
    }

    /**
     * The same file where what tests found is left out of account: neither read nor judged. Edits
     * stay without it.
     */
    public RigReading asDeclared() {
        return of(text, CorrectionsBeside.hiddenIn(beside));
    }

    private static RigReading broken(RigText text, List<Problem> problems, Beside beside) {
        return new RigReading(text, Optional.empty(), problems, Map.of(), beside);
    }

    private static boolean isOf(RigText text, Problem problem) {
        return problem.at().file().equals(text.fileName());
    }

    /** Names the bytes of any file that an answer is about. */
    public static String digest(byte[] bytes) {
        return "sha256:" + sha256(bytes);
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /**
     * Names this file and its tables as they stand: SHA-256 of the bytes of the file where it has
     * no tables, else of a line for the file and one for each table, {@code <hash> <path>}, the
     * tables in the order of their paths.
     */
    public String digest() {
        String own = sha256(text.bytes());
        if (tables.isEmpty()) {
            return "sha256:" + own;
        }
        var lines = new StringBuilder(own).append(" rig\n");
        tables.forEach((path, hash) -> lines.append(hash).append(' ').append(path).append('\n'));
        return "sha256:" + sha256(lines.toString().getBytes(StandardCharsets.UTF_8));
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
    private static boolean standsByItself(Problem problem, RigText text, Set<Integer> spoiled) {
        if (spoiled.contains(problem.at().line())) {
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
                    new Edit.Changed(of(changed, beside), steps);
            case RigText.Edit.Refused(var change, var reason) -> new Edit.Refused(change, reason);
        };
    }

    /** Where the value at {@code path} stands; empty if nothing stands there. */
    public Optional<Problem.Place> place(RigPath path) {
        return text.place(path);
    }
}
