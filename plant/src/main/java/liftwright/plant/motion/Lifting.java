package liftwright.plant.motion;

/** What lifts the body, with states of its own beside height and speed. Called in the loop. */
interface Lifting {

    /** How many states it has. */
    int states();

    /** Writes the states it begins with. */
    void begin(double[] y, int from);

    /**
     * Upward force at the present states, N.
     *
     * @param from where its states begin in {@code y}
     * @param upMps speed of the body
     */
    double upN(double timeS, double[] y, int from, double upMps);

    /** Derivatives of its states. */
    void slopes(double timeS, double[] y, int from, double[] slope);

    /** When what it is told changes next, s: a time after {@code timeS}, or infinity. */
    double nextChangeS(double timeS);

    /** Whether thrust worth telling acted outside its law since {@link #begin}. */
    boolean beyondLaw();

    /** Energy of its own that is not accounted for, over what was turned over. */
    double closure(double[] y, int from);

    /** Takes the change that is due at a moment. */
    void change(double timeS);
}
