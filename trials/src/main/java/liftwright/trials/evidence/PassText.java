package liftwright.trials.evidence;

import java.util.stream.Collectors;
import liftwright.rig.text.QuotedText;

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
        line("card", QuotedText.of(pass.card().text()));
        line("on", pass.on().toString());
        line("outcome", pass.outcome().word());
        line(
                "by",
                pass.by().stream().map(QuotedText::of).collect(Collectors.joining(", ", "[", "]")));
        line("clean runs", String.valueOf(pass.cleanRuns()));
        line("rig", QuotedText.of(pass.rig()));
        line("revision", String.valueOf(pass.revision()));
        pass.killProof().ifPresent(proof -> line("kill proof", QuotedText.of(proof)));
        if (!pass.note().isEmpty()) {
            line("note", QuotedText.of(pass.note()));
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
                                out.append("  - ")
                                        .append(QuotedText.of(path + IS + value))
                                        .append('\n'));
    }

    private void line(String key, String value) {
        out.append(key).append(": ").append(value).append('\n');
    }
}
