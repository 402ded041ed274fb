package liftwright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;
import liftwright.answer.Section;
import liftwright.answer.Section.Timeline.Bar;
import liftwright.answer.Value;
import liftwright.plant.Cause;
import liftwright.plant.heat.HeatPart;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;

/**
 * Every limit of the flight in one order of time, whether heat, current, voltage or charge reaches
 * it. Alike parts stand in one bar, that of the first of them.
 */
final class HeatTimeline {

    private final Rig rig;
    private final HeatParts parts;
    private final HeatRun run;
    private final HeatJudgement judgement;
    private final HeatFlight flight;

    HeatTimeline(HeatParts parts, HeatRun run, HeatJudgement judgement, HeatFlight flight) {
        this.rig = parts.rig();
        this.parts = parts;
        this.run = run;
        this.judgement = judgement;
        this.flight = flight;
    }

    /** A bar with what orders it. */
    private record Placed(double atS, double nearness, Bar bar) {}

    Section section() {
        List<Placed> placed = new ArrayList<>();
        for (HeatParts.Group group : parts.groups()) {
            if (group.parts().stream().anyMatch(parts::isLimited)) {
                placed.add(heat(group));
            }
            if (group.kind() == HeatPart.Kind.FUSE) {
                placed.add(opening(group));
            }
        }
        for (Cause cause : Cause.values()) {
            supply(cause, placed);
        }
        placed.sort(
                Comparator.comparingDouble(Placed::atS)
                        .thenComparing(Comparator.comparingDouble(Placed::nearness).reversed()));
        return new Section.Timeline(
                "first-limits",
                "What gives out first in " + flight.task().words() + ", as far as it goes",
                placed.stream().map(Placed::bar).toList(),
                Math.max(run.onwards().timeS(), 1e-3));
    }

    private Placed heat(HeatParts.Group group) {
        int worst = HeatWorst.inFlight(parts, group, run);
        double limitK = parts.part(worst).limitK();
        OptionalDouble at = run.reached(worst);
        double hottestK = run.onwards().hottestK(worst);
        double airK = run.curve().getFirst().kelvin().get(worst);
        double[] draws = HeatWorst.reachedS(group, judgement);
        String where = often(at, draws);
        Value never =
                run.isRising(worst)
                        ? new Value(
                                "time-to-limit",
                                new Value.Figure.NotComputed("still warming when the flight ends"))
                        : new Value("time-to-limit", new Value.Figure.Never());
        return new Placed(
                at.orElse(Double.POSITIVE_INFINITY),
                (hottestK - airK) / Math.max(1, limitK - airK),
                new Bar(
                        parts.id(worst),
                        parts.what(group, worst),
                        at.isPresent() ? time(at.getAsDouble(), draws) : never,
                        Value.of("hottest", hottestK),
                        Value.of("hottest", limitK),
                        where));
    }

    /** With its band where every draw reaches it. */
    private static Value time(double nominal, double[] draws) {
        for (double draw : draws) {
            if (draw == Double.POSITIVE_INFINITY) {
                return Value.of("time-to-limit", nominal);
            }
        }
        return Value.of("time-to-limit", nominal, Bands.shown(Bands.about(nominal, draws)));
    }

    /** In what share of the draws, where it is neither in all nor in none. */
    private static String often(OptionalDouble nominal, double[] draws) {
        int reached = 0;
        for (double draw : draws) {
            reached += draw < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        boolean asDeclared = reached == (nominal.isPresent() ? draws.length : 0);
        return asDeclared
                ? ""
                : String.format(Locale.ROOT, "in %d of %d draws", reached, draws.length);
    }

    private Placed opening(HeatParts.Group group) {
        int worst = group.parts().getFirst();
        for (int part : group.parts()) {
            double openedS = openedS(part);
            if (openedS < openedS(worst)
                    || (openedS == openedS(worst)
                            && run.onwards().fuseShare(part) > run.onwards().fuseShare(worst))) {
                worst = part;
            }
        }
        double at = openedS(worst);
        double share = Math.min(1, run.onwards().fuseShare(worst));
        return new Placed(
                at,
                share,
                new Bar(
                        parts.id(worst),
                        "opening of the " + parts.what(group, worst),
                        reached(at),
                        Value.of("fuse-share", at < Double.POSITIVE_INFINITY ? 1 : share),
                        Value.of("fuse-share", 1),
                        ""));
    }

    private double openedS(int part) {
        return run.onwards().openedS(part).orElse(Double.POSITIVE_INFINITY);
    }

    private static Value reached(double atS) {
        return atS < Double.POSITIVE_INFINITY
                ? Value.of("time-to-limit", atS)
                : new Value("time-to-limit", new Value.Figure.Never());
    }

    private void supply(Cause cause, List<Placed> placed) {
        HeatRun.Extremes extremes = run.extremes();
        switch (cause) {
            case RESERVE ->
                    packs(
                            cause,
                            "charge-left",
                            extremes::leastCharge,
                            _ -> rig.demands().reserve().si(),
                            placed);
            case CELL_VOLTAGE ->
                    packs(
                            cause,
                            "least-cell-voltage",
                            extremes::leastCellV,
                            _ -> rig.limits().si(LimitName.CELL_UNDER_LOAD),
                            placed);
            case CELL_CURRENT ->
                    packs(
                            cause,
                            "cell-current",
                            pack -> extremes.mostA(pack) / rig.packs().get(pack).parallel(),
                            pack ->
                                    rig.packs()
                                            .get(pack)
                                            .cell()
                                            .peakCurrent()
                                            .map(most -> most.si())
                                            .orElse(Double.POSITIVE_INFINITY),
                            placed);
            case EMPTY -> packs(cause, "charge-left", extremes::leastCharge, _ -> 0, placed);
            case CUT_OFF ->
                    first(
                            cause,
                            rig.fans().size(),
                            "fan-voltage",
                            extremes::leastFanV,
                            fan ->
                                    rig.fans()
                                            .get(fan)
                                            .type()
                                            .controller()
                                            .cutOff()
                                            .map(volt -> volt.si())
                                            .orElse(Double.NEGATIVE_INFINITY),
                            placed);
            case FULL_THROTTLE -> {
                if (!(flight.task() instanceof Task.FullThrottle)) {
                    first(cause, 1, "throttle", _ -> extremes.throttle(), _ -> 1, placed);
                }
            }
            case OVERHEATED, FUSE_OPENED -> {} // a bar for each group of parts, see above
        }
    }

    private void packs(
            Cause cause,
            String field,
            IntToDoubleFunction worst,
            IntToDoubleFunction limit,
            List<Placed> placed) {
        first(cause, rig.packs().size(), field, worst, limit, placed);
    }

    /** The bar of the first part that a cause reaches; of the one nearest to it if none is. */
    private void first(
            Cause cause,
            int count,
            String field,
            IntToDoubleFunction worst,
            IntToDoubleFunction limit,
            List<Placed> placed) {
        int first = -1;
        for (int part = 0; part < count; part++) {
            boolean counts =
                    Double.isFinite(limit.applyAsDouble(part))
                            && Double.isFinite(worst.applyAsDouble(part));
            if (counts && (first < 0 || isWorse(cause, part, first, worst))) {
                first = part;
            }
        }
        if (first < 0) {
            return;
        }
        double at = run.reached(cause, first).orElse(Double.POSITIVE_INFINITY);
        placed.add(
                new Placed(
                        at,
                        0,
                        new Bar(
                                CauseWords.part(rig, parts, cause, first),
                                CauseWords.first(cause),
                                reached(at),
                                Value.of(field, worst.applyAsDouble(first)),
                                Value.of(field, limit.applyAsDouble(first)),
                                "")));
    }

    private boolean isWorse(Cause cause, int part, int than, IntToDoubleFunction worst) {
        double at = run.reached(cause, part).orElse(Double.POSITIVE_INFINITY);
        double other = run.reached(cause, than).orElse(Double.POSITIVE_INFINITY);
        double sign = cause == Cause.CELL_CURRENT ? -1 : 1;
        return at < other
                || (at == other
                        && sign * worst.applyAsDouble(part) < sign * worst.applyAsDouble(than));
    }
}
