package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section.Plot;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Gravity;
import liftwright.plant.LossPoint;
import liftwright.plant.Losses;
import liftwright.plant.fault.CutClass;
import liftwright.plant.fault.Fault;
import liftwright.plant.fault.Faults;
import liftwright.plant.motion.Body;
import liftwright.plant.motion.RunawayPath;
import liftwright.plant.motion.Surroundings;
import liftwright.plant.motion.TetherRun;
import liftwright.quantity.Measure;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * Heights from which a loss ends in a blow beyond the limit and nothing declared acts: no line that
 * catches, no lift of what is left. Speed at the ground over the height of the soles, from a hover,
 * after the loss of all thrust and after that of the worst single part.
 */
final class NoWayOut {

    /** The axis goes at least so far, m. */
    private static final double LEAST_SPAN_M = 3;

    /** And no farther, m: beyond, nothing changes but the number. */
    private static final double MOST_SPAN_M = 30;

    private static final int POINTS = 120;
    private static final double HORIZON_S = 30;

    /** Parts whose loss takes thrust and leaves the rest as it was. */
    private static final Set<Fault.Kind> LOSSES =
            EnumSet.of(
                    Fault.Kind.FAN,
                    Fault.Kind.CONTROLLER,
                    Fault.Kind.PACK,
                    Fault.Kind.FUSE,
                    Fault.Kind.RUN,
                    Fault.Kind.JOINT,
                    Fault.Kind.POLE);

    /** The worst single part: its words, and lift without it over weight. */
    private record Single(String words, double share) {}

    /** A stretch of heights. */
    private record Stretch(double fromM, double toM) {}

    private final Rig rig;
    private final double limitMps;
    private final double spanM;
    private final List<Plot.Point> whole;
    private final Optional<Stretch> wholeZone;
    private final Optional<Single> single;
    private final List<Plot.Point> part;
    private final Optional<Stretch> partZone;

    private NoWayOut(RunawayRuns runs, Optional<Overhead> overhead) {
        rig = runs.plant().rig();
        limitMps = rig.limits().si(LimitName.IMPACT_SPEED);
        double askedM = rig.demands().height().si();
        double apexM = runs.slowest().map(run -> run.path().apex().heightM()).orElse(0.0);
        spanM = Math.min(MOST_SPAN_M, Math.max(LEAST_SPAN_M, 1.1 * Math.max(askedM, apexM)));
        Surroundings around = overhead.map(Overhead::catching).orElse(Surroundings.OPEN);
        Body body = runs.runaway().body();
        DoubleUnaryOperator fall = height -> impactMps(body, height, 0, around);
        whole = curve(fall);
        wholeZone = zone(whole);
        single = worst(runs);
        double left = single.map(Single::share).orElse(1.0);
        part = curve(height -> left >= 1 ? 0 : impactMps(body, height, left, around));
        partZone = zone(part);
    }

    static NoWayOut of(RunawayRuns runs, Optional<Overhead> overhead) {
        return new NoWayOut(runs, overhead);
    }

    /** Speed at the ground of a body let go at a height with so much of its weight lifted. */
    private static double impactMps(Body body, double heightM, double share, Surroundings around) {
        if (heightM <= 0) {
            return 0;
        }
        double upN = share * body.massKg() * Gravity.STANDARD_MPS2;
        RunawayPath path = TetherRun.thrust(body, heightM, 0, upN, HORIZON_S, around, HORIZON_S);
        return path.impact().map(at -> Math.abs(at.upMps())).orElse(0.0);
    }

    private List<Plot.Point> curve(DoubleUnaryOperator impact) {
        List<Plot.Point> points = new ArrayList<>();
        for (int k = 0; k <= POINTS; k++) {
            double height = spanM * k / POINTS;
            points.add(new Plot.Point(height, impact.applyAsDouble(height)));
        }
        return points;
    }

    /** The first stretch beyond the limit, its ends on straight lines between the points. */
    private Optional<Stretch> zone(List<Plot.Point> points) {
        double from = -1;
        double to = spanM;
        for (int k = 1; k < points.size(); k++) {
            Plot.Point a = points.get(k - 1);
            Plot.Point b = points.get(k);
            boolean before = a.y() > limitMps;
            boolean after = b.y() > limitMps;
            if (before != after) {
                double at = a.x() + (limitMps - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
                if (after && from < 0) {
                    from = at;
                } else if (before && from >= 0) {
                    to = at;
                    break;
                }
            }
        }
        return from >= 0 && from < to ? Optional.of(new Stretch(from, to)) : Optional.empty();
    }

    /** The single loss that leaves least lift on full packs. */
    private static Optional<Single> worst(RunawayRuns runs) {
        double[] p = runs.plant().parameters().nominal();
        Losses.Worker worker = runs.plant().losses(Losses.Charge.FULL).worker();
        List<Fault> faults =
                Faults.of(runs.plant().rig()).stream()
                        .filter(fault -> LOSSES.contains(fault.kind()))
                        .toList();
        Optional<Single> worst = Optional.empty();
        for (CutClass cut : CutClass.of(faults)) {
            LossPoint point = worker.at(p, cut.effect());
            double share = point.liftN() / point.weightN();
            if (point.converged() && share < worst.map(Single::share).orElse(1e9)) {
                worst = Optional.of(new Single(cut.members().getFirst().part().text(), share));
            }
        }
        return worst;
    }

    Plot plot() {
        List<Plot.Zone> zones = new ArrayList<>();
        wholeZone.ifPresent(
                stretch ->
                        zones.add(
                                new Plot.Zone(
                                        "no way out after the loss of all thrust",
                                        stretch.fromM,
                                        stretch.toM)));
        partZone.ifPresent(
                stretch ->
                        zones.add(
                                new Plot.Zone(
                                        "nor after the loss of " + words(),
                                        stretch.fromM,
                                        stretch.toM)));
        List<Plot.Series> series = new ArrayList<>();
        series.add(
                new Plot.Series(
                        "limit",
                        Plot.Mark.DASHES,
                        List.of(new Plot.Point(0, limitMps), new Plot.Point(spanM, limitMps))));
        series.add(new Plot.Series("all thrust lost", Plot.Mark.LINE, whole));
        single.ifPresent(
                own ->
                        series.add(
                                new Plot.Series(
                                        own.words + " lost, the rest at full",
                                        Plot.Mark.LINE,
                                        part)));
        return new Plot(
                "no-way-out",
                "Speed at the ground after a loss, by height of the soles",
                "height-above-ground",
                "runaway-impact",
                series,
                zones);
    }

    private String words() {
        return single.map(Single::words).orElse("");
    }

    List<Finding> findings() {
        if (wholeZone.isEmpty()) {
            return List.of();
        }
        Stretch stretch = wholeZone.get();
        double askedM = rig.demands().height().si();
        boolean within = askedM > stretch.fromM && askedM <= stretch.toM;
        Sentence sentence = Sentence.words("from ").then(Measure.LENGTH, stretch.fromM);
        sentence =
                stretch.toM < spanM
                        ? sentence.then(" to ").then(Measure.LENGTH, stretch.toM)
                        : sentence.then(" up");
        sentence =
                sentence.then(
                        " of height there is no way out after the loss of all thrust: nothing"
                                + " declared catches that fall");
        sentence =
                sentence.then("; ")
                        .then(Measure.LENGTH, askedM)
                        .then(within ? " is asked, which is within" : " is asked, which is below");
        return List.of(
                Finding.of(within ? Severity.WARNS : Severity.NOTES, "no-way-out", sentence, left())
                        .at(RigPath.of("demands", "height").toString())
                        .against(
                                Value.of("runaway-impact", impactAt(askedM)),
                                new Finding.Limit(
                                        Value.of("runaway-impact", limitMps),
                                        LimitName.IMPACT_SPEED.key()
                                                + ": "
                                                + rig.limits().origin(LimitName.IMPACT_SPEED))));
    }

    private double impactAt(double heightM) {
        double at = Math.min(heightM, spanM) / spanM * POINTS;
        int k = (int) Math.min(POINTS - 1, Math.floor(at));
        double share = at - k;
        return whole.get(k).y() + share * (whole.get(k + 1).y() - whole.get(k).y());
    }

    private String left() {
        return single.map(
                        own ->
                                own.share >= 1
                                        ? "what is left after the loss of any one part still carries"
                                                + " the weight"
                                        : String.format(
                                                Locale.ROOT,
                                                "without %s the rest lifts %.0f %% of the weight",
                                                own.words,
                                                100 * own.share))
                .orElse("");
    }
}
