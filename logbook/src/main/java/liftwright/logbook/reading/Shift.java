package liftwright.logbook.reading;

/** How the clock of a source stands to that of the test, which is the first source's. */
public sealed interface Shift {

    /** The test's clock is this one. */
    record Own() implements Shift {}

    /**
     * Time of the test = time of the source + {@code byS}.
     *
     * @param byS s
     * @param toleranceS the true shift is within this of it where the alignment is right, s
     * @param confidence that it is, 0 to 1
     * @param by what was compared: {@code current p.1 with throttle}
     */
    record Found(double byS, double toleranceS, double confidence, String by) implements Shift {}

    /**
     * The clocks could not be brought together: times of the two must not be compared.
     *
     * @param why one sentence
     * @param bestS what fits best all the same, s
     * @param confidence that it is right, 0 to 1
     */
    record Unknown(String why, double bestS, double confidence) implements Shift {}

    /** What to add to the times of the source, s; 0 where nothing is known. */
    default double seconds() {
        return switch (this) {
            case Own _ -> 0;
            case Found found -> found.byS();
            case Unknown _ -> 0;
        };
    }
}
