package liftwright.plant.parameters;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import liftwright.numerics.JointFactor;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.correction.Correction;

/** Collects the parameters of a rig while its parts are assembled. */
public final class ParameterRows {

    private record Pending(String label, List<Integer> rows) {}

    private final List<Parameter> rows = new ArrayList<>();
    private final Map<String, Integer> byName = new HashMap<>();
    private final Map<RigPath, Pending> inputs = new LinkedHashMap<>();
    private final List<RigPath> inputOrder = new ArrayList<>();
    private final List<ParameterTable.Joint> joints = new ArrayList<>();
    private final List<Correction> corrections;

    /** Rows of values as they are declared. */
    public ParameterRows() {
        this(List.of());
    }

    /**
     * Rows of which some have what tests found in place of what is declared.
     *
     * @param corrections that hold for the rig; values that no row is declared for count for
     *     nothing here
     */
    public ParameterRows(List<Correction> corrections) {
        this.corrections = List.copyOf(corrections);
    }

    /**
     * One of several values that were found together.
     *
     * @param name unique in the whole table; addresses its random deviate
     * @param label what it is, in words
     * @param value the median of its draws, SI
     * @param positive whether it is drawn in logarithms; its value is then above 0
     */
    public record Member(
            String name,
            String label,
            double value,
            Dimension dimension,
            Range range,
            boolean positive) {}

    /**
     * Rows in a row of values that were found together: drawn as one factor through the Cholesky
     * factor of their covariance. Asked again for the same first name, gives the same.
     *
     * @param at where they come from, a table beside the rig file say
     * @param label what the whole group is, in words
     * @param members at least one; a new one goes to the end, where it changes no other's draws
     * @param covariance row by row, of ln x for positive members and of x for others
     * @return index of the first in the vector
     * @throws IllegalArgumentException if it is no covariance, or the group was declared before
     *     with other members
     */
    public int joint(RigPath at, String label, List<Member> members, double[] covariance) {
        Integer known = byName.get(members.getFirst().name());
        if (known != null) {
            for (int i = 0; i < members.size(); i++) {
                Member member = members.get(i);
                Parameter row = rows.get(known + i);
                if (!row.name().equals(member.name()) || row.nominal() != member.value()) {
                    throw new IllegalArgumentException(
                            "the parameter " + member.name() + " has two unlike values");
                }
            }
            return known;
        }
        int n = members.size();
        double[] nominal = new double[n];
        boolean[] positive = new boolean[n];
        for (int i = 0; i < n; i++) {
            nominal[i] = members.get(i).value();
            positive[i] = members.get(i).positive();
        }
        JointFactor factor = JointFactor.of(nominal, positive, covariance);
        int first = rows.size();
        for (int i = 0; i < n; i++) {
            Member member = members.get(i);
            double wide = 2 * Math.sqrt(covariance[i * n + i]);
            // Of a logarithmic member: the ends of its 95 % band, for reports; draws use the
            // factor.
            double plus = positive[i] ? nominal[i] * Math.expm1(wide) : wide;
            double minus = positive[i] ? -nominal[i] * Math.expm1(-wide) : wide;
            Quantity value =
                    new Quantity(
                            member.value(),
                            member.dimension(),
                            new Tolerance(
                                    plus, minus, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));
            if (byName.containsKey(member.name())) {
                throw new IllegalArgumentException(
                        "the parameter " + member.name() + " is declared twice");
            }
            put(member.name(), member.name(), at, label, value, value.tolerance(), member.range());
            rows.set(first + i, named(rows.get(first + i), member.label()));
        }
        if (rows.get(first).input() >= 0) {
            joints.add(
                    new ParameterTable.Joint(
                            IntStream.range(first, first + n).toArray(),
                            factor,
                            members.stream().map(Member::name).toList()));
        }
        return first;
    }

    private static Parameter named(Parameter row, String label) {
        return new Parameter(
                row.name(),
                row.channel(),
                label,
                row.nominal(),
                row.dimension(),
                row.tolerance(),
                row.range(),
                row.input());
    }

    /**
     * The row of a declared value for one part: the value's only row if its error is shared, a row
     * of the part's own if each part has its own error. Asked again for the same, gives the same.
     *
     * @param at where the value is declared
     * @param label what it is, in words
     * @return index in the vector
     */
    public int row(RigPath at, String label, PartId part, Quantity value, Range range) {
        return switch (value.tolerance().scope()) {
            case SHARED -> shared(at, label, part, value, range);
            case EACH ->
                    put(
                            part + ": " + at,
                            part + ": " + at,
                            at,
                            label,
                            value,
                            value.tolerance(),
                            range);
        };
    }

    /** The row of a value that belongs to no single part; a scope "each" means nothing there. */
    public int row(RigPath at, String label, Quantity value, Range range) {
        return put(at.toString(), at.toString(), at, label, value, value.tolerance(), range);
    }

    /**
     * The row of the mean over equal units inside one part, such as the cells of a pack. A shared
     * error stays whole; errors of single units average out: the mean of n has 1/√n of their
     * standard deviation and is taken as normal from two units on.
     *
     * @param units how many, ≥ 1
     */
    public int meanRow(
            RigPath at, String label, PartId part, int units, Quantity value, Range range) {
        Tolerance one = value.tolerance();
        if (one.scope() == Tolerance.Scope.SHARED || units == 1) {
            return row(at, label, part, value, range);
        }
        // k = 2 half-width of the mean: a rectangle of half-width a has σ = a/√3.
        double perUnit = one.form() == Tolerance.Form.BOUND ? 2 / Math.sqrt(3) : 1;
        Tolerance mean =
                new Tolerance(
                                one.plus() * perUnit,
                                one.minus() * perUnit,
                                Tolerance.Form.NORMAL,
                                one.scope())
                        .scaled(1 / Math.sqrt(units));
        return put(part + ": " + at, part + ": " + at, at, label, value, mean, range);
    }

    private int shared(RigPath at, String label, PartId part, Quantity value, Range range) {
        String path = at.toString();
        Integer first = byName.get(path);
        if (first != null && !same(rows.get(first), value)) {
            // Generated parts can get unlike values from one declaration: one error serves them.
            return put(part + ": " + at, path, at, label, value, value.tolerance(), range);
        }
        return put(path, path, at, label, value, value.tolerance(), range);
    }

    private static boolean same(Parameter row, Quantity value) {
        return row.nominal() == value.si() && row.tolerance().equals(value.tolerance());
    }

    private int put(
            String name,
            String channel,
            RigPath at,
            String label,
            Quantity value,
            Tolerance tolerance,
            Range range) {
        Integer known = byName.get(name);
        if (known != null) {
            Parameter row = rows.get(known);
            if (row.nominal() != value.si() || !row.tolerance().equals(tolerance)) {
                throw new IllegalArgumentException(
                        "the parameter " + name + " has two unlike values");
            }
            return known;
        }
        int index = rows.size();
        int input = -1;
        if (!tolerance.isNone()) {
            Pending pending = inputs.get(at);
            if (pending == null) {
                pending = new Pending(label, new ArrayList<>());
                inputs.put(at, pending);
                inputOrder.add(at);
            }
            pending.rows.add(index);
            input = inputOrder.indexOf(at);
        }
        rows.add(
                new Parameter(
                        name,
                        channel,
                        label,
                        value.si(),
                        value.dimension(),
                        tolerance,
                        range,
                        input));
        byName.put(name, index);
        return index;
    }

    /** How many rows there are so far. */
    public int size() {
        return rows.size();
    }

    /** The finished table; every value must be one that can be. */
    public ParameterTable table() {
        List<DeclaredInput> declared = new ArrayList<>();
        inputs.forEach((at, input) -> declared.add(new DeclaredInput(at, input.label, input.rows)));
        ParameterTable table = new ParameterTable(rows, declared, joints);
        if (!corrections.isEmpty()) {
            table = new CorrectedRows(table, joints).with(corrections);
        }
        table.check(table.nominal());
        return table;
    }
}
