package liftwright.flight.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.flight.Examples;
import org.junit.jupiter.api.Test;

/** The set point by hand: distances over speeds. */
class CourseTest {

    private final Course course =
            Course.of(Examples.profile(Examples.rig("curlew"), ProfileReadingTest.GOOD));

    private double[] at(double timeS) {
        double[] out = new double[8];
        course.point(course.at(timeS), timeS, out);
        return out;
    }

    @Test
    void legsLastAsLongAsTheirWayTakes() {
        // 2 s live, 1.5 m at 0.5 m/s, 5 s, the diagonal of 1 m and 12 m at 1.5 m/s, 90° at 20 °/s
        double move = Math.sqrt(145) / 1.5;
        assertThat(course.startS(1)).isEqualTo(2);
        assertThat(course.startS(2)).isCloseTo(5, within(1e-12));
        assertThat(course.startS(3)).isCloseTo(10, within(1e-12));
        assertThat(course.startS(4)).isCloseTo(10 + move, within(1e-12));
        assertThat(course.startS(5)).isCloseTo(10 + move + 4.5, within(1e-12));
        assertThat(course.endS())
                .isCloseTo(10 + move + 4.5 + 5 + Course.LANDING_WAIT_S + 1, within(1e-12));
    }

    @Test
    void thePointGoesStraightAndItsRateIsItsSlope() {
        double[] half = at(10 + Math.sqrt(145) / 3);
        assertThat(half[0]).isCloseTo(-0.5, within(1e-12));
        assertThat(half[1]).isCloseTo(6, within(1e-12));
        assertThat(half[2]).isEqualTo(1.5);
        assertThat(Math.hypot(half[4], half[5])).isCloseTo(1.5, within(1e-12));
        double step = 1e-4;
        for (double t = 0.35; t < course.endS(); t += 0.77) {
            double[] before = at(t - step);
            double[] now = at(t);
            double[] after = at(t + step);
            for (int i = 0; i < 4; i++) {
                double slope = (after[i] - before[i]) / (2 * step);
                assertThat(now[4 + i]).as("t = %s, %s", t, i).isCloseTo(slope, within(1e-7));
            }
        }
    }

    @Test
    void everyLegHasItsTask() {
        assertThat(course.task(0)).isEqualTo(Course.Task.IDLE);
        assertThat(course.task(1)).isEqualTo(Course.Task.LIFT_OFF);
        assertThat(course.task(4)).isEqualTo(Course.Task.FLY);
        assertThat(course.task(5)).isEqualTo(Course.Task.LAND);
        assertThat(course.task(6)).isEqualTo(Course.Task.DEAD);
        assertThat(at(1e6)[2]).isZero();
    }
}
