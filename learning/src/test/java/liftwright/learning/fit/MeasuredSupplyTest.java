package liftwright.learning.fit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import liftwright.numerics.Work;
import org.junit.jupiter.api.Test;

/** A run of a measured supply tells another that it was not fitted to. */
class MeasuredSupplyTest {

    @Test
    void oneRunTellsTheOther() {
        MeasuredSupply fitted = new MeasuredSupply("run10");
        MeasuredSupply told = new MeasuredSupply("run15");
        Fitted found = Fit.of(List.of(fitted), 1, Work.quiet());
        double[] p = MeasuredSupply.table().nominal();
        int[] row = new int[found.estimates().size()];
        for (int k = 0; k < row.length; k++) {
            row[k] = fitted.parameters().indexOf(found.estimates().get(k).row());
            p[row[k]] = found.estimates().get(k).si();
        }
        double leftOut = found.residuals().getFirst().leftOut();
        int inside = 0;
        double square = 0;
        double hand = 0;
        double width = 0;
        int rows = told.volt.length;
        for (int k = 0; k < rows; k++) {
            double expected = told.predictedV(p, k);
            double[] slope = told.slopes(k);
            double variance = 0;
            for (int i = 0; i < row.length; i++) {
                for (int j = 0; j < row.length; j++) {
                    variance +=
                            found.covariance()[i][j]
                                    * scaled(found.estimates().get(i), slope[row[i]])
                                    * scaled(found.estimates().get(j), slope[row[j]]);
                }
            }
            double way = MeasuredSupply.LEFT_OUT * (MeasuredSupply.FULL_V - expected);
            double left = leftOut * Math.hypot(way, 0.03) / 2;
            double half = 1.96 * Math.sqrt(variance + left * left + 0.015 * 0.015);
            double off = told.volt[k] - expected;
            inside += Math.abs(off) <= half ? 1 : 0;
            width += half / rows;
            square += off * off / rows;
            hand += Math.pow(told.volt[k] - MeasuredSupply.FULL_V, 2) / rows;
        }
        String as =
                inside
                        + " of "
                        + rows
                        + " inside, rms "
                        + Math.sqrt(square)
                        + " V, by hand "
                        + Math.sqrt(hand)
                        + " V, half width "
                        + width
                        + " V, left out "
                        + leftOut
                        + ", "
                        + found.estimates();
        assertThat(found.converged()).as(as).isTrue();
        assertThat((double) inside / rows).as(as).isBetween(0.90, 0.98);
        assertThat(Math.sqrt(square)).as(as).isLessThan(0.25 * Math.sqrt(hand));
    }

    /** Slope in the estimate's coordinate. */
    private static double scaled(Estimate estimate, double slope) {
        return estimate.positive() ? slope * estimate.si() : slope;
    }
}
