package liftwright.report;

import java.util.Locale;
import liftwright.answer.Evidence;

/** What an answer rests on, in words that every report says alike. */
public final class EvidenceWords {

    private EvidenceWords() {}

    /** How bands came about. */
    public static String bands(Evidence evidence) {
        return evidence.draws() == 0
                ? "none was drawn: ± and intervals hold 95 %, by the laws below"
                : "in brackets, hold 95 % of the doubt: "
                        + evidence.draws()
                        + " draws from seed "
                        + evidence.seed();
    }

    public static String law(Evidence.Law law) {
        return (law.within() ? "" : "OUTSIDE ITS RANGE: ")
                + law.name()
                + " ("
                + law.source()
                + "), valid for "
                + law.validity();
    }

    public static String check(Evidence.Check check) {
        return check.name()
                + ": "
                + (check.passed() ? "passed, " : "FAILED, ")
                + number(check.residual())
                + ", at most "
                + number(check.allowed())
                + " allowed";
    }

    /** Two digits: a residual is of interest by its size alone. */
    private static String number(double residual) {
        if (residual == Math.rint(residual) && Math.abs(residual) < 1e6) {
            return String.format(Locale.ROOT, "%.0f", residual);
        }
        return String.format(Locale.ROOT, "%.1e", residual)
                .replace(".0e", "e")
                .replace("e-0", "e-");
    }
}
