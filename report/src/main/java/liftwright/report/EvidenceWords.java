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

    /** Which corrections, and how many of their values count. */
    public static String corrections(Evidence evidence) {
        Evidence.Corrected how = evidence.corrected();
        if (how.equals(Evidence.Corrected.NONE)) {
            return evidence.correctionsDigest();
        }
        var words = new StringBuilder(evidence.correctionsDigest());
        words.append(": ").append(how.held()).append(how.held() == 1 ? " value" : " values");
        words.append(" in force");
        if (how.ofAnotherRevision()) {
            words.append(", found on another revision of the rig file");
        }
        if (how.voided() > 0) {
            words.append("; ").append(how.voided()).append(" void: ");
            words.append(String.join("; ", how.why()));
        }
        return words.toString();
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
