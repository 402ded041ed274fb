package liftwright.rig.csv;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import liftwright.rig.Problem.Code;

/** The bytes of a table as text: UTF-8, with or without byte order mark, and nothing hidden. */
final class TableText {

    private static final String UTF_8 = "Save the table as CSV in UTF-8.";
    private static final String TEXT = "a text file in UTF-8";

    private TableText() {}

    /** The text without byte order mark; empty when it is none, which is told. */
    static Optional<String> decode(byte[] bytes, Faults faults) {
        if (bytes.length > Tabular.MOST_BYTES) {
            faults.add(
                    Code.TOO_LARGE,
                    1,
                    1,
                    "",
                    "a table of more than " + Tabular.MOST_BYTES + " bytes",
                    "at most " + Tabular.MOST_BYTES + " bytes",
                    "Leave out rows: ten a second tell all that a pack or a fan does.");
            return Optional.empty();
        }
        if (isUtf16(bytes)) {
            faults.add(Code.NOT_TEXT, 1, 1, "", "UTF-16 text", TEXT, UTF_8);
            return Optional.empty();
        }
        var decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        var out = CharBuffer.allocate(bytes.length);
        boolean malformed = decoder.decode(ByteBuffer.wrap(bytes), out, true).isError();
        String text = withoutMark(out.flip().toString());
        int hidden = hidden(text);
        if (hidden >= 0) {
            String name =
                    String.format(
                            Locale.ROOT, "the control character U+%04X", (int) text.charAt(hidden));
            at(text, hidden, name, "Is this a table? " + UTF_8, faults);
            return Optional.empty();
        }
        if (malformed) {
            at(text, text.length(), "bytes that are no UTF-8", UTF_8, faults);
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static boolean isUtf16(byte[] bytes) {
        return bytes.length >= 2
                && ((bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF)
                        || (bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE));
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static int hidden(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isISOControl(c) && c != '\t' && c != '\n' && c != '\r') {
                return i;
            }
        }
        return -1;
    }

    private static void at(String text, int offset, String found, String advice, Faults faults) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && !text.startsWith("\n", i + 1))) {
                line++;
                start = i + 1;
            }
        }
        int column = text.codePointCount(start, offset) + 1;
        faults.add(Code.NOT_TEXT, line, column, "", found, TEXT, advice);
    }
}
