package liftwright.plant.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import liftwright.plant.balance.Allocation.Axis;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Trims and reserves of the six-rotor vehicle of Du, Quan, Yang and Cai 2015 (1.535 kg, g 9.80, arm
 * 0.275 m, 6.125 N a rotor, torque 0.1 m of thrust; from memory), whose reserves a vertex search of
 * the project's gave; the programme itself is judged against a library in {@code
 * BoundedProgramTest}.
 */
class AllocationTest {

    private static final double WEIGHT = 1.535 * 9.80;

    private static FanAtWork fan(int number, Vec3 arm, double thrustN, double swirlNm, Vec3 push) {
        return new FanAtWork(
                PartId.of("r", number), arm, thrustN, thrustN, swirlNm, push, push, push);
    }

    private static List<FanAtWork> six(String spins, int dead) {
        List<FanAtWork> fans = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            double angle = Math.toRadians(60 * k);
            double most = k + 1 == dead ? 0 : 6.125;
            fans.add(
                    fan(
                            k + 1,
                            new Vec3(0.275 * Math.cos(angle), 0.275 * Math.sin(angle), 0),
                            most,
                            // Yaw is about the downward axis: a positive one is against "up".
                            (spins.charAt(k) == 'P' ? -0.1 : 0.1) * most,
                            FanAtWork.UP));
        }
        return fans;
    }

    @ParameterizedTest
    @CsvSource({
        "PNPNPN, 0, 2.9174, 2.9174, 2.5266, 2.5266, 1.5043, 1.5043",
        "PPNNPN, 0, 2.9174, 2.9174, 2.0684, 2.0684, 1.2250, 1.2250",
        "PPNNPN, 1, 2.2523, 2.2523, 1.3003, 2.0684, 0.9457, 0.9457",
        "PPNNPN, 5, -0.6652, 2.9174, 2.0684, -0.3840, -0.2793, 1.2250",
        "PNPNPN, 1, 2.2523, 2.2523, 0, 2.5266, 0, 1.5043"
    })
    void reservesAreThoseOfTheVertexSearch(
            String spins,
            int dead,
            double rollUp,
            double rollDown,
            double pitchUp,
            double pitchDown,
            double yawUp,
            double yawDown) {
        Allocation can = new Allocation(six(spins, dead), WEIGHT);
        double[] wanted = {rollUp, rollDown, pitchUp, pitchDown, yawUp, yawDown};
        int at = 0;
        for (Axis axis : Axis.values()) {
            for (int side = 0; side < 2; side++) {
                assertThat(can.reserveNm(axis, side == 0 ? 1 : -1, true).orElseThrow())
                        .as("%s %d", axis, side)
                        .isCloseTo(wanted[at++], within(5e-5));
            }
        }
    }

    @Test
    void theSixLiftWithAllTheyHave() {
        Allocation can = new Allocation(six("PNPNPN", 0), WEIGHT);
        Allocation.Trim trim = can.greatestLift(true).orElseThrow();
        assertThat(trim.liftN() - WEIGHT).isCloseTo(21.707, within(5e-4));
        assertThat(trim.gap()).isLessThan(1e-10);
    }

    /** Six rotors of one spin: held to zero yaw they must all stop, free they turn. */
    @Test
    void freeYawLiftsMoreAndTellsTheTurn() {
        Allocation can = new Allocation(six("PPPPPP", 0), WEIGHT);
        Allocation.Trim held = can.greatestLift(true).orElseThrow();
        Allocation.Trim free = can.greatestLift(false).orElseThrow();
        assertThat(held.liftN()).isCloseTo(0, within(1e-9));
        assertThat(free.liftN()).isCloseTo(6 * 6.125, within(1e-9));
        assertThat(free.yawNm()).isCloseTo(6 * 0.6125, within(1e-9));
    }

    /** Turned about the upright, a rig has the same lift, yaw reserve and authority. */
    @Test
    void turningAndRelabellingTheRigChangesNothing() {
        Seeded.check(
                300,
                random -> {
                    int count = random.nextInt(4, 13);
                    double turn = random.nextDouble(-3, 3);
                    List<FanAtWork> fans = new ArrayList<>();
                    List<FanAtWork> turned = new ArrayList<>();
                    double all = 0;
                    for (int k = 0; k < count; k++) {
                        Vec3 arm =
                                new Vec3(
                                        random.nextDouble(-1, 1),
                                        random.nextDouble(-1, 1),
                                        random.nextDouble(-0.3, 0.3));
                        Vec3 push =
                                new Vec3(
                                        random.nextDouble(-0.2, 0.2),
                                        random.nextDouble(-0.2, 0.2),
                                        -1);
                        push = push.times(1 / push.length());
                        double thrust = random.nextDouble(20, 90);
                        double swirl = random.nextDouble(-1, 1);
                        fans.add(fan(k, arm, thrust, swirl, push));
                        turned.add(fan(k, about(arm, turn), thrust, swirl, about(push, turn)));
                        all += thrust;
                    }
                    Collections.shuffle(turned, new Random(random.nextLong()));
                    Allocation one = new Allocation(fans, all / 2);
                    Allocation other = new Allocation(turned, all / 2);
                    for (boolean held : new boolean[] {true, false}) {
                        double lift =
                                one.greatestLift(held).map(Allocation.Trim::liftN).orElse(0.0);
                        assertThat(other.greatestLift(held).map(Allocation.Trim::liftN).orElse(0.0))
                                .isCloseTo(lift, within(1e-7 * all));
                    }
                    var yaw = one.reserveNm(Axis.YAW, 1, true);
                    assertThat(other.reserveNm(Axis.YAW, 1, true).isPresent())
                            .isEqualTo(yaw.isPresent());
                    yaw.ifPresent(
                            nm ->
                                    assertThat(other.reserveNm(Axis.YAW, 1, true).orElseThrow())
                                            .isCloseTo(nm, within(1e-7 * 90 * count)));
                    assertThat(other.authorityN())
                            .isCloseTo(one.authorityN(), within(1e-6 * 90 * count));
                });
    }

    private static Vec3 about(Vec3 v, double rad) {
        return new Vec3(
                v.x() * Math.cos(rad) - v.y() * Math.sin(rad),
                v.x() * Math.sin(rad) + v.y() * Math.cos(rad),
                v.z());
    }
}
