package liftwright.trials.proof;

/**
 * Between which times something happened, from the press.
 *
 * @param lowS s, ≥ 0
 * @param highS s; what a judgement rests on
 */
public record Span(double lowS, double highS) {

    public Span {
        if (!(lowS >= 0) || !(highS >= lowS) || highS == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("not a span: " + lowS + " to " + highS);
        }
    }

    /** The later of both at each end. */
    Span worst(Span other) {
        return new Span(Math.max(lowS, other.lowS), Math.max(highS, other.highS));
    }

    Span plus(Span other) {
        return new Span(lowS + other.lowS, highS + other.highS);
    }
}
