package liftwright.flight.disperse;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.stream.Collectors;
import liftwright.flight.run.FlightOutcome;

/**
 * Flights as the text of their file: comma-separated values between lines of {@code #}. Numbers
 * have all their digits, and equal sets have equal bytes.
 */
public final class FlightText {

    /** The only format there is. */
    static final int FORMAT = 1;

    static final String FIRST = "# liftwright flights: ";
    static final String PROGRAM = "# program: ";
    static final String RIG = "# rig: ";
    static final String CORRECTIONS = "# corrections: ";
    static final String PROFILE = "# profile: ";
    static final String SEED = "# seed: ";
    static final String NUMBERS = "# numbers: ";
    static final String COUNTED = "# counted: ";
    static final String SEAL = "# sha256: ";
    static final String NONE = "none";
    static final String NOT_FLOWN = "not flown";
    static final String YES = "yes";
    static final String NO = "no";

    /** Heads of the columns. */
    static final String COLUMNS =
            "number,end,well,computed,"
                    + Arrays.stream(FlightFigure.values())
                            .map(FlightFigure::head)
                            .collect(Collectors.joining(","))
                    + ",words";

    private FlightText() {}

    /** The whole file. */
    public static String of(FlightSet set) {
        var out = new StringBuilder();
        out.append(FIRST).append(FORMAT).append('\n');
        out.append(PROGRAM).append(set.of().program()).append('\n');
        out.append(RIG).append(set.of().rig()).append('\n');
        out.append(CORRECTIONS).append(set.of().corrections()).append('\n');
        out.append(PROFILE).append(set.of().profile()).append('\n');
        out.append(SEED).append(set.of().seed()).append('\n');
        out.append(NUMBERS).append(numbers(set)).append('\n');
        out.append(COLUMNS).append('\n');
        set.flights().forEach(each -> line(each, out));
        out.append(COUNTED).append(set.flights().size()).append('\n');
        String seal = sha256(out.toString());
        return out.append(SEAL).append(seal).append('\n').toString();
    }

    static String numbers(FlightSet set) {
        return set.flights().isEmpty()
                ? NONE
                : set.runs().stream().map(FlightSet.Run::toString).collect(Collectors.joining(" "));
    }

    private static void line(Flown flown, StringBuilder out) {
        out.append(flown.number()).append(',');
        switch (flown) {
            case Flown.Made made -> {
                out.append(word(made.end())).append(',');
                out.append(made.well() ? YES : NO).append(',');
                out.append(made.computed() ? YES : NO).append(',');
                for (FlightFigure each : FlightFigure.values()) {
                    out.append(each.of(made)).append(',');
                }
                out.append(quoted(made.endedBy()));
            }
            case Flown.NotMade(int _, String reason) -> {
                out.append(NOT_FLOWN).append(",,,");
                out.repeat(",", FlightFigure.values().length);
                out.append(quoted(reason));
            }
        }
        out.append('\n');
    }

    /** An end as it stands in a file. */
    static String word(FlightOutcome.End end) {
        return switch (end) {
            case LANDED -> "landed";
            case REACHED -> "reached";
            case ABORTED -> "aborted";
            case LOST -> "lost";
            case SPENT -> "spent";
            case CLOSE -> "close";
        };
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    static String sha256(String text) {
        try {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
