package liftwright.plant.parameters;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import liftwright.numerics.JointFactor;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;
import liftwright.rig.correction.Correction;
import liftwright.rig.correction.Found;

/**
 * A table in which tests' findings stand in place of declared values. What a correction found is
 * drawn as one factor; a row that none names keeps value, doubt and channel, so that its draws are
 * the same to the last bit.
 */
final class CorrectedRows {

    private final ParameterTable declared;
    private final List<ParameterTable.Joint> joints;
    private final List<Parameter> rows;
    private final List<DeclaredInput> inputs = new ArrayList<>();
    private final Set<Integer> corrected = new HashSet<>();

    CorrectedRows(ParameterTable declared, List<ParameterTable.Joint> joints) {
        this.declared = declared;
        this.joints = joints;
        rows = new ArrayList<>(declared.rows());
    }

    ParameterTable with(List<Correction> corrections) {
        List<Correction> here = new ArrayList<>();
        for (Correction each : corrections) {
            if (each.found().stream().anyMatch(this::isHere)) {
                Correction own = each.only(this::isHere);
                here.add(own);
                own.found().forEach(found -> corrected.add(row(found)));
            }
        }
        keepInputs();
        List<ParameterTable.Joint> all = new ArrayList<>();
        for (ParameterTable.Joint joint : joints) {
            if (!corrected.contains(joint.rows[0])) {
                all.add(joint);
            }
        }
        for (Correction each : here) {
            put(each, all);
        }
        return new ParameterTable(rows, inputs, all);
    }

    private boolean isHere(Found found) {
        return declared.has(found.parameter());
    }

    private int row(Found found) {
        return declared.indexOf(found.parameter());
    }

    /** Those that still put a row in doubt, in their order. */
    private void keepInputs() {
        for (DeclaredInput input : declared.inputs()) {
            List<Integer> left =
                    input.rows().stream().filter(row -> !corrected.contains(row)).toList();
            if (!left.isEmpty()) {
                left.forEach(row -> rows.set(row, by(rows.get(row), inputs.size())));
                inputs.add(new DeclaredInput(input.at(), input.label(), left));
            }
        }
    }

    private static Parameter by(Parameter row, int input) {
        return new Parameter(
                row.name(),
                row.channel(),
                row.label(),
                row.nominal(),
                row.dimension(),
                row.tolerance(),
                row.range(),
                input);
    }

    private void put(Correction each, List<ParameterTable.Joint> all) {
        int n = each.found().size();
        boolean doubtful = each.found().stream().anyMatch(found -> found.deviation() > 0);
        int input = doubtful ? inputs.size() : -1;
        int[] places = new int[n];
        double[] values = new double[n];
        boolean[] positive = new boolean[n];
        for (int i = 0; i < n; i++) {
            Found found = each.found().get(i);
            places[i] = row(found);
            values[i] = found.value();
            positive[i] = found.inLogarithms();
            rows.set(places[i], found(rows.get(places[i]), found, input));
        }
        if (doubtful) {
            all.add(
                    new ParameterTable.Joint(
                            places,
                            JointFactor.of(values, positive, each.covariance()),
                            each.found().stream().map(Found::parameter).toList()));
            inputs.add(
                    new DeclaredInput(
                            RigPath.parse(each.found().getFirst().path()),
                            each.name() + ", found by tests",
                            Arrays.stream(places).boxed().toList()));
        }
    }

    /** Its tolerance is the 95 % band, for reports; draws use the factor. */
    private static Parameter found(Parameter row, Found found, int input) {
        return new Parameter(
                row.name(),
                row.name(),
                row.label(),
                found.value(),
                row.dimension(),
                new Tolerance(
                        found.high() - found.value(),
                        found.value() - found.low(),
                        Tolerance.Form.NORMAL,
                        row.tolerance().scope()),
                row.range(),
                input);
    }
}
