package liftwright.trials.proof;

import java.math.BigDecimal;

/**
 * Writes a proof as a file that people can read and {@link ProofReading} reads as the same proof.
 */
public final class ProofText {

    private ProofText() {}

    /** The file, with a line feed at its end. */
    public static String write(KillProof proof) {
        var out = new StringBuilder();
        line(out, "liftwright kill proof", Integer.toString(ProofKeys.FORMAT));
        out.append(
                "# Stands for this day and this state of the rig alone. Written, never edited.\n");
        line(out, "date", proof.date().toString());
        line(out, "rig", quoted(proof.rigDigest()));
        line(out, "log", quoted(proof.log()));
        line(out, "log digest", quoted(proof.logDigest()));
        line(out, "read from", proof.signal().word());
        line(out, "limit", seconds(proof.limitS()));
        out.append(proof.paths().isEmpty() ? "paths: []\n" : "paths:\n");
        for (PathProof path : proof.paths()) {
            path(out, path);
        }
        return out.toString();
    }

    private static void path(StringBuilder out, PathProof path) {
        line(out, "  - path", quoted(path.path()));
        line(out, "    presses", Integer.toString(path.presses()));
        path.half().ifPresent(span -> line(out, "    half", span(span)));
        path.tenth().ifPresent(span -> line(out, "    tenth", span(span)));
        line(out, "    outcome", path.outcome().label());
        if (!path.reasons().isEmpty()) {
            out.append("    reasons:\n");
            path.reasons()
                    .forEach(reason -> out.append("      - ").append(quoted(reason)).append('\n'));
        }
    }

    private static void line(StringBuilder out, String key, String value) {
        out.append(key).append(": ").append(value).append('\n');
    }

    private static String span(Span span) {
        return "{from: " + seconds(span.lowS()) + ", to: " + seconds(span.highS()) + "}";
    }

    /** The shortest decimal that is read as that double. */
    private static String seconds(double s) {
        BigDecimal value = new BigDecimal(Double.toString(s));
        return (value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString()) + " s";
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }
}
