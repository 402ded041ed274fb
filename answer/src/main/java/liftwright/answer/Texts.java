package liftwright.answer;

/**
 * The numbers of an answer as text in somebody's units, for JSON that is shown by whoever prints no
 * number himself. What it gives is still text from files: whoever shows it escapes it.
 */
public interface Texts {

    /** Without its band. */
    String value(Value value);

    /** Without its band, to the digits that make sense beside a number of {@code sizeSi}. */
    String beside(double sizeSi, Value value);

    /** The band alone, as {@code 398 to 425 N}; empty where there is none that can be seen. */
    String band(Value value);

    /** With its amounts. */
    String sentence(Sentence sentence);

    /**
     * What came of a remedy, in words that follow its name.
     *
     * @param severity of the finding it belongs to
     */
    String effect(Remedy remedy, Finding.Severity severity);

    /**
     * How a field is drawn on an axis.
     *
     * @param sizeSi greatest number of it that is shown, SI
     */
    Scale scale(Field field, double sizeSi);

    /**
     * One axis.
     *
     * @param unit its text; may be empty
     * @param per how many of it one SI unit is
     * @param plus what is shown where SI is nought
     */
    record Scale(String unit, double per, double plus) {}
}
