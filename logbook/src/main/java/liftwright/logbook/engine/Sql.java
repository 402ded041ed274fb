package liftwright.logbook.engine;

import java.util.Collection;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Texts and names in statements of ours. */
public final class Sql {

    private Sql() {}

    /** In single quotes. */
    public static String text(String text) {
        return "'" + text.replace("'", "''") + "'";
    }

    /** A name of a column in double quotes. */
    public static String name(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }

    /** A list of texts. */
    public static String list(Collection<String> texts) {
        return list(texts.stream());
    }

    static String list(Stream<String> texts) {
        return texts.map(Sql::text).collect(Collectors.joining(", ", "[", "]"));
    }
}
