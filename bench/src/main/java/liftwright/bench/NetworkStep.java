package liftwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import liftwright.numerics.SymmetricFactor;
import liftwright.numerics.SymmetricPattern;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The linear step of a network of 12 packs, each with a trunk of four elements and two fans behind
 * branches of two: 96 nodes, 108 resistances. Factorised anew and solved, as every Newton step does
 * it; beside a library's sparse LU, its sparse Cholesky that keeps its symbolic analysis (as its
 * sparse LU cannot), and its dense LU.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class NetworkStep {

    private static final int TREES = 12;
    private static final int NODES_PER_TREE = 8;

    /** Whether all trees hang apart, or are tied to one another in a ring with chords. */
    @Param({"trees", "crossTied"})
    public String topology = "trees";

    private final int nodes = TREES * NODES_PER_TREE;
    private final double[] diagonal = new double[nodes];
    private final double[] right = new double[nodes];
    private final double[] solution = new double[nodes];
    private double[] coupling = new double[0];
    private SymmetricFactor factor =
            SymmetricPattern.analyse(1, new int[0], new int[0]).newFactor();
    private final DMatrixSparseCSC sparse = new DMatrixSparseCSC(nodes, nodes);
    private final DMatrixRMaj dense = new DMatrixRMaj(nodes, nodes);
    private final DMatrixRMaj denseWork = new DMatrixRMaj(nodes, nodes);
    private final DMatrixRMaj b = new DMatrixRMaj(nodes, 1);
    private final DMatrixRMaj x = new DMatrixRMaj(nodes, 1);
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> sparseCholesky =
            LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
    private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> sparseLu =
            LinearSolverFactory_DSCC.lu(FillReducing.NONE);
    private final LinearSolverDense<DMatrixRMaj> denseLu = LinearSolverFactory_DDRM.lu(nodes);

    @Setup
    public void build() {
        Random random = new Random(5);
        List<int[]> branches = new ArrayList<>();
        for (int tree = 0; tree < TREES; tree++) {
            int at = tree * NODES_PER_TREE;
            // Trunk 0-1-2-3, branches 3-4-5 and 3-6-7; the pack stands at 0.
            int[][] own = {{0, 1}, {1, 2}, {2, 3}, {3, 4}, {4, 5}, {3, 6}, {6, 7}};
            for (int[] branch : own) {
                branches.add(new int[] {at + branch[0], at + branch[1]});
            }
            if (topology.equals("crossTied")) {
                branches.add(new int[] {at + 3, (at + NODES_PER_TREE + 3) % nodes});
                branches.add(new int[] {at + 5, (at + 3 * NODES_PER_TREE + 7) % nodes});
            }
        }
        int[] rows = branches.stream().mapToInt(branch -> branch[0]).toArray();
        int[] columns = branches.stream().mapToInt(branch -> branch[1]).toArray();
        coupling = new double[rows.length];
        factor = SymmetricPattern.analyse(nodes, rows, columns).newFactor();
        for (int k = 0; k < rows.length; k++) {
            double siemens = random.nextDouble(100, 2000);
            coupling[k] = -siemens;
            diagonal[rows[k]] += siemens;
            diagonal[columns[k]] += siemens;
            dense.add(rows[k], columns[k], -siemens);
            dense.add(columns[k], rows[k], -siemens);
        }
        for (int tree = 0; tree < TREES; tree++) {
            diagonal[tree * NODES_PER_TREE] += random.nextDouble(30, 100);
        }
        for (int node = 0; node < nodes; node++) {
            dense.set(node, node, diagonal[node]);
            right[node] = random.nextDouble(-50, 50);
            b.set(node, 0, right[node]);
        }
        for (int column = 0; column < nodes; column++) {
            for (int row = 0; row < nodes; row++) {
                if (dense.get(row, column) != 0) {
                    sparse.set(row, column, dense.get(row, column));
                }
            }
        }
        sparse.sortIndices(null);
        if (!sparseCholesky.setA(sparse)) {
            throw new IllegalStateException("the library does not factorise the network");
        }
        sparseCholesky.setStructureLocked(true);
        ours();
        requireSame(sparseCholesky());
        requireSame(sparseLu());
    }

    private void requireSame(DMatrixRMaj other) {
        for (int node = 0; node < nodes; node++) {
            double ours = solution[node];
            if (Math.abs(ours - other.get(node, 0)) > 1e-6 * (1 + Math.abs(ours))) {
                throw new IllegalStateException("the two solutions differ");
            }
        }
    }

    /** Ours: factorised and solved on the planned pattern. */
    @Benchmark
    public double[] ours() {
        if (factor.factor(diagonal, coupling) >= 0) {
            throw new IllegalStateException("singular");
        }
        factor.solve(right, solution);
        return solution;
    }

    /** EJML's sparse Cholesky, structure locked. */
    @Benchmark
    public DMatrixRMaj sparseCholesky() {
        sparseCholesky.setA(sparse);
        sparseCholesky.solve(b, x);
        return x;
    }

    /** EJML's sparse LU, which analyses the structure anew each time. */
    @Benchmark
    public DMatrixRMaj sparseLu() {
        sparseLu.setA(sparse);
        sparseLu.solve(b, x);
        return x;
    }

    /** EJML's dense LU; for information. */
    @Benchmark
    public DMatrixRMaj denseLu() {
        denseWork.setTo(dense);
        denseLu.setA(denseWork);
        denseLu.solve(b, x);
        return x;
    }
}
