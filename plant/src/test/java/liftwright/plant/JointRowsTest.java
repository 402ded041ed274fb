package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import liftwright.plant.parameters.ImpossibleValueException;
import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.ParameterRows.Member;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.parameters.Range;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.RigPath;
import org.junit.jupiter.api.Test;

/** Rows that were found together are drawn together. */
class JointRowsTest {

    private static final RigPath AT = RigPath.of("fan types", "F", "bench");
    private static final double[] COVARIANCE = {
        4e-4, 3e-4, 0, //
        3e-4, 9e-4, -2e-3, //
        0, -2e-3, 4e-2
    };

    private static Member member(String name, double value, boolean positive) {
        return new Member(
                name, name, value, Dimension.NONE, positive ? Range.POSITIVE : Range.ANY, positive);
    }

    private static List<Member> members() {
        return List.of(
                member("F: thrust", 2e-4, true),
                member("F: torque", 3e-6, true),
                member("F: drift", 0.1, false));
    }

    private static Quantity doubtful(double value) {
        return new Quantity(
                value,
                Dimension.NONE,
                new Tolerance(0.1, 0.1, Tolerance.Form.NORMAL, Tolerance.Scope.SHARED));
    }

    private static ParameterTable table(boolean more) {
        ParameterRows rows = new ParameterRows();
        if (more) {
            rows.row(RigPath.of("a", "strap"), "strap", doubtful(1), Range.ANY);
        }
        rows.joint(AT, "bench of F", members(), COVARIANCE);
        rows.row(RigPath.of("b"), "b", doubtful(2), Range.ANY);
        if (more) {
            rows.joint(
                    RigPath.of("fan types", "G", "bench"),
                    "bench of G",
                    List.of(member("G: thrust", 1, true)),
                    new double[] {1e-4});
        }
        return rows.table();
    }

    @Test
    void drawsHaveTheCovariance() {
        ParameterTable table = table(false);
        int draws = 40_000;
        double[] p = new double[table.size()];
        double[] mean = new double[3];
        double[] product = new double[9];
        for (int k = 0; k < draws; k++) {
            table.draw(7, k, p);
            double[] x = {Math.log(p[0] / 2e-4), Math.log(p[1] / 3e-6), p[2] - 0.1};
            for (int i = 0; i < 3; i++) {
                mean[i] += x[i] / draws;
                for (int j = 0; j < 3; j++) {
                    product[i * 3 + j] += x[i] * x[j] / draws;
                }
            }
        }
        for (int i = 0; i < 3; i++) {
            double sigma = Math.sqrt(COVARIANCE[i * 4]);
            assertThat(mean[i]).isCloseTo(0, within(5 * sigma / Math.sqrt(draws)));
            for (int j = 0; j < 3; j++) {
                double scale = sigma * Math.sqrt(COVARIANCE[j * 4]);
                assertThat(product[i * 3 + j])
                        .isCloseTo(COVARIANCE[i * 3 + j], within(7 * scale / Math.sqrt(draws)));
            }
        }
    }

    @Test
    void otherParametersChangeNoDraw() {
        ParameterTable few = table(false);
        ParameterTable more = table(true);
        double[] p = new double[few.size()];
        double[] q = new double[more.size()];
        assertThat(more.size()).isGreaterThan(few.size());
        for (int k = 0; k < 50; k++) {
            few.draw(3, k, p);
            more.draw(3, k, q);
            for (int i = 0; i < few.size(); i++) {
                assertThat(q[more.indexOf(few.rows().get(i).name())]).isEqualTo(p[i]);
            }
        }
    }

    @Test
    void aMemberMoreAtTheEndChangesNoOther() {
        ParameterRows two = new ParameterRows();
        two.joint(
                AT,
                "bench",
                members().subList(0, 2),
                new double[] {
                    COVARIANCE[0], COVARIANCE[1], COVARIANCE[3], COVARIANCE[4],
                });
        ParameterTable brief = two.table();
        ParameterTable full = table(false);
        double[] p = new double[brief.size()];
        double[] q = new double[full.size()];
        brief.draw(5, 11, p);
        full.draw(5, 11, q);
        assertThat(q[0]).isEqualTo(p[0]);
        assertThat(q[1]).isEqualTo(p[1]);
    }

    @Test
    void theWholeGroupIsOneInputAndNarrowsAsOne() {
        ParameterTable table = table(false);
        assertThat(table.inputs().getFirst().rows()).containsExactly(0, 1, 2);
        double[] whole = new double[table.size()];
        double[] half = new double[table.size()];
        double[] none = new double[table.size()];
        table.draw(1, 4, whole);
        table.draw(1, 4, new double[] {0.5, 1}, half);
        table.draw(1, 4, new double[] {0, 1}, none);
        assertThat(Math.log(half[0] / 2e-4))
                .isCloseTo(Math.log(whole[0] / 2e-4) / 2, within(1e-12));
        assertThat(half[2] - 0.1).isCloseTo((whole[2] - 0.1) / 2, within(1e-12));
        assertThat(half[3]).isEqualTo(whole[3]);
        assertThat(none[0]).isCloseTo(2e-4, within(1e-18));
    }

    @Test
    void askedAgainItGivesTheSameRowsAndRefusesOthers() {
        ParameterRows rows = new ParameterRows();
        int first = rows.joint(AT, "bench", members(), COVARIANCE);
        assertThat(rows.joint(AT, "bench", members(), COVARIANCE)).isEqualTo(first);
        List<Member> other = new ArrayList<>(members());
        other.set(1, member("F: torque", 4e-6, true));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rows.joint(AT, "bench", other, COVARIANCE));
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new ParameterRows()
                                        .joint(
                                                AT,
                                                "bench",
                                                members().subList(0, 2),
                                                new double[] {1, 2, 2, 1}));
    }

    @Test
    void aDrawBeyondWhatCanBeIsSaid() {
        ParameterRows rows = new ParameterRows();
        rows.joint(
                AT,
                "bench",
                List.of(new Member("x", "x", 0.5, Dimension.NONE, Range.DUTY, false)),
                new double[] {25});
        ParameterTable table = rows.table();
        assertThatExceptionOfType(ImpossibleValueException.class)
                .isThrownBy(
                        () -> {
                            double[] p = new double[1];
                            for (int k = 0; k < 100; k++) {
                                table.draw(1, k, p);
                            }
                        });
    }
}
