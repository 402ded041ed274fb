package liftwright.review.failures;

import java.util.List;
import java.util.Optional;
import liftwright.quantity.Quantity;
import liftwright.rig.Rates;
import liftwright.rig.RiskMatrix;
import liftwright.rig.RiskMatrix.Likelihood;
import liftwright.rig.RiskMatrix.Severity;

/**
 * How likely faults are in the running time that counts, by the rates that the builder declares;
 * where one of them has none, nothing is told.
 *
 * @param rates declared
 * @param matrix in force
 */
public record Exposure(Rates rates, RiskMatrix matrix) {

    /**
     * Chance that one of several kinds of part fails at least once, each with a constant rate;
     * empty where a rate is not declared.
     *
     * @param kinds one for each part that would do it
     */
    public Optional<Double> chance(List<Rates.PartKind> kinds) {
        double perS = 0;
        for (Rates.PartKind kind : kinds) {
            Optional<Quantity> own = rates.of(kind);
            if (own.isEmpty()) {
                return Optional.empty();
            }
            perS += own.get().si();
        }
        return kinds.isEmpty()
                ? Optional.empty()
                : Optional.of(-Math.expm1(-perS * rates.exposure().si()));
    }

    /** Level of likelihood, by [MIL882E] appendix A. */
    public Optional<Likelihood> likelihood(List<Rates.PartKind> kinds) {
        return chance(kinds).map(Likelihood::of);
    }

    /** Word for the risk in the matrix in force. */
    public Optional<String> risk(Severity severity, List<Rates.PartKind> kinds) {
        return likelihood(kinds).map(level -> matrix.risk(severity, level));
    }
}
