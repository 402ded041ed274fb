package liftwright.rig.shape.kind;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;
import liftwright.rig.text.Span;

/** Gathers every problem of one file, so that the builder sees them all at once. */
public final class Problems {

    /** What is found is quoted up to this many characters; files are untrusted. */
    private static final int LONGEST_QUOTE = 60;

    private final String fileName;
    private final Function<String, List<String>> homes;
    private final List<Problem> found = new ArrayList<>();
    private final List<Problem> beside = new ArrayList<>();
    private final Set<String> told = new HashSet<>();
    private int errors;
    private int unusedAround;

    /**
     * @param fileName as problems shall call it
     */
    public Problems(String fileName) {
        this(fileName, key -> List.of());
    }

    /**
     * @param homes the sections that have a key of a name; asked only when a key is in the wrong
     *     place
     */
    public Problems(String fileName, Function<String, List<String>> homes) {
        this.fileName = fileName;
        this.homes = homes;
    }

    /** The sections that have a key of that name. */
    List<String> homesOf(String key) {
        return homes.apply(key);
    }

    public void add(Code code, Spot spot, String foundText, String expected, String advice) {
        add(code, spot, spot.span(), foundText, expected, advice);
    }

    /** As the other one, with the text at {@code span}, for instance that of a key. */
    public void add(
            Code code, Spot spot, Span span, String foundText, String expected, String advice) {
        if (code == Code.USED_BY_NO_QUESTION_YET && unusedAround > 0) {
            return;
        }
        String path = spot.path().toString();
        if (!told.add(code.name() + "/" + path)) {
            return; // the same again, from the next of the parts that one entry makes
        }
        var place = new Problem.Place(fileName, span.line(), span.column(), path);
        found.add(new Problem(code, place, foundText, expected, advice));
        if (code.isError()) {
            errors++;
        }
    }

    /** What is wrong with a table beside the file: told after all that is wrong with the file. */
    public void addBeside(List<Problem> problems) {
        beside.addAll(problems);
        errors += problems.size();
    }

    /** Begins a value under a key that no question reads: it need not be said of each key in it. */
    void enterUnused() {
        unusedAround++;
    }

    void leaveUnused() {
        unusedAround--;
    }

    public boolean hasErrors() {
        return errors > 0;
    }

    /** How many errors there are so far, for those who want to know whether a step added one. */
    public int errors() {
        return errors;
    }

    /** All of them in the order of the file, then those of the tables beside it. */
    public List<Problem> inOrder() {
        return Stream.concat(
                        found.stream()
                                .sorted(
                                        Comparator.comparingInt((Problem p) -> p.at().line())
                                                .thenComparingInt(p -> p.at().column())),
                        beside.stream())
                .toList();
    }

    /** A text from the file as a problem may repeat it: one line, not long. */
    public static String quote(String text) {
        int end = Math.min(text.length(), LONGEST_QUOTE);
        if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        var out = new StringBuilder(end + 3).append('“');
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            out.append(isHarmless(c) ? c : ' ');
        }
        return out.append(end < text.length() ? "…”" : "”").toString();
    }

    /** Control and format characters could turn the rest of a line round, or hide in it. */
    private static boolean isHarmless(char c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR;
    }
}
