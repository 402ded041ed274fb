package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.motion.Stop;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Kill;
import liftwright.rig.Reaction;
import liftwright.rig.Rig;

/** How long each kill takes, as rows of a rig's parameter table. */
public final class KillRows {

    /**
     * One kill.
     *
     * @param reaction row; below 0 where a limit stands in
     * @param usualS that limit, s
     */
    private record Row(Kill kill, int reaction, double usualS, int delay, double opensS) {}

    private final List<Row> rows = new ArrayList<>();

    private KillRows() {}

    /** Declares them. */
    public static KillRows declare(Rig rig, ParameterRows table) {
        KillRows all = new KillRows();
        for (Kill kill : rig.wiring().kills()) {
            all.rows.add(row(rig, kill, table));
        }
        return all;
    }

    private static Row row(Rig rig, Kill kill, ParameterRows table) {
        Reaction holder = Reaction.of(rig, kill);
        int reaction =
                holder.declared()
                        .map(
                                s ->
                                        table.row(
                                                holder.at(),
                                                "reaction of who holds " + kill.id(),
                                                s,
                                                Range.NOT_NEGATIVE))
                        .orElse(-1);
        return new Row(
                kill,
                reaction,
                holder.usualS(),
                table.row(
                        kill.declaredAt().child("delay"),
                        "delay of " + kill.id(),
                        kill.delay(),
                        Range.NOT_NEGATIVE),
                rig.wiring().contactors().stream()
                        .filter(one -> kill.opens().contains(one.name()))
                        .map(Contactor::opensIn)
                        .mapToDouble(Quantity::si)
                        .max()
                        .orElse(0));
    }

    /** The slowest kill, since the quicker one may be what failed; never where there is none. */
    public Stop slowest(double[] p) {
        Stop slowest = Stop.NEVER;
        double latestS = -1;
        for (Row row : rows) {
            Stop stop = stop(row, p);
            if (stop.firstS() > latestS && Double.isFinite(stop.firstS())) {
                slowest = stop;
                latestS = stop.firstS();
            }
        }
        return slowest;
    }

    /** Name of the kill that is the slowest; empty where there is none. */
    public Optional<String> slowestName(double[] p) {
        Stop slowest = slowest(p);
        return rows.stream()
                .filter(row -> stop(row, p).equals(slowest) && !slowest.equals(Stop.NEVER))
                .map(row -> row.kill.id())
                .findFirst();
    }

    private static Stop stop(Row row, double[] p) {
        double pressS = row.reaction >= 0 ? p[row.reaction] : row.usualS;
        double signalS = pressS + p[row.delay];
        double openS = signalS + row.opensS;
        Set<String> opens = Set.copyOf(row.kill.opens());
        double never = Double.POSITIVE_INFINITY;
        return switch (row.kill.order()) {
            case OPEN_AT_ONCE -> new Stop(never, opens.isEmpty() ? never : openS, opens);
            case COMMAND_ZERO_THEN_OPEN ->
                    new Stop(signalS, opens.isEmpty() ? never : openS, opens);
            case COMMAND_ZERO_ONLY -> new Stop(signalS, never, Set.of());
        };
    }
}
