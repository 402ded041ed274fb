package liftwright.rig.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import liftwright.rig.Problem;

/**
 * A file's text, and beside it the working copy that the parser sees: without the characters that
 * have no business there, with blanks where it cannot be read. The parser counts the code points of
 * the copy, we count UTF-16 units of the text.
 */
final class Source {

    /** More than so many invisible characters need not be listed one by one. */
    private static final int MOST_BARRED = 20;

    private final String text;
    private final Lines lines;
    private final int[] working;

    /** UTF-16 offset in the text of every code point of the copy, and of the end. */
    private final int[] offsets;

    private final List<Located> problems;
    private final boolean worthReading;

    private Source(String text, List<Located> problems, boolean worthReading) {
        this.text = text;
        this.lines = new Lines(text);
        this.problems = new ArrayList<>(problems);
        this.worthReading = worthReading;
        int[] kept = new int[text.length()];
        int[] where = new int[text.length() + 1];
        int count = 0;
        for (int offset = 0; offset < text.length(); ) {
            int codePoint = text.codePointAt(offset);
            if (Characters.barredAnywhere(codePoint) && !(offset == 0 && codePoint == 0xFEFF)) {
                bar(codePoint, offset);
            } else {
                kept[count] = codePoint;
                where[count++] = offset;
            }
            offset += Character.charCount(codePoint);
        }
        where[count] = text.length();
        this.working = Arrays.copyOf(kept, count);
        this.offsets = Arrays.copyOf(where, count + 1);
    }

    static Source decode(byte[] bytes) {
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            return notText(0, "UTF-16 text", "Save the file as UTF-8.");
        }
        var decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        var in = ByteBuffer.wrap(bytes);
        var out = CharBuffer.allocate(bytes.length);
        var problems = new ArrayList<Located>();
        while (true) {
            var result = decoder.decode(in, out, true);
            if (!result.isError()) {
                return new Source(out.flip().toString(), problems, true);
            }
            problems.add(
                    new Located(
                            Problem.Code.NOT_TEXT,
                            out.position(),
                            "",
                            "bytes that are no UTF-8",
                            "UTF-8 text",
                            "Save the file as UTF-8."));
            if (problems.size() > 5) {
                // Another encoding or no text at all: one line says it better than a thousand.
                return new Source(out.flip().toString(), problems.subList(0, 1), false);
            }
            for (int skipped = 0; skipped < result.length(); skipped++) {
                in.get();
            }
            out.put('\uFFFD');
        }
    }

    private static Source notText(int offset, String found, String advice) {
        var problem = new Located(Problem.Code.NOT_TEXT, offset, "", found, "UTF-8 text", advice);
        return new Source("", List.of(problem), false);
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private void bar(int codePoint, int offset) {
        if (problems.size() < MOST_BARRED) {
            problems.add(
                    new Located(
                            Problem.Code.NOT_TEXT,
                            offset,
                            "",
                            Characters.name(codePoint),
                            "text",
                            "Take it out; an editor may show it as a blank or not at all."));
        }
    }

    String text() {
        return text;
    }

    Lines lines() {
        return lines;
    }

    List<Located> problems() {
        return problems;
    }

    boolean worthReading() {
        return worthReading;
    }

    /** What the parser shall see. */
    String working() {
        return new String(working, 0, working.length);
    }

    /** UTF-16 offset of the parser's index. */
    int offset(int index) {
        return offsets[Math.clamp(index, 0, working.length)];
    }

    /** What still stands in the working copy of line {@code line} from 0. */
    boolean blankLine(int line) {
        int end = index(lines.end(line));
        for (int i = index(lines.start(line)); i < end; i++) {
            if (working[i] != ' ' && working[i] != '\t') {
                return false;
            }
        }
        return true;
    }

    private int index(int offset) {
        int at = Arrays.binarySearch(offsets, offset);
        return at >= 0 ? at : -at - 1;
    }

    /**
     * Blanks the spoiled line and those that hang from it, or else the one where it was noticed.
     *
     * @return false if there was nothing left to blank
     */
    boolean blank(Slip slip) {
        int line = lines.indexOf(slip.spoiled());
        if (blankLine(line)) {
            line = lines.indexOf(Math.max(0, slip.noticed() - 1));
            while (line > 0 && blankLine(line)) {
                line--;
            }
        }
        if (blankLine(line)) {
            return false;
        }
        int indent = indent(line);
        wipe(line);
        for (int next = line + 1; next < lines.count(); next++) {
            if (!blankLine(next) && !comment(next)) {
                if (indent(next) <= indent) {
                    break;
                }
                wipe(next);
            }
        }
        return true;
    }

    private void wipe(int line) {
        int start = index(lines.start(line));
        Arrays.fill(working, start, index(lines.end(line)), ' ');
    }

    /** How many blanks and tabs a line begins with. */
    int indent(int line) {
        int at = lines.start(line);
        int end = lines.end(line);
        while (at < end && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        return at - lines.start(line);
    }

    /** Whether line {@code line} from 0 holds a comment and nothing else. */
    boolean comment(int line) {
        int at = lines.start(line) + indent(line);
        return at < lines.end(line) && text.charAt(at) == '#';
    }
}
