package liftwright.report;

import liftwright.answer.Finding;
import liftwright.answer.Remedy;

/** Words of findings and remedies, the same wherever they are read. */
public final class FindingWords {

    private FindingWords() {}

    /** The word before a finding. */
    public static String word(Finding.Severity severity) {
        return switch (severity) {
            case STOPS -> "STOPS";
            case WARNS -> "WARNS";
            case NOTES -> "NOTE";
        };
    }

    /**
     * What a remedy does, to follow its name; begins with a colon.
     *
     * @param severity of the finding it belongs to: nothing has to suffice for a note
     */
    public static String effect(Remedy remedy, Finding.Severity severity, Figures figures) {
        return switch (remedy.effect()) {
            case Remedy.Effect.Clears clears ->
                    ": clears it with "
                            + figures.value(clears.after())
                            + ", "
                            + figures.signed(clears.difference())
                            + "; "
                            + figures.sentence(clears.step())
                            + " less does not";
            case Remedy.Effect.Helps helps ->
                    (severity == Finding.Severity.NOTES ? ": " : ": helps and does not suffice, ")
                            + figures.value(helps.after())
                            + ", "
                            + figures.signed(helps.difference());
            case Remedy.Effect.Refused refused ->
                    ": refused, " + figures.sentence(refused.reason());
        };
    }
}
