package liftwright.plant.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import liftwright.plant.hold.Ask.What;
import liftwright.rig.LimitName;
import liftwright.rig.Limits;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What is asked of a tether, by hand. */
class TetherHoldTest {

    private static final Limits USUAL = new Limits(Map.of());

    /** 1.9 m tall, shoulders at 1.5 m, 0.6 m to each side. */
    private static final Extent EXTENT = new Extent(1.5, -0.4, 0, 0.6);

    private static TetherNumbers line(double lengthM, double anchorStrengthN) {
        return new TetherNumbers(
                5,
                lengthM,
                20e3,
                0,
                1.5,
                4.4,
                0,
                OptionalDouble.of(anchorStrengthN),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(3),
                OptionalDouble.of(4),
                Optional.of(new TetherNumbers.Gantry(400, new Footprint(4, 3), 0.5)),
                Optional.of(
                        new TetherNumbers.Down(
                                4, 2.875, 1.725, 10e3, OptionalDouble.of(5000), 1.5)));
    }

    private static final TetherHold.Hung RIG =
            new TetherHold.Hung(
                    100,
                    1500,
                    EXTENT,
                    List.of(new TetherHold.OpenIntake(3, new Vec3(-0.2, 0, -0.3), 0.05)));

    private static final TetherHold.Ran RAN = new TetherHold.Ran(0.5, 2.0, 6000, 0.3, 3000, 0);

    private static Ask ask(List<Ask> asks, What what) {
        return asks.stream().filter(one -> one.what() == what).findFirst().orElseThrow();
    }

    @Test
    void everyAskIsThatOfTheNumbers() {
        List<Ask> asks = TetherHold.of(line(3.2, 20e3), RIG, RAN, USUAL);
        // Overhead at 4.4 m, 1.9 m tall: soles at 2.5 m strike; the apex is at 2.0 m.
        assertThat(ask(asks, What.HEADROOM).margin().orElseThrow())
                .isCloseTo(2.5 / 2.0 - 1, within(1e-12));
        // Twice 6 kN is less than 22.24 kN, so twice is asked.
        assertThat(ask(asks, What.ANCHOR).margin().orElseThrow())
                .isCloseTo(20.0 / 12 - 1, within(1e-12));
        assertThat(ask(asks, What.LINE).margin()).isEmpty();
        assertThat(ask(asks, What.ARREST).margin().orElseThrow())
                .isCloseTo(8.0 / 6 - 1, within(1e-12));
        // Straight at soles 5 − 3.2 − 1.5 = 0.3 m: 1.7 m fallen; stretched 0.3 m of 0.3 m below.
        assertThat(ask(asks, What.FREE_FALL).load()).isCloseTo(1.7, within(1e-12));
        assertThat(ask(asks, What.CLEARANCE).margin().orElseThrow()).isCloseTo(0, within(1e-9));
        // 2.3 m up and 1.725 m out: 0.8 of each line holds down, 3000/4/0.8.
        assertThat(ask(asks, What.DOWN_LINE).load()).isCloseTo(937.5, within(1e-9));
        assertThat(ask(asks, What.DOWN_LINE).margin().orElseThrow())
                .isCloseTo(5000 / 937.5 / 2 - 1, within(1e-12));
        // Down-lines let the ring up to 2.3 m, 2.7 m below the anchor.
        assertThat(ask(asks, What.SIDE_REACH).load())
                .isCloseTo(Math.sqrt(3.2 * 3.2 - 2.7 * 2.7) + 0.6, within(1e-9));
        assertThat(ask(asks, What.SIDE_REACH).capacity().orElseThrow()).isEqualTo(3);
    }

    @Test
    void anAnchorOfTheRuleIsEnoughWhateverThePull() {
        TetherHold.Ran hard = new TetherHold.Ran(0.5, 2.0, 15e3, 0.3, 0, 0);
        Ask asked = ask(TetherHold.of(line(3.2, 22_240), RIG, hard, USUAL), What.ANCHOR);
        assertThat(asked.margin().orElseThrow()).isCloseTo(0, within(1e-12));
        TetherHold.Ran harder = new TetherHold.Ran(0.5, 2.0, 30e3, 0.3, 0, 0);
        Ask more = ask(TetherHold.of(line(3.2, 22_240), RIG, harder, USUAL), What.ANCHOR);
        assertThat(more.margin().orElseThrow()).isCloseTo(22_240.0 / 30_000 - 1, within(1e-12));
    }

    @Test
    void aSlackLineReachesWhatLiesWithinItsEllipsoid() {
        Vec3 anchor = new Vec3(0, 0, -4);
        Vec3 ring = Vec3.ZERO;
        Seeded.check(
                200,
                random -> {
                    Vec3 at =
                            new Vec3(
                                    random.nextDouble(-1, 1),
                                    random.nextDouble(-1, 1),
                                    random.nextDouble(-1, 1));
                    double needed = LineReach.neededM(anchor, ring, at, 0);
                    double lengthM = random.nextDouble(4, 6);
                    // A line of that length drawn tight over the point has both parts in it.
                    boolean reaches =
                            at.minus(anchor).length() <= lengthM - at.minus(ring).length();
                    assertThat(needed <= lengthM).isEqualTo(reaches);
                });
        assertThat(LineReach.neededM(anchor, ring, new Vec3(0, 0, -2), 0)).isEqualTo(4);
    }

    /** Pushes in all directions tried on the grid: none pulls more along the line. */
    @Test
    void noDirectionOfThrustPullsMoreAtAnAngle() {
        Seeded.check(
                50,
                random -> {
                    double weightN = random.nextDouble(500, 1500);
                    double thrustN = random.nextDouble(500, 3000);
                    double angle = random.nextDouble(0, Math.PI / 2);
                    double along = 0;
                    for (int k = 0; k < 20_000; k++) {
                        double way = 2 * Math.PI * k / 20_000;
                        double acrossN = thrustN * Math.cos(way) - weightN * Math.sin(angle);
                        if (Math.abs(acrossN) < 2e-3 * thrustN) {
                            along =
                                    Math.max(
                                            along,
                                            thrustN * Math.sin(way) + weightN * Math.cos(angle));
                        }
                    }
                    assertThat(LinePull.pullN(weightN, thrustN, angle))
                            .isCloseTo(along, within(0.1 * thrustN));
                });
        assertThat(LinePull.pullN(1000, 500, Math.PI / 2)).isZero();
        assertThat(LinePull.pullN(1000, 1500, 0)).isEqualTo(2500);
        assertThat(USUAL.si(LimitName.RESTRAINT_FACTOR)).isEqualTo(2);
    }
}
