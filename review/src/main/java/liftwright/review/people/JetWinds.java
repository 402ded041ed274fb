package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot.Mark;
import liftwright.answer.Section.Plot.Point;
import liftwright.answer.Section.Plot.Series;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.FreeJet;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.rig.Rig;

/**
 * How fast the air is, so far from the rig: one jet alone, all jets merged into one, and along the
 * ground. At full throttle on full packs. Which jets merge depends on where they point; all of them
 * is the end that reaches farthest.
 */
final class JetWinds {

    private static final double[] WAYS_M = {0.5, 1, 2, 3, 5, 8, 12, 20};

    /** Doubt of the wall jet, from memory ({@link FreeJet#wallSpeedShare}). */
    private static final double WALL_DOUBT = 0.3;

    private static final String DOUBT =
            "the doubt of the law, 30 % from memory, about that of the rig";

    /** Wind that raises dust and loose paper, m/s: the low end of Beaufort 4. */
    private static final double STIRS_MPS = 5.5;

    /** Ground is swept to this many times what the jets stir (common practice). */
    private static final double SWEPT = 2;

    private static final double GREATEST_M = 20;
    private static final int POINTS = 60;

    private final FullThrottle full;
    private final double[] exitM2;
    private final int fastest;

    JetWinds(Rig rig, FullThrottle full) {
        this.full = full;
        exitM2 = new double[rig.fans().size()];
        int best = 0;
        for (int k = 0; k < exitM2.length; k++) {
            exitM2[k] = rig.fans().get(k).type().exitArea().si();
            if (exitMps(full.declared(), k) > exitMps(full.declared(), best)) {
                best = k;
            }
        }
        fastest = best;
    }

    private double exitMps(Moment moment, int fan) {
        return Math.sqrt(moment.thrustN[fan] / (moment.densityKgpm3 * exitM2[fan]));
    }

    /** Exits that blow, together, m². */
    private double mergedM2(Moment moment) {
        double sum = 0;
        for (int k = 0; k < exitM2.length; k++) {
            sum += moment.thrustN[k] > 0 ? exitM2[k] : 0;
        }
        return sum;
    }

    /** Speed of one even stream with the momentum of all. */
    private double mergedExitMps(Moment moment) {
        double thrust = 0;
        for (double one : moment.thrustN) {
            thrust += one;
        }
        return Math.sqrt(thrust / (moment.densityKgpm3 * mergedM2(moment)));
    }

    private double mergedDiameterM(Moment moment) {
        return Math.sqrt(4 * mergedM2(moment) / Math.PI);
    }

    boolean blows() {
        return full.declared().thrustN.length > 0 && exitMps(full.declared(), fastest) > 0;
    }

    private double oneMps(Moment moment, double wayM) {
        return exitMps(moment, fastest) * FreeJet.axisSpeedShare(wayM, exitM2[fastest], 1);
    }

    private double allMps(Moment moment, double wayM) {
        return mergedExitMps(moment) * FreeJet.axisSpeedShare(wayM, mergedM2(moment), 1);
    }

    /** Along the ground, so far from where the merged jets meet it. */
    private double wallMps(Moment moment, double wayM) {
        return mergedExitMps(moment) * FreeJet.wallSpeedShare(wayM, mergedDiameterM(moment));
    }

    private boolean isWall(double wayM) {
        return wayM >= 2 * mergedDiameterM(full.declared());
    }

    /** Wind along the ground at a person, m/s; empty nearer than the law holds. */
    Optional<Value> windAt(double wayM) {
        return blows() && isWall(wayM) ? Optional.of(wall(wayM)) : Optional.empty();
    }

    private Value wall(double wayM) {
        ToDoubleFunction<Moment> speed = m -> wallMps(m, wayM);
        double at = speed.applyAsDouble(full.declared());
        Optional<Band> drawn = full.band(speed);
        return Value.of(
                "wall-jet-speed",
                at,
                new Band(
                        (1 - WALL_DOUBT) * drawn.map(Band::low).orElse(at),
                        (1 + WALL_DOUBT) * drawn.map(Band::high).orElse(at),
                        0.95,
                        DOUBT,
                        drawn.map(Band::draws).orElse(0),
                        0));
    }

    List<Section> sections() {
        List<List<Value>> rows = new ArrayList<>();
        for (double way : WAYS_M) {
            rows.add(
                    List.of(
                            Value.of("jet-way", way),
                            full.value("jet-speed-one", m -> oneMps(m, way)),
                            full.value("jet-speed-merged", m -> allMps(m, way)),
                            isWall(way)
                                    ? wall(way)
                                    : new Value(
                                            "wall-jet-speed",
                                            new Value.Figure.NotComputed("too near"))));
        }
        return List.of(
                new Section.Table(
                        "people-jets",
                        "How fast the jets are, so far away, at full throttle",
                        List.of("jet-way", "jet-speed-one", "jet-speed-merged", "wall-jet-speed"),
                        rows),
                plot());
    }

    private Section plot() {
        List<Point> one = new ArrayList<>();
        List<Point> all = new ArrayList<>();
        List<Point> wall = new ArrayList<>();
        Moment at = full.declared();
        for (int k = 0; k <= POINTS; k++) {
            double way = GREATEST_M * k / POINTS;
            one.add(new Point(way, oneMps(at, way)));
            all.add(new Point(way, allMps(at, way)));
            if (isWall(way)) {
                wall.add(new Point(way, wallMps(at, way)));
            }
        }
        List<Series> series = new ArrayList<>();
        series.add(new Series("one jet, on its axis", Mark.LINE, one));
        series.add(new Series("all jets merged, on the axis", Mark.DASHES, all));
        if (!wall.isEmpty()) {
            series.add(new Series("along the ground", Mark.DOT, wall));
        }
        return new Section.Plot(
                "jet-reach", "Speed of the jets over the distance", "jet-way", "jet-speed", series);
    }

    /** Radius within which the wall jet raises dust, m. */
    private double stirredM(Moment moment) {
        return FreeJet.wallReachM(STIRS_MPS / mergedExitMps(moment), mergedDiameterM(moment));
    }

    Finding swept() {
        double radius = SWEPT * stirredM(full.declared());
        Optional<Band> drawn = full.band(m -> SWEPT * stirredM(m));
        Band band =
                new Band(
                        drawn.map(Band::low).orElse(radius) * Math.pow(1 - WALL_DOUBT, 1 / 1.1),
                        drawn.map(Band::high).orElse(radius) * Math.pow(1 + WALL_DOUBT, 1 / 1.1),
                        0.95,
                        DOUBT,
                        drawn.map(Band::draws).orElse(0),
                        0);
        return Finding.of(
                        Severity.NOTES,
                        "swept-ground",
                        Sentence.words("sweep the ground to ")
                                .then(Measure.LENGTH, radius, band)
                                .then(" around: the merged jets raise dust to half of it"),
                        "from memory: wind that raises dust is that of Beaufort 4; twice of it is common practice."
                                + " Grit at the speed of the jet hurts eyes and blades: goggles for all who are near")
                .judging(Value.of("swept-radius", radius, band));
    }
}
