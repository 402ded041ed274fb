package liftwright.plant.parameters;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import liftwright.numerics.CounterStream;
import liftwright.numerics.Gaussian;
import liftwright.numerics.JointFactor;
import liftwright.numerics.Spread;
import liftwright.quantity.Tolerance;

/**
 * All numbers of a rig in a row, with what is known of their doubt; the vector {@code p} that a
 * plant is evaluated at. Immutable.
 *
 * <p>A draw takes every number from the distribution of its tolerance (architecture: ± is k = 2).
 * The random deviate of a number is addressed by its name, so that a new part changes no other
 * number of the same draw, and draw k is the same however many draws are made.
 */
public final class ParameterTable {

    private final List<Parameter> rows;
    private final List<DeclaredInput> inputs;
    private final Map<String, Integer> byName;
    private final double[] nominal;

    // The rows in doubt, packed for drawing.
    private final int[] doubtful;
    private final int[] inputOf;
    private final long[] channel;
    private final double[] plus;
    private final double[] minus;
    private final boolean[] bound;
    private final double[] least;
    private final double[] greatest;

    private final List<Joint> joints;

    /** Rows known together, with the channels of their names. */
    static final class Joint {
        final int[] rows;
        final JointFactor factor;
        private final long[] channel;

        Joint(int[] rows, JointFactor factor, List<String> names) {
            this.rows = rows;
            this.factor = factor;
            channel = names.stream().mapToLong(CounterStream::channel).toArray();
        }
    }

    ParameterTable(List<Parameter> rows, List<DeclaredInput> inputs, List<Joint> joints) {
        this(rows, inputs, joints, rows.stream().mapToDouble(Parameter::nominal).toArray());
    }

    /**
     * @param nominal what counts as declared, a number for each row
     */
    private ParameterTable(
            List<Parameter> rows,
            List<DeclaredInput> inputs,
            List<Joint> joints,
            double[] nominal) {
        this.joints = List.copyOf(joints);
        this.rows = List.copyOf(rows);
        this.inputs = List.copyOf(inputs);
        byName = new TreeMap<>();
        this.nominal = nominal;
        boolean[] alone = alone(this.rows, this.joints);
        int count = 0;
        for (boolean one : alone) {
            count += one ? 1 : 0;
        }
        doubtful = new int[count];
        inputOf = new int[count];
        channel = new long[count];
        plus = new double[count];
        minus = new double[count];
        bound = new boolean[count];
        least = new double[count];
        greatest = new double[count];
        int next = 0;
        for (int i = 0; i < rows.size(); i++) {
            Parameter row = rows.get(i);
            if (byName.put(row.name(), i) != null) {
                throw new IllegalArgumentException("two parameters are called " + row.name());
            }
            if (alone[i]) {
                doubtful[next] = i;
                inputOf[next] = row.input();
                channel[next] = CounterStream.channel(row.channel());
                plus[next] = row.tolerance().plus();
                minus[next] = row.tolerance().minus();
                bound[next] = row.tolerance().form() == Tolerance.Form.BOUND;
                least[next] = row.range().least();
                greatest[next] = row.range().greatest();
                next++;
            }
        }
    }

    /**
     * The same table where other numbers count as declared: what a plant says of one draw, or of a
     * rig whose builder had measured otherwise. Its rows still tell what was declared.
     *
     * @param p a vector of this table
     */
    public ParameterTable declaring(double[] p) {
        return new ParameterTable(rows, inputs, joints, checked(p).clone());
    }

    /** Which rows are in doubt by themselves, not with others they were found with. */
    private static boolean[] alone(List<Parameter> rows, List<Joint> joints) {
        boolean[] alone = new boolean[rows.size()];
        for (int i = 0; i < alone.length; i++) {
            alone[i] = rows.get(i).input() >= 0;
        }
        for (Joint joint : joints) {
            for (int row : joint.rows) {
                alone[row] = false;
            }
        }
        return alone;
    }

    /** All numbers, in the order of the vector. */
    public List<Parameter> rows() {
        return rows;
    }

    public int size() {
        return nominal.length;
    }

    /** The declared values that are in doubt, in the order of their first use. */
    public List<DeclaredInput> inputs() {
        return inputs;
    }

    /**
     * Place of a parameter in the vector.
     *
     * @throws IllegalArgumentException if no parameter has this name
     */
    public int indexOf(String name) {
        Integer found = byName.get(name);
        if (found == null) {
            throw new IllegalArgumentException("no parameter is called " + name);
        }
        return found;
    }

    /** Number of the declared input that puts a row in doubt; −1 if it is exact. */
    public int inputOf(int row) {
        return rows.get(row).input();
    }

    /** Whether there is a parameter of this name. */
    public boolean has(String name) {
        return byName.containsKey(name);
    }

    /** Rows that were found together and are drawn as one factor. */
    public List<Together> together() {
        return joints.stream()
                .map(
                        joint ->
                                new Together(
                                        Arrays.stream(joint.rows).boxed().toList(), joint.factor))
                .toList();
    }

    /**
     * Rows known together.
     *
     * @param rows places in the vector, in the order of the factor's members
     * @param factor how they are drawn
     */
    public record Together(List<Integer> rows, JointFactor factor) {
        public Together {
            rows = List.copyOf(rows);
        }
    }

    /** A new vector of the declared values. */
    public double[] nominal() {
        return nominal.clone();
    }

    /**
     * One draw.
     *
     * @param draw number of the draw, ≥ 0
     * @param out takes the vector; length {@link #size}
     * @throws ImpossibleValueException if a number falls where nothing can be
     */
    public void draw(long seed, int draw, double[] out) {
        System.arraycopy(nominal, 0, out, 0, checked(out).length);
        for (int k = 0; k < doubtful.length; k++) {
            set(k, deviation(k, seed, draw), out);
        }
        for (Joint joint : joints) {
            draw(joint, seed, draw, 1, out);
        }
    }

    /**
     * The same draw with the doubt of some inputs made wider or narrower: every deviation of an
     * input is multiplied by its factor.
     *
     * @param widthScalePerInput a factor ≥ 0 for each of {@link #inputs}
     */
    public void draw(long seed, int draw, double[] widthScalePerInput, double[] out) {
        Objects.checkFromIndexSize(0, inputs.size(), widthScalePerInput.length);
        System.arraycopy(nominal, 0, out, 0, checked(out).length);
        for (int k = 0; k < doubtful.length; k++) {
            set(k, widthScalePerInput[inputOf[k]] * deviation(k, seed, draw), out);
        }
        for (Joint joint : joints) {
            draw(joint, seed, draw, widthScalePerInput[rows.get(joint.rows[0]).input()], out);
        }
    }

    /**
     * The vector at given deviates: what is independent and standard normal before anything is
     * measured. A tolerance that is not normal is reached through its distribution function, what
     * was fitted together through its Cholesky factor; so 0 is the median of every row.
     *
     * @param deviates one for each row; those of exact rows are not read
     * @param out takes the vector; it may lie where nothing can be ({@link #check})
     */
    public void at(double[] deviates, double[] out) {
        System.arraycopy(nominal, 0, checked(out), 0, out.length);
        checked(deviates);
        for (int k = 0; k < doubtful.length; k++) {
            double uniform = Math.clamp(Gaussian.cdf(deviates[doubtful[k]]), 1e-300, 1 - 1e-16);
            out[doubtful[k]] += Spread.sample(plus[k], minus[k], bound[k], uniform);
        }
        for (Joint joint : joints) {
            for (int row : joint.rows) {
                out[row] = deviates[row];
            }
            joint.factor.transform(out, joint.rows);
        }
    }

    /**
     * Each member's deviate comes from its own name, so that a member more, at the end, changes no
     * other.
     */
    private void draw(Joint joint, long seed, int draw, double width, double[] out) {
        for (int i = 0; i < joint.channel.length; i++) {
            double uniform = CounterStream.uniform(seed, joint.channel[i], draw);
            out[joint.rows[i]] = width * Gaussian.quantile(uniform);
        }
        joint.factor.transform(out, joint.rows);
        for (int row : joint.rows) {
            Range range = rows.get(row).range();
            if (!(out[row] >= range.least() && out[row] <= range.greatest())) {
                throw new ImpossibleValueException(rows.get(row).name(), out[row], range);
            }
        }
    }

    /**
     * Whether every number can be.
     *
     * @throws ImpossibleValueException naming the first that cannot
     */
    public void check(double[] p) {
        checked(p);
        for (int i = 0; i < p.length; i++) {
            Range range = rows.get(i).range();
            if (!(p[i] >= range.least() && p[i] <= range.greatest())) {
                throw new ImpossibleValueException(rows.get(i).name(), p[i], range);
            }
        }
    }

    private double deviation(int k, long seed, int draw) {
        double uniform = CounterStream.uniform(seed, channel[k], draw);
        return Spread.sample(plus[k], minus[k], bound[k], uniform);
    }

    private void set(int k, double deviation, double[] out) {
        int row = doubtful[k];
        double value = nominal[row] + deviation;
        if (!(value >= least[k] && value <= greatest[k])) {
            throw new ImpossibleValueException(rows.get(row).name(), value, rows.get(row).range());
        }
        out[row] = value;
    }

    private double[] checked(double[] p) {
        if (p.length != nominal.length) {
            throw new IllegalArgumentException(
                    "a vector of this table has " + nominal.length + " numbers, not " + p.length);
        }
        return p;
    }

    @Override
    public String toString() {
        return "ParameterTable" + Arrays.toString(nominal);
    }
}
