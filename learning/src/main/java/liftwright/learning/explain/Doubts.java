package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import liftwright.learning.fit.Scatter;
import liftwright.numerics.Draws;
import liftwright.numerics.Kept;
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
    static final double CHARGE = 0.015;

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
     * @param open what it changes in the opened rig; empty where it is a row of the rig as declared
     */
    @SuppressWarnings("ArrayRecordComponent") // handed through, never compared
    record Doubt(
            String name,
            CauseGroup group,
            double[] column,
            double newtons,
            Optional<Opened> open) {}

    /**
     * A change of the opened rig.
     *
     * @param step a standard deviation
     */
    record Opened(Suspect.Numbers change, double step) {}

    /**
     * What is too small to be a cause, and there all the same, where it shows at all: of each part,
     * and of all parts of a kind together, which come from one seller and one hand.
     *
     * @param causes as they were computed
     */
    List<Doubt> unsaid(Computed.Result causes) {
        List<Doubt> all = new ArrayList<>();
        Map<CauseKind, List<Doubt>> kinds = new EnumMap<>(CauseKind.class);
        for (int k = 0; k < causes.suspects().size(); k++) {
            Suspect suspect = causes.suspects().get(k);
            if (suspect.unsaid() > 0 && suspect.change() instanceof Suspect.Numbers change) {
                Hypothesis hypothesis = causes.hypotheses().get(k);
                Doubt own =
                        new Doubt(
                                suspect.cause().words(),
                                suspect.cause().kind().group(),
                                hypothesis.effect(suspect.unsaid()),
                                hypothesis.newtons(suspect.unsaid()),
                                Optional.of(new Opened(change, suspect.unsaid())));
                if (shows(own)) {
                    all.add(own);
                    kinds.computeIfAbsent(suspect.cause().kind(), _ -> new ArrayList<>()).add(own);
                }
            }
        }
        kinds.forEach(
                (kind, alike) -> {
                    if (alike.size() > 1) {
                        all.add(together(kind, alike));
                    }
                });
        return all;
    }

    private boolean shows(Doubt doubt) {
        double[] white = scatter.whiten(doubt.column().clone());
        return Reduced.dot(white, white) > NOTHING * NOTHING;
    }

    private static Doubt together(CauseKind kind, List<Doubt> alike) {
        double[] column = new double[alike.getFirst().column().length];
        double newtons = 0;
        for (Doubt one : alike) {
            newtons += one.newtons();
            for (int i = 0; i < column.length; i++) {
                column[i] += one.column()[i];
            }
        }
        Suspect.Numbers change =
                new Suspect.Numbers(
                        (size, p) ->
                                alike.stream()
                                        .flatMap(one -> one.open().stream())
                                        .forEach(
                                                one -> one.change().of().at(size * one.step(), p)));
        return new Doubt(
                kind.words(), kind.group(), column, newtons, Optional.of(new Opened(change, 1)));
    }

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
        Draws.forEachKept(
                work,
                threads,
                0,
                groups,
                bench::worker,
                (worker, g) -> {
                    double[] z = new double[table.size()];
                    for (int i = g * GROUP; i < Math.min((g + 1) * GROUP, rows.size()); i++) {
                        z[rows.get(i)] = i % 2 == 0 ? 1 : -0.7;
                    }
                    matters[g] = norm(at(worker, z), Optional.of(bench.base())) > NOTHING;
                },
                kept(matters));
        List<Optional<Doubt>> found = new ArrayList<>();
        rows.forEach(row -> found.add(Optional.empty()));
        Draws.forEachKept(
                work,
                threads,
                0,
                rows.size(),
                bench::worker,
                (worker, i) -> {
                    if (matters[i / GROUP]) {
                        found.set(i, doubt(worker, table, rows.get(i)));
                    }
                },
                kept(found, i -> table.rows().get(rows.get(i)).name()));
        List<Doubt> all = new ArrayList<>();
        found.forEach(one -> one.ifPresent(all::add));
        charges(all);
        return all;
    }

    private static Kept.Form kept(boolean[] matters) {
        return new Kept.Form() {
            @Override
            public double[] numbers(int group) {
                return new double[] {matters[group] ? 1 : 0};
            }

            @Override
            public void putBack(int group, double[] numbers) {
                matters[group] = numbers[0] > 0;
            }
        };
    }

    private static Kept.Form kept(List<Optional<Doubt>> found, IntFunction<String> name) {
        return new Kept.Form() {
            @Override
            public double[] numbers(int row) {
                return found.get(row)
                        .map(of -> Kept.flat(of.column(), new double[] {of.newtons()}))
                        .orElseGet(() -> new double[0]);
            }

            @Override
            public void putBack(int row, double[] numbers) {
                if (numbers.length > 0) {
                    double[][] rows = Kept.rows(numbers);
                    found.set(row, Optional.of(declared(name.apply(row), rows[0], rows[1][0])));
                }
            }
        };
    }

    /** Doubt of a number as it was declared. */
    private static Doubt declared(String name, double[] column, double newtons) {
        return new Doubt(name, Attributing.group(name), column, newtons, Optional.empty());
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
        String name = table.rows().get(row).name();
        return Optional.of(declared(name, column, newtons));
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
                                                            charge(
                                                                    row,
                                                                    wide,
                                                                    column,
                                                                    bench.lostN(run.lift())));
                                                });
                            });
        }
    }

    private Doubt charge(int row, double wide, double[] column, double newtons) {
        return new Doubt(
                bench.openTable().rows().get(row).name(),
                CauseGroup.PACKS,
                column,
                newtons,
                Optional.of(new Opened(new Suspect.Numbers((size, p) -> p[row] -= size), wide)));
    }
}
