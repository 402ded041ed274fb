package liftwright.rig.shape.kind;

import java.util.ArrayDeque;
import java.util.List;
import liftwright.rig.RigPath;
import liftwright.rig.text.Span;
import org.jspecify.annotations.Nullable;

/**
 * Where a value stands: the way to it from the top of the file, and its stretch of text. The path
 * is written out only when somebody asks, since most values never give a problem.
 *
 * @param above what holds it; null at the top
 * @param step the last segment of its path
 * @param span its text; see {@link #NOWHERE}
 */
public record Spot(@Nullable Spot above, String step, Span span) {

    /** The span of what no text holds: of a declaration made in memory. */
    public static final Span NOWHERE = new Span(0, 0, 0, 0);

    public static Spot top(Span span) {
        return new Spot(null, "", span);
    }

    public Spot child(String childStep, Span childSpan) {
        return new Spot(this, childStep, childSpan);
    }

    /** The place of something that is not written but would stand here. */
    public Spot missing(String childStep) {
        return new Spot(this, childStep, span);
    }

    public RigPath path() {
        var segments = new ArrayDeque<String>();
        for (Spot spot = this; spot.above != null; spot = spot.above) {
            segments.addFirst(spot.step);
        }
        return new RigPath(List.copyOf(segments));
    }
}
