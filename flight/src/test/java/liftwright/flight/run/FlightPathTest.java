package liftwright.flight.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import liftwright.flight.Examples;
import liftwright.flight.loops.LoopDesign;
import liftwright.flight.loops.RigLoops;
import liftwright.plant.Plant;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import org.junit.jupiter.api.Test;

/** The path that pictures are moved by, against the series that were recorded beside it. */
class FlightPathTest {

    private static final Rig RIG = Examples.rig("curlew");
    private static final Plant PLANT = Plant.assembleHeated(RIG);

    private static final String TURNS =
            """
            liftwright profile: 1
            start: {on: held, height: 1.5 m}
            steps:
              - move to: {forward: 2 m, at: 1 m/s}
              - turn: {by: 90°, at: 45 deg/s}
              - hold: 3 s
            """;

    private static FlightOutcome flown() {
        var loops = (LoopDesign.Granted) new RigLoops(PLANT.balancing()).design();
        return new FlightRun(PLANT, new ComputerCrew(RIG, loops))
                .fly(FlightCase.of(PLANT, Examples.profile(RIG, TURNS), 1, 0));
    }

    /** A vector turned by a quaternion, q v q*, written out by products of quaternions. */
    private static double[] turned(double[] q, int at, Vec3 v) {
        double[] one = {q[at], q[at + 1], q[at + 2], q[at + 3]};
        double[] back = {q[at], -q[at + 1], -q[at + 2], -q[at + 3]};
        return times(times(one, new double[] {0, v.x(), v.y(), v.z()}), back);
    }

    private static double[] times(double[] a, double[] b) {
        return new double[] {
            a[0] * b[0] - a[1] * b[1] - a[2] * b[2] - a[3] * b[3],
            a[0] * b[1] + a[1] * b[0] + a[2] * b[3] - a[3] * b[2],
            a[0] * b[2] - a[1] * b[3] + a[2] * b[0] + a[3] * b[1],
            a[0] * b[3] + a[1] * b[2] - a[2] * b[1] + a[3] * b[0]
        };
    }

    private static double between(double[] times, double[] values, double timeS) {
        int k = 1;
        while (k < times.length - 1 && times[k] < timeS) {
            k++;
        }
        double share = (timeS - times[k - 1]) / (times[k] - times[k - 1]);
        return values[k - 1] + share * (values[k] - values[k - 1]);
    }

    @Test
    void itIsWhereTheRecordsSayAndDenseEnoughToBeSeenMoving() {
        FlightOutcome flown = flown();
        FlightPath path = flown.path();
        FlightSeries series = flown.series();
        Vec3 centre =
                PLANT.balancing().worker().liftOff(PLANT.parameters().nominal()).mass().centre();
        assertThat(centre.z()).isNotZero();
        assertThat(path.moments()).isGreaterThan((int) (20 * flown.durationS()));
        assertThat(path.lines()).isEmpty();
        double weightN = PLANT.weightN(PLANT.parameters().nominal());
        for (int k = 1; k < path.moments(); k++) {
            double timeS = path.timesS()[k];
            assertThat(timeS - path.timesS()[k - 1]).isBetween(0.02, 0.05);
            double[] arm = turned(path.turned(), 4 * k, centre);
            assertThat(path.placeM()[3 * k] + arm[1])
                    .isCloseTo(
                            between(series.timesS(), series.of(FlightSeries.Kind.FORWARD), timeS),
                            within(0.003));
            assertThat(path.placeM()[3 * k + 1] + arm[2])
                    .isCloseTo(
                            between(series.timesS(), series.of(FlightSeries.Kind.RIGHT), timeS),
                            within(0.003));
            double[] nose = turned(path.turned(), 4 * k, new Vec3(1, 0, 0));
            assertThat(Math.atan2(nose[2], nose[1]))
                    .isCloseTo(
                            between(series.timesS(), series.of(FlightSeries.Kind.HEADING), timeS),
                            within(0.02));
        }
        int last = path.moments() - 1;
        assertThat(path.placeM()[3 * last + 2]).isLessThan(-1.2);
        double sum = 0;
        for (int fan = 0; fan < path.fans(); fan++) {
            sum += path.thrustN()[path.fans() * last + fan];
        }
        assertThat(sum).isCloseTo(weightN, within(0.1 * weightN));
    }
}
