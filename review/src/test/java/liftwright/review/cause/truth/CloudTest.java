package liftwright.review.cause.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The referee's bodies against closed forms and against stackings and people of others. */
class CloudTest {

    private static final double[] AT = {0.3, -0.2, 0.5};

    private static double[][] inertia(Cloud cloud) {
        return cloud.inertia(cloud.centre());
    }

    /** m (b² + c²)/12. */
    @Test
    void aBoxIsItsFormula() {
        Cloud cloud = new Cloud();
        cloud.box(6, AT, new double[] {0.2, 0.5, 0.9});
        assertThat(cloud.kg()).isCloseTo(6, within(1e-12));
        assertThat(cloud.centre()).containsExactly(AT, within(1e-12));
        assertThat(inertia(cloud)[0][0]).isCloseTo(0.5 * (0.25 + 0.81), within(1e-12));
        assertThat(inertia(cloud)[1][1]).isCloseTo(0.5 * (0.04 + 0.81), within(1e-12));
        assertThat(inertia(cloud)[2][2]).isCloseTo(0.5 * (0.04 + 0.25), within(1e-12));
        assertThat(inertia(cloud)[0][1]).isCloseTo(0, within(1e-12));
    }

    /** m r²/2 about its axis, half of it across, whichever way it looks. */
    @Test
    void aDiskIsItsFormula() {
        Cloud cloud = new Cloud();
        double[] axis = Solid.turn(Solid.RIGHT, 0.7, Solid.turn(Solid.FORWARD, 0.4, Solid.DOWN));
        cloud.disk(3, AT, axis, 0.1);
        double about = 3 * 0.01 / 2;
        double[][] own = inertia(cloud);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double across = (i == j ? about / 2 : 0) + about / 2 * axis[i] * axis[j];
                assertThat(own[i][j]).isCloseTo(across, within(1e-12));
            }
        }
    }

    /** m k² about each of its own axes, and the theorem of parallel axes. */
    @Test
    void aBodyHasItsRadiiOfGyration() {
        Cloud cloud = new Cloud();
        double[][] axes = {Solid.FORWARD, Solid.RIGHT, Solid.DOWN};
        cloud.body(2, AT, axes, new double[] {0.3, 0.25, 0.2});
        assertThat(inertia(cloud)[0][0]).isCloseTo(2 * 0.09, within(1e-12));
        assertThat(inertia(cloud)[1][1]).isCloseTo(2 * 0.0625, within(1e-12));
        assertThat(inertia(cloud)[2][2]).isCloseTo(2 * 0.04, within(1e-12));
        assertThat(cloud.inertia(new double[3])[2][2])
                .isCloseTo(2 * (0.04 + 0.3 * 0.3 + 0.2 * 0.2), within(1e-12));
    }

    private static Cloud standing(double kg, double stature, double abductionDeg) {
        Cloud cloud = new Cloud();
        double[] held = new double[Body.JOINTS];
        held[1] = Math.toRadians(abductionDeg);
        held[5] = held[1];
        new Body(true, kg, stature, 0, 0).lay(cloud, held);
        return cloud;
    }

    /**
     * A stacking of the same table by others, men of 73 kg and 1.741 m with abducted arms: inertia
     * about roll, pitch, yaw to three figures; centre 0.572 of stature above the floor.
     */
    @Test
    void aPersonStandsAsAnotherStackingOfTheTable() {
        double[][] theirs = {{0, 12.2, 11.6, 0.94}, {45, 13.4, 11.8, 1.95}, {90, 15.0, 12.7, 2.62}};
        for (double[] row : theirs) {
            double[][] own = inertia(standing(73, 1.741, row[0]));
            assertThat(own[0][0]).isCloseTo(row[1], within(0.02 * row[1]));
            assertThat(own[1][1]).isCloseTo(row[2], within(0.02 * row[2]));
            assertThat(own[2][2]).isCloseTo(row[3], within(0.04 * row[3]));
        }
        double floor = 0.5319 + 0.4222 + 0.4340 + 0.039 * 1.741;
        double up = (floor - standing(73, 1.741, 0).centre()[2]) / 1.741;
        assertThat(up).isCloseTo(0.572, within(0.002));
        assertThat(standing(73, 1.741, 0).kg()).isCloseTo(73, within(1e-9));
    }

    /** One measured man of the three of a text on body dynamics; the stack reads yaw low. */
    @Test
    void aPersonIsNearAMeasuredOne() {
        double[][] own = inertia(standing(78.7, 1.834, 0));
        assertThat(own[0][0] / 14.9).isBetween(0.9, 1.1);
        assertThat(own[1][1] / 13.4).isBetween(0.9, 1.1);
        assertThat(1.48 / own[2][2]).isBetween(Spread.LEAST_YAW, 1.45);
    }
}
