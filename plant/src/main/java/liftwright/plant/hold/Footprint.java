package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a stand meets the ground: the rectangle that its outermost feet span, or a rectangle along
 * whose left and right sides bolts are spread. Its middle is the origin of {@link Push}.
 *
 * @param apartM from left to right, &gt; 0, m
 * @param deepM from back to front, &gt; 0, m
 */
public record Footprint(double apartM, double deepM) {

    public Footprint {
        if (!(apartM > 0) || !(deepM > 0)) {
            throw new IllegalArgumentException("a footprint has a width and a depth");
        }
    }

    /** An edge over which a stand can tip, and which way. */
    public enum Edge {
        FRONT(1, 0),
        BACK(-1, 0),
        RIGHT(0, 1),
        LEFT(0, -1);

        private final int outX;
        private final int outY;

        Edge(int outX, int outY) {
            this.outX = outX;
            this.outY = outY;
        }

        /** The two edges that meet this one. */
        List<Edge> beside() {
            return switch (this) {
                case FRONT, BACK -> List.of(LEFT, RIGHT);
                case LEFT, RIGHT -> List.of(FRONT, BACK);
            };
        }
    }

    /** Place of a bolt on the ground, m. */
    public record Spot(double forwardM, double rightM) {}

    /** From the middle to an edge, m. */
    public double halfM(Edge edge) {
        return (edge.outX != 0 ? deepM : apartM) / 2;
    }

    /** From an edge inwards to a spot, m; below 0 outside. */
    public double insideM(Edge edge, Spot spot) {
        return halfM(edge) - edge.outX * spot.forwardM - edge.outY * spot.rightM;
    }

    /** Moment of a fan that tips over an edge, about that edge; below 0 where it holds, N·m. */
    public double tippingNm(Edge edge, Push push) {
        return edge.outY * push.moment().x()
                - edge.outX * push.moment().y()
                + halfM(edge) * push.upN();
    }

    /**
     * Spots of bolts, half of them along each side from corner to corner; of an odd number one is
     * in the middle of the rectangle.
     *
     * @param count ≥ 1
     */
    public List<Spot> spots(int count) {
        List<Spot> spots = new ArrayList<>();
        int side = count / 2;
        for (int k = 0; k < side; k++) {
            double forward = side == 1 ? 0 : deepM * ((double) k / (side - 1) - 0.5);
            spots.add(new Spot(forward, -apartM / 2));
            spots.add(new Spot(forward, apartM / 2));
        }
        if (count % 2 == 1) {
            spots.add(new Spot(0, 0));
        }
        return spots;
    }
}
