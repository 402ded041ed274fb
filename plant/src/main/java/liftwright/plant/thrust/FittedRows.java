package liftwright.plant.thrust;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.numerics.LeastSquaresFit;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanFits;
import liftwright.plant.identify.FanUnknown;
import liftwright.plant.identify.NotToldException;
import liftwright.plant.parameters.ParameterRows;
import liftwright.rig.FanType;
import liftwright.rig.RigPath;

/** Where in the parameter vector the values stand that rows of a stand gave: one joint factor. */
final class FittedRows {

    private final Map<FanUnknown, Integer> places = new EnumMap<>(FanUnknown.class);
    private final double referenceRadps;

    private FittedRows(double referenceRadps) {
        this.referenceRadps = referenceRadps;
    }

    /**
     * Declares them.
     *
     * @return empty for a type without a bench table
     * @throws NotToldException if the rows give no fan
     */
    static Optional<FittedRows> of(FanType type, ParameterRows table) {
        return switch (type.performance()) {
            case FanType.Performance.AtSpeed _ -> Optional.empty();
            case FanType.Performance.Coefficients _ -> Optional.empty();
            case FanType.Performance.Measured(var rows, var _) ->
                    Optional.of(of(type, rows.file(), FanFits.of(rows, type), table));
        };
    }

    private static FittedRows of(FanType type, String file, FanFit fit, ParameterRows table) {
        if (fit.status() != LeastSquaresFit.Status.CONVERGED
                || fit.coefficient(FanUnknown.THRUST).isEmpty()
                || fit.coefficient(FanUnknown.TORQUE).isEmpty()) {
            throw new NotToldException(
                    "the rows of "
                            + file
                            + " give no fan "
                            + type.name()
                            + ": "
                            + why(fit)
                            + ". Look for a row in another unit, or declare the performance in"
                            + " place of the table");
        }
        RigPath at = RigPath.of("fan types", type.name()).child("bench");
        List<ParameterRows.Member> members = new ArrayList<>();
        FittedRows found = new FittedRows(fit.referenceRadps());
        for (FanFit.Coefficient one : fit.coefficients()) {
            FanUnknown unknown = one.unknown();
            members.add(
                    new ParameterRows.Member(
                            at.child(unknown.words()).toString(),
                            unknown.words() + " of fan " + type.name(),
                            one.value(),
                            unknown.dimension(),
                            unknown.range(),
                            unknown.positive()));
        }
        int first = table.joint(at, "bench rows of fan " + type.name(), members, fit.covariance());
        for (int k = 0; k < members.size(); k++) {
            found.places.put(fit.coefficients().get(k).unknown(), first + k);
        }
        return found;
    }

    private static String why(FanFit fit) {
        return switch (fit.status()) {
            case CONVERGED -> "they do not tell both thrust and torque";
            case UNDETERMINED -> "they leave open more than one set of coefficients";
            case NOT_CONVERGED -> "no set of coefficients comes near them";
        };
    }

    Optional<Integer> row(FanUnknown unknown) {
        return Optional.ofNullable(places.get(unknown));
    }

    double referenceRadps() {
        return referenceRadps;
    }
}
