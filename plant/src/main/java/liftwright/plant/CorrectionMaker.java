package liftwright.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import liftwright.numerics.Conditional;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;
import liftwright.rig.correction.Grounds;

/**
 * Makes a correction of what a fit found of rows of a table: with the values that the fit started
 * from, the serial numbers of the parts, and the rest of every group of values that a table tells
 * together. Of those the fit may have moved a few: the others follow as far as they are correlated,
 * and keep the doubt that the moved ones leave open.
 */
public final class CorrectionMaker {

    private final Rig rig;
    private final ParameterTable table;

    /**
     * @param declared the rig that the fit started from, as declared
     * @param table of its plant
     */
    public CorrectionMaker(Rig declared, ParameterTable table) {
        if (!declared.corrections().isEmpty()) {
            throw new IllegalArgumentException("a fit starts from a rig as it is declared");
        }
        this.rig = declared;
        this.table = table;
    }

    /**
     * What a fit found.
     *
     * @param rows places in the table's vector, each once
     * @param values what was found, SI
     * @param inLogarithms whether the fit moved the logarithm of the row
     * @param covariance of what was found, row by row, of ln x for rows in logarithms and of x for
     *     others
     */
    @SuppressWarnings("ArrayRecordComponent")
    public record Posterior(
            int[] rows, double[] values, boolean[] inLogarithms, double[] covariance) {
        public Posterior {
            int n = rows.length;
            if (values.length != n || inLogarithms.length != n || covariance.length != n * n) {
                throw new IllegalArgumentException("what was found has unlike sizes");
            }
        }

        int place(int row) {
            for (int i = 0; i < rows.length; i++) {
                if (rows[i] == row) {
                    return i;
                }
            }
            return -1;
        }
    }

    /**
     * The correction.
     *
     * @param name unlike that of any other group
     * @throws IllegalArgumentException if what was found has no covariance, or moved the logarithm
     *     of a row that its table tells without, or the other way
     */
    public Correction make(String name, Posterior found, Grounds grounds) {
        Posterior whole = found;
        for (ParameterTable.Together rows : table.together()) {
            whole = completed(whole, rows);
        }
        List<Found> values = new ArrayList<>();
        Map<String, String> serials = new TreeMap<>();
        Map<String, String> known = known();
        for (int i = 0; i < whole.rows().length; i++) {
            Parameter row = table.rows().get(whole.rows()[i]);
            Found one =
                    new Found(
                            row.name(),
                            row.label(),
                            HeldCorrections.quantity(row),
                            whole.values()[i],
                            0,
                            whole.inLogarithms()[i]);
            values.add(one);
            one.part().ifPresent(part -> serials.put(part, known.getOrDefault(part, "")));
        }
        return Correction.of(name, values, whole.covariance(), grounds, serials);
    }

    private Map<String, String> known() {
        var known = new HashMap<String, String>();
        rig.fans().forEach(fan -> known.put(fan.id().text(), fan.serial().orElse("")));
        rig.packs().forEach(pack -> known.put(pack.id().text(), pack.serial().orElse("")));
        return known;
    }

    private Posterior completed(Posterior found, ParameterTable.Together together) {
        List<Integer> members = together.rows();
        int n = members.size();
        int[] known = places(n, i -> found.place(members.get(i)) >= 0);
        int[] rest = places(n, i -> found.place(members.get(i)) < 0);
        if (known.length == 0 || rest.length == 0) {
            check(found, together, known);
            return found;
        }
        check(found, together, known);
        double[] prior = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                prior[i * n + j] = together.factor().covariance(i, j);
            }
        }
        return extended(found, together, known, rest, prior);
    }

    private static int[] places(int n, IntPredicate which) {
        return IntStream.range(0, n).filter(which).toArray();
    }

    private void check(Posterior found, ParameterTable.Together together, int[] known) {
        for (int member : known) {
            int row = together.rows().get(member);
            if (found.inLogarithms()[found.place(row)] != together.factor().isPositive(member)) {
                throw new IllegalArgumentException(
                        table.rows().get(row).name() + " is drawn otherwise than it was fitted");
            }
        }
    }

    private Posterior extended(
            Posterior found,
            ParameterTable.Together together,
            int[] known,
            int[] rest,
            double[] prior) {
        int n = together.rows().size();
        int had = found.rows().length;
        int size = had + rest.length;
        int[] rows = Arrays.copyOf(found.rows(), size);
        double[] values = Arrays.copyOf(found.values(), size);
        boolean[] logs = Arrays.copyOf(found.inLogarithms(), size);
        double[] slopes = Conditional.slopes(prior, n, known, rest);
        double[] covariance = new double[size * size];
        for (int i = 0; i < had; i++) {
            System.arraycopy(found.covariance(), i * had, covariance, i * size, had);
        }
        int m = known.length;
        for (int r = 0; r < rest.length; r++) {
            int own = had + r;
            rows[own] = together.rows().get(rest[r]);
            logs[own] = together.factor().isPositive(rest[r]);
            double moved = 0;
            for (int k = 0; k < m; k++) {
                int place = found.place(together.rows().get(known[k]));
                double was = table.nominal()[rows[place]];
                double by = logs[place] ? Math.log(values[place] / was) : values[place] - was;
                moved += slopes[r * m + k] * by;
                for (int other = 0; other < own; other++) {
                    covariance[own * size + other] +=
                            slopes[r * m + k] * covariance[place * size + other];
                }
            }
            double was = table.nominal()[rows[own]];
            values[own] = logs[own] ? was * Math.exp(moved) : was + moved;
            for (int other = 0; other < own; other++) {
                covariance[other * size + own] = covariance[own * size + other];
            }
            // What the moved ones leave open of this one and of those before it.
            for (int s = 0; s <= r; s++) {
                double open = prior[rest[r] * n + rest[s]];
                for (int k = 0; k < m; k++) {
                    open -= slopes[r * m + k] * prior[known[k] * n + rest[s]];
                }
                if (s < r) {
                    covariance[own * size + had + s] += open;
                    covariance[(had + s) * size + own] = covariance[own * size + had + s];
                } else {
                    double sum = open;
                    for (int k = 0; k < m; k++) {
                        int place = found.place(together.rows().get(known[k]));
                        sum += slopes[r * m + k] * covariance[own * size + place];
                    }
                    covariance[own * size + own] = Math.max(0, sum);
                }
            }
        }
        return new Posterior(rows, values, logs, covariance);
    }
}
