package liftwright.trials.evidence;

import java.util.stream.Collectors;

/**
 * A pass as the text of its file. Every text of a builder and every input stands in double quotes,
 * so that no reader of YAML can take one for something else.
 */
final class PassText {

    /** The only format there is. */
    static final int FORMAT = 1;

    /** Between the path of an input and its value; paths never hold it. */
    static final String IS = " = ";

    private final StringBuilder out = new StringBuilder();

    private PassText() {}

    static String of(Pass pass) {
        PassText text = new PassText();
        text.head(pass);
        text.inputs(pass.inputs());
        return text.out.toString();
    }

    private void head(Pass pass) {
        out.append("# What came of a test card. Never edit it: write down what happens next as")
                .append(" another pass.\n");
        line("liftwright pass", String.valueOf(FORMAT));
        line("number", String.valueOf(pass.number()));
        line("card", quoted(pass.card().text()));
        line("on", pass.on().toString());
        line("outcome", pass.outcome().word());
        line(
                "by",
                pass.by().stream()
                        .map(PassText::quoted)
                        .collect(Collectors.joining(", ", "[", "]")));
        line("clean runs", String.valueOf(pass.cleanRuns()));
        line("rig", quoted(pass.rig()));
        line("revision", String.valueOf(pass.revision()));
        pass.killProof().ifPresent(proof -> line("kill proof", quoted(proof)));
        if (!pass.note().isEmpty()) {
            line("note", quoted(pass.note()));
        }
    }

    /** A line for each input; their number tells a file that was cut short. */
    private void inputs(Inputs inputs) {
        line(PassKeys.COUNT.name(), String.valueOf(inputs.byPath().size()));
        if (inputs.byPath().isEmpty()) {
            line(PassKeys.INPUTS, "[]");
            return;
        }
        out.append(PassKeys.INPUTS).append(":\n");
        inputs.byPath()
                .forEach(
                        (path, value) ->
                                out.append("  - ").append(quoted(path + IS + value)).append('\n'));
    }

    private void line(String key, String value) {
        out.append(key).append(": ").append(value).append('\n');
    }

    /** In double quotes, printable whatever it says. */
    static String quoted(String text) {
        var quoted = new StringBuilder(text.length() + 2).append('"');
        text.codePoints().forEach(point -> append(quoted, point));
        return quoted.append('"').toString();
    }

    private static void append(StringBuilder quoted, int point) {
        switch (point) {
            case '"' -> quoted.append("\\\"");
            case '\\' -> quoted.append("\\\\");
            case '\n' -> quoted.append("\\n");
            case '\t' -> quoted.append("\\t");
            default -> {
                if (isPlain(point)) {
                    quoted.appendCodePoint(point);
                } else {
                    String hex = Integer.toHexString(point);
                    quoted.append("\\U").append("0".repeat(8 - hex.length())).append(hex);
                }
            }
        }
    }

    private static boolean isPlain(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.UNASSIGNED ->
                    false;
            default -> true;
        };
    }
}
