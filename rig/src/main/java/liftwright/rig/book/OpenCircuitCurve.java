package liftwright.rig.book;

import java.util.List;
import liftwright.rig.CellType;

/**
 * Rest voltage of a generic cell.
 *
 * @param name as written under {@code open circuit}
 * @param curve volts against the share of charge left
 * @param doubtV half-width of the doubt of the whole curve, k = 2, V
 * @param source where it comes from
 */
public record OpenCircuitCurve(String name, CellType.Curve curve, double doubtV, String source) {

    static OpenCircuitCurve of(
            String name, List<Double> charge, List<Double> volt, double doubtV, String source) {
        return new OpenCircuitCurve(name, new CellType.Curve(charge, volt), doubtV, source);
    }
}
