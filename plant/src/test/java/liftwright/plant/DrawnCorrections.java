package liftwright.plant;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.random.RandomGenerator;
import liftwright.plant.CorrectionMaker.Posterior;
import liftwright.plant.parameters.Parameter;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.CorrectionsRead;
import liftwright.rig.correction.Grounds;

/**
 * What a fit might have found of a rig: some of its numbers, moved a little, with any covariance.
 */
public final class DrawnCorrections {

    public static final Grounds GROUNDS =
            new Grounds(
                    List.of(new Grounds.Test("2026-03-14-1", "sha256:" + "0".repeat(64))),
                    OptionalDouble.of(1),
                    1);

    private DrawnCorrections() {}

    /** A group of up to {@code most} rows that {@code may} be in it; those found together whole. */
    public static Correction group(
            RandomGenerator random,
            Rig declared,
            ParameterTable table,
            String name,
            int most,
            Predicate<Parameter> may) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < table.size(); i++) {
            if (may.test(table.rows().get(i)) && Math.abs(table.nominal()[i]) > 1e-12) {
                all.add(i);
            }
        }
        Collections.shuffle(all, new Random(random.nextLong()));
        var chosen = new TreeSet<>(all.subList(0, Math.min(1 + random.nextInt(most), all.size())));
        for (ParameterTable.Together together : table.together()) {
            if (together.rows().stream().anyMatch(chosen::contains)) {
                chosen.addAll(together.rows());
            }
        }
        int n = chosen.size();
        int[] rows = chosen.stream().mapToInt(Integer::intValue).toArray();
        double[] values = new double[n];
        boolean[] logs = new boolean[n];
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            double nominal = table.nominal()[rows[i]];
            values[i] = nominal * (1 - 0.02 * random.nextDouble());
            logs[i] = nominal > 0 && !may(table, rows[i]);
            for (ParameterTable.Together together : table.together()) {
                int at = together.rows().indexOf(rows[i]);
                if (at >= 0) {
                    logs[i] = together.factor().isPositive(at);
                }
            }
            scale[i] = 1e-3 * (0.2 + random.nextDouble()) * (logs[i] ? 1 : Math.abs(nominal));
        }
        return new CorrectionMaker(declared, table)
                .make(name, new Posterior(rows, values, logs, covariance(random, scale)), GROUNDS);
    }

    /** Every third row is drawn as it is. */
    private static boolean may(ParameterTable table, int row) {
        return table.rows().get(row).name().hashCode() % 3 == 0;
    }

    /** A Aᵀ with more columns than rows, scaled. */
    private static double[] covariance(RandomGenerator random, double[] scale) {
        int n = scale.length;
        double[][] a = new double[n][n + 2];
        for (double[] row : a) {
            double length = 0;
            for (int k = 0; k < row.length; k++) {
                row[k] = random.nextGaussian();
                length += row[k] * row[k];
            }
            for (int k = 0; k < row.length; k++) {
                row[k] /= Math.sqrt(length);
            }
        }
        double[] covariance = new double[n * n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                for (int k = 0; k < n + 2; k++) {
                    covariance[i * n + j] += a[i][k] * a[j][k] * scale[i] * scale[j];
                }
            }
        }
        return covariance;
    }

    /** The rig with these corrections, made on this very revision of it. */
    public static Rig with(Rig declared, List<Correction> groups) {
        return declared.with(
                new CorrectionsRead(
                        new Corrections("sha256:" + "1".repeat(64), 1, groups),
                        "sha256:" + "2".repeat(64),
                        false));
    }
}
