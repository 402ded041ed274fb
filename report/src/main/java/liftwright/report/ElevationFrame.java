package liftwright.report;

import java.util.ArrayList;
import java.util.List;
import liftwright.answer.Section.Elevation;
import liftwright.answer.Section.Elevation.Kind;
import liftwright.answer.Section.Elevation.Shape;
import liftwright.answer.Section.Elevation.Spot2;

/**
 * What a side view spans: all that is drawn and pulled at, the ground, and some room. Where nobody
 * may stand is mostly far wider and does not count, unless it is an upright line: then it is where
 * the author wants it, and means all that lies beyond.
 *
 * @param leftM left edge, m across
 * @param lowM lower edge, m above ground
 * @param wideM m, above 0
 * @param highM m, above 0
 */
public record ElevationFrame(double leftM, double lowM, double wideM, double highM) {

    private static final double ROOM = 0.08;

    /** Of nothing one still sees a piece of ground. */
    private static final double LEAST_M = 0.5;

    /** Around everything but the ground's width and where nobody may stand. */
    public static ElevationFrame of(Elevation elevation) {
        List<Spot2> spots = new ArrayList<>();
        for (Shape shape : elevation.shapes()) {
            if (isUpright(shape)
                    || (shape.kind() != Kind.KEEP_OUT && shape.kind() != Kind.GROUND)) {
                spots.addAll(shape.outline());
            }
        }
        elevation.loads().forEach(load -> spots.add(load.at()));
        double left = spots.stream().mapToDouble(Spot2::acrossM).min().orElse(0);
        double right = spots.stream().mapToDouble(Spot2::acrossM).max().orElse(0);
        double low = Math.min(0, spots.stream().mapToDouble(Spot2::upM).min().orElse(0));
        double high = Math.max(0, spots.stream().mapToDouble(Spot2::upM).max().orElse(0));
        double room = ROOM * Math.max(LEAST_M, Math.max(right - left, high - low));
        return new ElevationFrame(
                left - 2 * room,
                low,
                Math.max(LEAST_M, right - left) + 4 * room,
                Math.max(LEAST_M, high - low) + 2 * room);
    }

    /** Whether a shape keeps people out from all that lies beyond it. */
    public static boolean isUpright(Shape shape) {
        double acrossM = shape.outline().getFirst().acrossM();
        return shape.kind() == Kind.KEEP_OUT
                && shape.outline().stream().allMatch(spot -> spot.acrossM() == acrossM);
    }

    /** The middle, m across. */
    public double middleM() {
        return leftM + wideM / 2;
    }
}
