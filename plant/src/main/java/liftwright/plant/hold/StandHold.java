package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.plant.hold.Footprint.Edge;
import liftwright.plant.hold.Footprint.Spot;
import liftwright.plant.hold.Hold.Way;
import org.jspecify.annotations.Nullable;

/**
 * Statics of a rigid stand on a level floor under any of its fans at any throttle up to full. Every
 * worst case is that of the whole set of what the fans can do together, in closed form ({@link
 * Subsets}).
 *
 * <p>Without bolts it stands by weight and friction: it slides where the push along the floor
 * exceeds friction on what weight the fans leave, tips where their moment about an edge exceeds
 * that of the weight, turns on its feet where their moment about the upright exceeds that of the
 * friction at half the lesser distance of its feet, wherever its weight comes to rest. Sliding and
 * turning at once are not combined.
 *
 * <p>With bolts these carry all that is not weight, friction counts for nothing (common practice).
 * A bolt's pull is the greatest of three: with the plate turning about an edge, straight with the
 * distance from that edge; the same and, of what tips over an edge beside it, the moment about the
 * stand's middle, weight and lift being counted once; with the plate lifted off, which counts from
 * where all fans that push up lift it off, as that of a rigid plate on equal springs. Its shear is
 * its share of the push, and of the moment about the upright by its distance from the bolts'
 * middle. Both at once: shear over 0.6 of the strength and pull over 1.4 times it are at most 1
 * together (EN 1993-1-8, table 3.4, from memory).
 */
public final class StandHold {

    /** Shear strength of a bolt over its strength in pull (EN 1993-1-8, from memory). */
    public static final double SHEAR_SHARE = 0.6;

    /** Share that pull takes of a bolt that is sheared as well (EN 1993-1-8, from memory). */
    private static final double PULL_BESIDE_SHEAR = 1.4;

    /**
     * What holds a stand.
     *
     * @param feet rectangle of the feet
     * @param steady what presses it down whatever the fans do: weight, and clamps
     * @param friction between feet and floor
     * @param bolts empty where there are none
     */
    public record Floor(Footprint feet, Push steady, double friction, Optional<Bolts> bolts) {}

    /**
     * Bolts of a stand.
     *
     * @param count ≥ 1
     * @param pattern rectangle that they stand on
     * @param strengthN of each in pull, N
     */
    public record Bolts(int count, Footprint pattern, double strengthN) {}

    private final List<Push> fans;
    private final Floor floor;

    private StandHold(List<Push> fans, Floor floor) {
        this.fans = fans;
        this.floor = floor;
    }

    /** Every way in which it gives, the weakest first. */
    public static List<Hold> of(List<Push> fans, Floor floor) {
        StandHold hold = new StandHold(fans, floor);
        List<Hold> ways = new ArrayList<>(floor.bolts.map(hold::bolted).orElseGet(hold::standing));
        ways.sort(Comparator.comparingDouble(Hold::times).thenComparing(Hold::way));
        return ways;
    }

    private double[] each(ToDoubleFunction<Push> load) {
        return fans.stream().mapToDouble(load).toArray();
    }

    private List<Hold> standing() {
        double pressN = -floor.steady.upN();
        List<Hold> ways = new ArrayList<>();
        ways.add(
                new Hold(
                        Way.SLIDES,
                        Optional.empty(),
                        Subsets.greatest(
                                each(fan -> fan.force().x()),
                                each(fan -> fan.force().y()),
                                each(fan -> floor.friction * fan.upN())),
                        floor.friction * pressN));
        double gripM = floor.friction * Math.min(floor.feet.apartM(), floor.feet.deepM()) / 2;
        Subset turning = Subset.NONE;
        for (int sense : new int[] {-1, 1}) {
            turning =
                    turning.worse(
                            Subsets.greatest(
                                    each(fan -> sense * fan.moment().z() + gripM * fan.upN())));
        }
        ways.add(new Hold(Way.TURNS, Optional.empty(), turning, gripM * pressN));
        for (Edge edge : Edge.values()) {
            ways.add(
                    new Hold(
                            Way.TIPS,
                            Optional.of(edge),
                            Subsets.greatest(each(fan -> floor.feet.tippingNm(edge, fan))),
                            -floor.feet.tippingNm(edge, floor.steady)));
        }
        return ways;
    }

    private List<Hold> bolted(Bolts bolts) {
        List<Spot> spots = bolts.pattern.spots(bolts.count);
        List<Pull> pulls = new ArrayList<>();
        for (Spot spot : spots) {
            pulls.add(lifted(spot, spots));
            for (Edge edge : Edge.values()) {
                about(edge, spot, spots)
                        .ifPresent(
                                one -> {
                                    pulls.add(one);
                                    for (Edge beside : edge.beside()) {
                                        crossing(beside, spot, spots)
                                                .ifPresent(other -> pulls.add(one.plus(other)));
                                    }
                                });
            }
        }
        List<Hold> ways = new ArrayList<>();
        @Nullable Hold sheared = null;
        for (Spot spot : spots) {
            Shear shear = shear(spot, spots);
            Hold hold =
                    new Hold(
                            Way.BOLT_SHEARED,
                            Optional.empty(),
                            Subsets.greatest(shear.forward, shear.right, new double[fans.size()]),
                            SHEAR_SHARE * bolts.strengthN);
            sheared = sheared == null || hold.times() < sheared.times() ? hold : sheared;
        }
        if (sheared != null) {
            ways.add(sheared);
        }
        ways.add(pulled(pulls, bolts.strengthN));
        ways.add(both(pulls, spots, bolts.strengthN));
        return ways;
    }

    /**
     * Pull at one bolt, straight in the fans' strengths.
     *
     * @param spot the bolt
     * @param each of every fan at full throttle, N
     * @param heldN what presses the stand down takes off it, N
     * @param about edge, where there is one alone
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Pull(Spot spot, double[] each, double heldN, Optional<Edge> about) {

        Pull plus(Pull other) {
            double[] sum = new double[each.length];
            for (int k = 0; k < sum.length; k++) {
                sum[k] = each[k] + other.each[k];
            }
            return new Pull(spot, sum, heldN + other.heldN, about);
        }
    }

    /** Pull of a bolt for each N·m about an edge, 1/m; 0 on the edge and beyond. */
    private double perNm(Edge edge, Spot spot, List<Spot> spots) {
        double squares = 0;
        for (Spot one : spots) {
            double insideM = Math.max(0, floor.feet.insideM(edge, one));
            squares += insideM * insideM;
        }
        double insideM = floor.feet.insideM(edge, spot);
        return insideM > 0 ? insideM / squares : 0;
    }

    /** The plate turns about an edge; empty for a bolt on it or beyond. */
    private Optional<Pull> about(Edge edge, Spot spot, List<Spot> spots) {
        double perNm = perNm(edge, spot, spots);
        return perNm > 0
                ? Optional.of(
                        pull(
                                spot,
                                Optional.of(edge),
                                push -> perNm * floor.feet.tippingNm(edge, push)))
                : Optional.empty();
    }

    /** Moments about the middle alone, which tip over an edge. */
    private Optional<Pull> crossing(Edge edge, Spot spot, List<Spot> spots) {
        double perNm = perNm(edge, spot, spots);
        double halfM = floor.feet.halfM(edge);
        return perNm > 0
                ? Optional.of(
                        pull(
                                spot,
                                Optional.of(edge),
                                push ->
                                        perNm
                                                * (floor.feet.tippingNm(edge, push)
                                                        - halfM * push.upN())))
                : Optional.empty();
    }

    private Pull pull(Spot spot, Optional<Edge> about, ToDoubleFunction<Push> of) {
        return new Pull(spot, each(of), -of.applyAsDouble(floor.steady), about);
    }

    /** A moment about +y lifts the front, one about +x lowers the right. */
    private static double pitchPerM(Spot spot, List<Spot> spots) {
        double squares = spots.stream().mapToDouble(s -> s.forwardM() * s.forwardM()).sum();
        return squares > 0 ? spot.forwardM() / squares : 0;
    }

    private static double rollPerM(Spot spot, List<Spot> spots) {
        double squares = spots.stream().mapToDouble(s -> s.rightM() * s.rightM()).sum();
        return squares > 0 ? spot.rightM() / squares : 0;
    }

    /** The plate is off the floor, all bolts pull. */
    private Pull lifted(Spot spot, List<Spot> spots) {
        double pitch = pitchPerM(spot, spots);
        double roll = rollPerM(spot, spots);
        return pull(
                spot,
                Optional.empty(),
                push ->
                        push.upN() / spots.size()
                                + pitch * push.moment().y()
                                - roll * push.moment().x());
    }

    private Hold pulled(List<Pull> pulls, double strengthN) {
        @Nullable Hold worst = null;
        for (Pull pull : pulls) {
            Hold hold =
                    hold(
                            Way.BOLT_PULLED,
                            pull,
                            Subsets.greatest(pull.each),
                            strengthN + pull.heldN);
            worst = worst == null || hold.times() < worst.times() ? hold : worst;
        }
        return Objects.requireNonNull(worst);
    }

    /** A plate that is off the floor is none before the fans can lift it. */
    private Hold hold(Way way, Pull pull, Subset worst, double capacity) {
        if (pull.about.isPresent()) {
            return new Hold(way, pull.about, worst, capacity);
        }
        double liftN = Subsets.greatest(each(Push::upN)).load();
        if (liftN == 0) {
            return new Hold(way, pull.about, Subset.NONE, capacity);
        }
        double from = -floor.steady.upN() / liftN;
        return new Hold(way, pull.about, worst, Math.max(capacity, from * worst.load()));
    }

    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    private record Shear(double[] forward, double[] right) {}

    private Shear shear(Spot spot, List<Spot> spots) {
        double square = 0;
        for (Spot one : spots) {
            square += one.forwardM() * one.forwardM() + one.rightM() * one.rightM();
        }
        int count = spots.size();
        double perNm = square > 0 ? 1 / square : 0;
        return new Shear(
                each(fan -> fan.force().x() / count - perNm * spot.rightM() * fan.moment().z()),
                each(fan -> fan.force().y() / count + perNm * spot.forwardM() * fan.moment().z()));
    }

    private Hold both(List<Pull> pulls, List<Spot> spots, double strengthN) {
        double shearN = SHEAR_SHARE * strengthN;
        double pullN = PULL_BESIDE_SHEAR * strengthN;
        @Nullable Hold worst = null;
        for (Pull pull : pulls) {
            Shear shear = shear(pull.spot, spots);
            Hold hold =
                    hold(
                            Way.BOLT_BOTH,
                            pull,
                            Subsets.greatest(
                                    over(shear.forward, shearN),
                                    over(shear.right, shearN),
                                    over(pull.each, pullN)),
                            1 + pull.heldN / pullN);
            worst = worst == null || hold.times() < worst.times() ? hold : worst;
        }
        return Objects.requireNonNull(worst);
    }

    private static double[] over(double[] each, double by) {
        double[] shares = new double[each.length];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = each[k] / by;
        }
        return shares;
    }
}
