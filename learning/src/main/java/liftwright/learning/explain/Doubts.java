package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.Draws;
import liftwright.numerics.Work;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Pack;

/**
 * What the doubt of declared numbers does to the readings: differences over a standard deviation to
 * either side of each, by full runs. Numbers that do nothing are found in groups, moved together.
 */
final class Doubts {

    private static final int GROUP = 8;

    /** Less than this over all readings, in deviations, is nothing. */
    private static final double NOTHING = 0.1;

    /** A pack is never as full as declared to better than this, standard deviation; from memory. */
    private static final double CHARGE = 0.015;

    private final Bench bench;
    private final Scatter scatter;
    private final int threads;

    Doubts(Bench bench, Scatter scatter, int threads) {
        this.bench = bench;
        this.scatter = scatter;
        this.threads = threads;
    }

    /**
     * One number in doubt.
     *
     * @param name of its row
     * @param column what a standard deviation does to the readings
     * @param newtons what a standard deviation takes of the lift, N
     * @param openStep a standard deviation of the row of the opened rig; 0 where it is one of the
     *     rig as declared
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Doubt(String name, double[] column, double newtons, double openStep) {}

    List<Doubt> of(Work work) {
        ParameterTable table = bench.plainTable();
        List<Integer> rows = new ArrayList<>();
        for (int k = 0; k < table.size(); k++) {
            if (table.inputOf(k) >= 0 && !isCharge(table.rows().get(k).name())) {
                rows.add(k);
            }
        }
        int groups = (rows.size() + GROUP - 1) / GROUP;
        boolean[] matters = new boolean[groups];
        work.stage("doubt", Math.max(1, groups + rows.size()));
        Draws.forEach(
                work,
                threads,
                groups,
                bench::worker,
                (worker, g) -> {
                    double[] z = new double[table.size()];
                    for (int i = g * GROUP; i < Math.min((g + 1) * GROUP, rows.size()); i++) {
                        z[rows.get(i)] = i % 2 == 0 ? 1 : -0.7;
                    }
                    matters[g] = norm(at(worker, z), Optional.of(bench.base())) > NOTHING;
                });
        List<Optional<Doubt>> found = new ArrayList<>();
        rows.forEach(row -> found.add(Optional.empty()));
        Draws.forEach(
                work,
                threads,
                rows.size(),
                bench::worker,
                (worker, i) -> {
                    if (matters[i / GROUP]) {
                        found.set(i, doubt(worker, table, rows.get(i)));
                    }
                });
        List<Doubt> all = new ArrayList<>();
        found.forEach(one -> one.ifPresent(all::add));
        charges(all);
        return all;
    }

    private static boolean isCharge(String name) {
        return name.endsWith("/charge") && (name.startsWith("packs/") || name.contains(": packs/"));
    }

    /** The readings at deviates of the declared rig; packs are as full as declared. */
    private Optional<Bench.Run> at(Bench.Worker worker, double[] z) {
        double[] p = new double[z.length];
        bench.plainTable().at(z, p);
        double[] declared = bench.plainVector();
        for (int k = 0; k < p.length; k++) {
            if (isCharge(bench.plainTable().rows().get(k).name())) {
                p[k] = declared[k];
            }
        }
        return worker.plain(p);
    }

    private Optional<Doubt> doubt(Bench.Worker worker, ParameterTable table, int row) {
        double[] z = new double[table.size()];
        z[row] = 1;
        Optional<Bench.Run> above = at(worker, z);
        z[row] = -1;
        Optional<Bench.Run> below = at(worker, z);
        if (above.isEmpty() || below.isEmpty() || norm(above, below) / 2 < NOTHING) {
            return Optional.empty();
        }
        double[] column = scatter.stack(above.get().channels());
        double[] other = scatter.stack(below.get().channels());
        for (int i = 0; i < column.length; i++) {
            column[i] = (column[i] - other[i]) / 2;
        }
        double newtons = (bench.mean(below.get().lift()) - bench.mean(above.get().lift())) / 2;
        return Optional.of(new Doubt(table.rows().get(row).name(), column, newtons, 0));
    }

    private double norm(Optional<Bench.Run> run, Optional<Bench.Run> other) {
        if (run.isEmpty() || other.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double[] off = scatter.stack(run.get().channels());
        double[] from = scatter.stack(other.get().channels());
        for (int i = 0; i < off.length; i++) {
            off[i] -= from[i];
        }
        scatter.whiten(off);
        return Math.sqrt(Reduced.dot(off, off));
    }

    private void charges(List<Doubt> into) {
        Bench.Worker worker = bench.worker();
        for (Pack pack : bench.rig().packs()) {
            Bench.row(
                            bench.openTable(),
                            pack.id().text(),
                            pack.declaredAt().child("charge").toString())
                    .ifPresent(
                            row -> {
                                double[] p = bench.openVector();
                                double wide =
                                        Math.max(
                                                CHARGE,
                                                Math.max(
                                                                pack.charge().tolerance().plus(),
                                                                pack.charge().tolerance().minus())
                                                        / 2);
                                p[row] -= wide;
                                worker.opened(p)
                                        .ifPresent(
                                                run -> {
                                                    double[] column = scatter.stack(run.channels());
                                                    double[] base =
                                                            scatter.stack(
                                                                    bench.openBase().channels());
                                                    for (int i = 0; i < column.length; i++) {
                                                        column[i] -= base[i];
                                                    }
                                                    into.add(
                                                            new Doubt(
                                                                    bench.openTable()
                                                                            .rows()
                                                                            .get(row)
                                                                            .name(),
                                                                    column,
                                                                    bench.lostN(run.lift()),
                                                                    -wide));
                                                });
                            });
        }
    }
}
