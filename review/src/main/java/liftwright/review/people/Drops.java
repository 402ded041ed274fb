package liftwright.review.people;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot.Mark;
import liftwright.answer.Section.Plot.Point;
import liftwright.answer.Section.Plot.Series;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Ballistics;
import liftwright.plant.Plant;
import liftwright.plant.motion.Body;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** How fast a fall ends, from how high, once all thrust is gone. */
final class Drops {

    private static final double[] HEIGHTS_M = {0.3, 0.5, 1, 1.8, 3, 5};

    private static final double GREATEST_M = 5;
    private static final int POINTS = 50;

    private final Rig rig;
    private final double massKg;
    private final double densityKgpm3;

    Drops(Plant plant) {
        rig = plant.rig();
        double[] p = plant.parameters().nominal();
        massKg = plant.massKg(p);
        densityKgpm3 = plant.siteDensityKgpm3(p);
    }

    private static double vacuumMps(double heightM) {
        return Ballistics.impactMps(heightM, Double.POSITIVE_INFINITY);
    }

    List<Section> sections() {
        TreeSet<Double> heights = new TreeSet<>();
        for (double height : HEIGHTS_M) {
            heights.add(height);
        }
        heights.add(rig.demands().height().si());
        double terminal = Ballistics.terminalMps(massKg, Body.USUAL_DRAG_AREA_M2, densityKgpm3);
        List<List<Value>> rows = new ArrayList<>();
        for (double height : heights) {
            double speed = vacuumMps(height);
            rows.add(
                    List.of(
                            Value.of("drop-height", height),
                            Value.of("drop-speed", speed),
                            Value.of("drop-speed-drag", Ballistics.impactMps(height, terminal)),
                            Value.of("drop-energy", massKg * speed * speed / 2)));
        }
        List<Point> curve = new ArrayList<>();
        for (int k = 0; k <= POINTS; k++) {
            double height = GREATEST_M * k / POINTS;
            curve.add(new Point(height, vacuumMps(height)));
        }
        double limit = rig.limits().si(LimitName.IMPACT_SPEED);
        return List.of(
                new Section.Table(
                        "impact-speeds",
                        "How fast a fall ends, by height of the soles",
                        List.of("drop-height", "drop-speed", "drop-speed-drag", "drop-energy"),
                        rows),
                new Section.Plot(
                        "impact-curve",
                        "Speed at the end of a fall over its height",
                        "drop-height",
                        "drop-speed",
                        List.of(
                                new Series("a fall without drag", Mark.LINE, curve),
                                new Series(
                                        "limit of impact",
                                        Mark.DASHES,
                                        List.of(
                                                new Point(0, limit),
                                                new Point(GREATEST_M, limit))))));
    }

    Finding finding() {
        double height = rig.demands().height().si();
        double speed = vacuumMps(height);
        double limit = rig.limits().si(LimitName.IMPACT_SPEED);
        boolean over = speed > limit;
        return Finding.of(
                        over ? Severity.WARNS : Severity.NOTES,
                        "drop-speed",
                        Sentence.words("a fall from the ")
                                .then(Measure.LENGTH, height)
                                .then(" that are asked for ends at ")
                                .then(Measure.SPEED, speed)
                                .then("; ")
                                .then(Measure.SPEED, limit)
                                .then(" is reached from ")
                                .then(Measure.LENGTH, Ballistics.heightOfM(limit)),
                        "all thrust gone at once, upright, without drag; mats and bent knees take some of it,"
                                + " a rig on the back does not")
                .at(RigPath.of("demands", "height").toString())
                .against(
                        Value.of("drop-speed", speed),
                        new Finding.Limit(
                                Value.of("drop-speed", limit),
                                rig.limits().origin(LimitName.IMPACT_SPEED)));
    }
}
