package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.balance.Allocation;
import liftwright.plant.balance.FanAtWork;

/**
 * The trims of a flight computer that hold the weight with the least power, yaw held and yaw free,
 * each solved again on the supply with the thrusts it asks for.
 */
final class TrimTables {

    /** Share of a power within which two solved points are the same. */
    private static final double NONE = 1e-6;

    private TrimTables() {}

    /**
     * What one trim comes to.
     *
     * @param drawnW power at the controllers with these thrusts, solved again; empty where a fan
     *     falls short of its thrust
     */
    private record Cost(Allocation.PowerTrim trim, Optional<Double> drawnW) {}

    /**
     * @param worker that has just found {@code point} at {@code p}
     */
    static List<Section> of(Balancing.Worker worker, double[] p, HoverPoint point) {
        double evenW = worker.drawnW();
        Optional<List<FanAtWork>> full = worker.fullThrottle(p, point.mass().centre());
        if (full.isEmpty()) {
            return List.of();
        }
        int fans = full.get().size();
        double[] shaftW = new double[fans];
        double[] copperW = new double[fans];
        for (int k = 0; k < fans; k++) {
            shaftW[k] = worker.shaftW(k);
            copperW[k] = worker.copperW(k);
        }
        Allocation can = new Allocation(full.get(), point.mass().weightN());
        List<Cost> costs = new ArrayList<>();
        List<List<Value>> rows = new ArrayList<>();
        for (boolean held : new boolean[] {true, false}) {
            Optional<Cost> cost =
                    can.leastPower(held, shaftW, copperW)
                            .map(trim -> new Cost(trim, drawn(worker, full.get(), trim)));
            rows.add(row(held, cost, evenW, point));
            cost.ifPresent(costs::add);
        }
        List<Section> sections = new ArrayList<>();
        sections.add(
                new Section.Table(
                        "least-power",
                        "Least power that holds the weight without roll and pitch",
                        List.of(
                                "yaw-trim",
                                "trim-power",
                                "trim-power-saved",
                                "trim-top-share",
                                "trim-yaw"),
                        rows));
        if (costs.size() == 2) {
            sections.add(shares(full.get(), can, costs));
        }
        return sections;
    }

    private static Optional<Double> drawn(
            Balancing.Worker worker, List<FanAtWork> full, Allocation.PowerTrim trim) {
        double[] thrustN = new double[full.size()];
        for (int k = 0; k < thrustN.length; k++) {
            thrustN[k] = trim.share().get(k) * Math.max(0, full.get(k).thrustN());
        }
        return worker.thrusts(thrustN) ? Optional.of(worker.drawnW()) : Optional.empty();
    }

    private static List<Value> row(
            boolean held, Optional<Cost> found, double evenW, HoverPoint point) {
        List<Value> row = new ArrayList<>();
        row.add(Value.words("yaw-trim", held ? "yaw held to zero" : "yaw free"));
        if (found.isEmpty()) {
            for (String field :
                    List.of("trim-power", "trim-power-saved", "trim-top-share", "trim-yaw")) {
                row.add(missing(field, "no trim holds the weight"));
            }
            return row;
        }
        Cost cost = found.get();
        String falls = "a fan falls short of its thrust";
        row.add(
                cost.drawnW
                        .map(watts -> Value.of("trim-power", watts))
                        .orElseGet(() -> missing("trim-power", falls)));
        row.add(
                cost.drawnW
                        .map(
                                watts ->
                                        Value.of(
                                                "trim-power-saved",
                                                Rounding.off(evenW - watts, NONE * evenW)))
                        .orElseGet(() -> missing("trim-power-saved", falls)));
        row.add(
                Value.of(
                        "trim-top-share",
                        cost.trim.share().stream().mapToDouble(share -> share).max().orElse(0)));
        row.add(
                Value.of(
                        "trim-yaw",
                        Rounding.off(
                                cost.trim.yawNm() / point.mass().inertia().zz(), Rounding.RADPS2)));
        return row;
    }

    private static Value missing(String field, String why) {
        return new Value(field, new Value.Figure.NotComputed(why));
    }

    /** Share of full throttle's thrust, fan by fan, of the trims with yaw held and free. */
    private static Section shares(List<FanAtWork> full, Allocation can, List<Cost> costs) {
        List<List<Value>> rows = new ArrayList<>();
        Optional<Allocation.Trim> most = can.greatestLift(true);
        for (int k = 0; k < full.size(); k++) {
            int fan = k;
            List<Value> row = new ArrayList<>();
            row.add(Value.words("part", full.get(k).id().text()));
            row.add(
                    most.map(trim -> Value.of("lift-trim-share", trim.share().get(fan)))
                            .orElseGet(() -> missing("lift-trim-share", "no trim")));
            row.add(Value.of("power-trim-share", costs.get(0).trim.share().get(k)));
            row.add(Value.of("free-trim-share", costs.get(1).trim.share().get(k)));
            rows.add(row);
        }
        return new Section.Table(
                "trim-shares",
                "Trims fan by fan, as share of its thrust at full throttle",
                List.of("part", "lift-trim-share", "power-trim-share", "free-trim-share"),
                rows);
    }
}
