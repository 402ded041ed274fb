package liftwright.logbook.engine;

import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import liftwright.logbook.engine.EngineException.Kind;

/** What the library says, in the words of the house. */
final class EngineErrors {

    private record Row(String begin, Kind kind, String sentence) {}

    private static final List<Row> BY_BEGIN =
            List.of(
                    new Row(
                            "out of memory",
                            Kind.TOO_LARGE,
                            "This needs more memory than the engine may have. Ask for fewer rows or"
                                    + " columns."),
                    new Row(
                            "permission",
                            Kind.NOT_ALLOWED,
                            "The engine reads the folder of the logbook and nothing else."),
                    new Row("io error", Kind.FILE, "A file of the logbook cannot be read: "),
                    new Row(
                            "invalid input error: file",
                            Kind.FILE,
                            "A file of the logbook is broken or cut off: "),
                    new Row(
                            "invalid input error: no magic",
                            Kind.FILE,
                            "A file of the logbook is broken or cut off: "),
                    new Row(
                            "invalid error: no magic",
                            Kind.FILE,
                            "A file of the logbook is broken or cut off: "),
                    new Row(
                            "invalid error: footer",
                            Kind.FILE,
                            "A file of the logbook is broken or cut off: "),
                    new Row(
                            "invalid input error: footer",
                            Kind.FILE,
                            "A file of the logbook is broken or cut off: "));

    private EngineErrors() {}

    static Frame frame(SQLException e) {
        String said = firstLine(String.valueOf(e.getMessage()));
        String low = said.toLowerCase(Locale.ROOT);
        for (Row row : BY_BEGIN) {
            if (!low.startsWith(row.begin)) {
                continue;
            }
            boolean open = row.sentence.endsWith(": ");
            return frame(row.kind, open ? row.sentence + detail(said) : row.sentence);
        }
        return frame(Kind.STATEMENT, detail(said));
    }

    static Frame frame(Kind kind, String sentence) {
        return Frame.of(
                Frame.Kind.ERROR,
                out -> {
                    Frame.writeText(out, kind.name());
                    Frame.writeText(out, sentence);
                });
    }

    private static String firstLine(String text) {
        int end = text.indexOf('\n');
        return (end < 0 ? text : text.substring(0, end)).strip();
    }

    /** Without the class of the error, with a full stop. */
    private static String detail(String said) {
        int colon = said.indexOf(": ");
        String text = colon > 0 && colon < 40 ? said.substring(colon + 2) : said;
        String cut = text.length() > 300 ? text.substring(0, 300) + "…" : text;
        return cut.endsWith(".") || cut.endsWith("!") ? cut : cut + ".";
    }
}
