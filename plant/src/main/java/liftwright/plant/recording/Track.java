package liftwright.plant.recording;

/**
 * One channel.
 *
 * @param signal what is measured
 * @param of of what: the id of a part, or {@link #ALL}
 * @param errorSi 95 % of the instrument's errors are smaller, SI, ≥ 0; where both are 0, nothing is
 *     said of it
 * @param errorShare of the reading, added in quadrature, ≥ 0
 * @param samples what it showed
 */
public record Track(Signal signal, String of, double errorSi, double errorShare, Samples samples) {

    /** The whole rig, every fan. */
    public static final String ALL = "all";

    public Track {
        if (!(errorSi >= 0) || !(errorShare >= 0)) {
            throw new IllegalArgumentException("an error below nought");
        }
    }

    /** The same channel with other samples. */
    public Track showing(Samples others) {
        return new Track(signal, of, errorSi, errorShare, others);
    }

    /** Whether anything is said of the instrument's errors: none has no errors at all. */
    public boolean hasError() {
        return errorSi > 0 || errorShare > 0;
    }

    /** As in the head of a log's column: {@code current p.1}. */
    public String name() {
        return of.equals(ALL) ? signal.word() : signal.word() + " " + of;
    }
}
