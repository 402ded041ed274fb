package liftwright.rig.correction.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Collectors;
import liftwright.quantity.Quantity;
import liftwright.quantity.SiText;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;
import liftwright.rig.text.QuotedText;

/**
 * Corrections as the text of their file. What was typed by somebody stands in double quotes; every
 * number is SI with its unit and tells every bit; a comment beside it says its 95 % band.
 */
public final class CorrectionsText {

    private static final String HEAD =
            """
            # What tests found, in place of what the rig file declares. All numbers are SI.
            # Written by `liftwright fit`. Never edit it: what you know yourself belongs in the rig file.
            # With --as-declared no verb reads it.
            """;

    private static final String SEAL = "seal: ";

    private final StringBuilder out = new StringBuilder(HEAD);

    private CorrectionsText() {}

    /** The whole file; read again it gives the same. */
    public static String of(Corrections corrections) {
        var text = new CorrectionsText();
        text.write(corrections);
        String said = text.out.toString();
        return said + SEAL + QuotedText.of(digest(said)) + "\n";
    }

    /** What the seal of the file is. */
    static String seal(Corrections corrections) {
        var text = new CorrectionsText();
        text.write(corrections);
        return digest(text.out.toString());
    }

    /** SHA-256 of a text, as digests are written. */
    static String digest(String text) {
        try {
            var sha = MessageDigest.getInstance("SHA-256");
            return "sha256:"
                    + HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private void write(Corrections corrections) {
        line("", "liftwright corrections", String.valueOf(CorrectionsKeys.FORMAT_NUMBER));
        line("", "rig", QuotedText.of(corrections.rig()));
        line("", "revision", String.valueOf(corrections.revision()));
        out.append("corrections:\n");
        corrections.groups().forEach(this::group);
    }

    private void group(Correction group) {
        line("  - ", "name", QuotedText.of(group.name()));
        out.append("    tests:\n");
        for (Grounds.Test test : group.grounds().tests()) {
            out.append("      - {test: ").append(QuotedText.of(test.id()));
            out.append(", digest: ").append(QuotedText.of(test.digest())).append("}\n");
        }
        group.grounds()
                .heldOut()
                .ifPresent(rms -> line("    ", "held-out residual", String.valueOf(rms)));
        line("    ", "distance", String.valueOf(group.grounds().distance()));
        if (!group.serials().isEmpty()) {
            out.append("    serials:\n");
            group.serials()
                    .forEach(
                            (part, serial) ->
                                    line("      ", QuotedText.of(part), QuotedText.of(serial)));
        }
        out.append("    found:\n");
        for (int i = 0; i < group.found().size(); i++) {
            found(group, i);
        }
    }

    private void found(Correction group, int i) {
        Found found = group.found().get(i);
        line("      - ", "parameter", QuotedText.of(found.parameter()));
        line("        ", "label", QuotedText.of(found.label()));
        line("        ", "declared", QuotedText.of(SiText.of(found.declared())));
        line("        ", "value", QuotedText.of(plain(found, found.value())) + comment(found));
        line(
                "        ",
                "drawn",
                found.inLogarithms() ? CorrectionsKeys.LOGARITHMS : CorrectionsKeys.PLAIN);
        line("        ", "deviation", String.valueOf(found.deviation()));
        if (i > 0) {
            int from = i * (i - 1) / 2;
            line(
                    "        ",
                    "correlations",
                    group.correlations().subList(from, from + i).stream()
                            .map(String::valueOf)
                            .collect(Collectors.joining(", ", "[", "]")));
        }
    }

    private static String plain(Found found, double si) {
        return SiText.of(Quantity.exact(si, found.declared().dimension()));
    }

    /** For people: four figures are enough to see what moved. */
    private static String comment(Found found) {
        return "  # from "
                + rounded(found.low())
                + " to "
                + rounded(found.high())
                + " with 95 %; declared "
                + rounded(found.declared().si());
    }

    private static String rounded(double si) {
        return new BigDecimal(si).round(new MathContext(4)).stripTrailingZeros().toString();
    }

    private void line(String indent, String key, String value) {
        out.append(indent).append(key).append(": ").append(value).append('\n');
    }
}
