package liftwright.plant.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.plant.balance.Allocation.Axis;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.Relationship;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** Trims and reserves of random rigs, in newtons and newton metres, against a library's simplex. */
class AllocationOnRandomRigsTest {

    private static List<FanAtWork> drawn(RandomGenerator random) {
        int count = random.nextInt(4, 13);
        boolean ring = random.nextBoolean();
        List<FanAtWork> fans = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            double angle = 2 * Math.PI * k / count;
            Vec3 arm =
                    ring
                            ? new Vec3(0.6 * Math.cos(angle), 0.6 * Math.sin(angle), -0.1)
                            : new Vec3(
                                    random.nextDouble(-1, 1),
                                    random.nextDouble(-1, 1),
                                    random.nextDouble(-0.3, 0.3));
            Vec3 push = new Vec3(random.nextDouble(-0.2, 0.2), random.nextDouble(-0.2, 0.2), -1);
            push = ring ? FanAtWork.UP : push.times(1 / push.length());
            double thrust = random.nextInt(12) == 0 ? 0 : ring ? 50 : random.nextDouble(20, 90);
            double swirl = (k % 2 == 0 ? 0.03 : -0.03) * thrust;
            fans.add(
                    new FanAtWork(
                            PartId.of("r", k + 1), arm, thrust, thrust, swirl, push, push, push));
        }
        return fans;
    }

    private static double[] row(List<FanAtWork> fans, int which) {
        return fans.stream()
                .mapToDouble(
                        fan ->
                                switch (which) {
                                    case 0 -> -fan.force().z();
                                    case 1 -> fan.moment().x();
                                    case 2 -> fan.moment().y();
                                    default -> fan.moment().z();
                                })
                .toArray();
    }

    /** Empty where the library finds no point. */
    private static Optional<Double> byLibrary(double[] c, List<double[]> rows, double[] right) {
        List<LinearConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < right.length; i++) {
            constraints.add(new LinearConstraint(rows.get(i), Relationship.EQ, right[i]));
        }
        for (int j = 0; j < c.length; j++) {
            double[] one = new double[c.length];
            one[j] = 1;
            constraints.add(new LinearConstraint(one, Relationship.LEQ, 1));
        }
        try {
            return Optional.of(
                    new SimplexSolver(1e-9, 10, 1e-12)
                            .optimize(
                                    new MaxIter(100_000),
                                    new LinearObjectiveFunction(c, 0),
                                    new LinearConstraintSet(constraints),
                                    GoalType.MAXIMIZE,
                                    new NonNegativeConstraint(true))
                            .getValue());
        } catch (MathIllegalStateException none) {
            return Optional.empty();
        }
    }

    @Test
    void trimsAndReservesAreThoseOfTheLibrary() {
        int[] seen = new int[2];
        Seeded.check(
                10_000,
                random -> {
                    List<FanAtWork> fans = drawn(random);
                    double all = fans.stream().mapToDouble(FanAtWork::thrustN).sum();
                    double weightN = Math.max(1, all * random.nextDouble(0.2, 0.9));
                    Allocation can = new Allocation(fans, weightN);
                    double[] lift = row(fans, 0);
                    double[] yaw = row(fans, 3);
                    boolean held = random.nextBoolean();
                    List<double[]> zero = new ArrayList<>(List.of(row(fans, 1), row(fans, 2)));
                    if (held) {
                        zero.add(yaw);
                    }
                    Allocation.Trim trim = can.greatestLift(held).orElseThrow();
                    assertThat(trim.gap()).isLessThan(1e-9);
                    assertThat(trim.liftN())
                            .isCloseTo(
                                    byLibrary(lift, zero, new double[zero.size()]).orElseThrow(),
                                    within(1e-6 * (1 + all)));
                    int turn = random.nextInt(3);
                    Axis axis = List.of(Axis.ROLL, Axis.PITCH, Axis.YAW).get(turn);
                    double[] along = row(fans, 1 + turn);
                    List<double[]> others = new ArrayList<>(List.of(lift));
                    for (int other = 0; other < 3; other++) {
                        if (other != turn) {
                            others.add(row(fans, 1 + other));
                        }
                    }
                    Optional<Double> reserve = can.reserveNm(axis, 1, true);
                    Optional<Double> referee =
                            byLibrary(along, others, new double[] {weightN, 0, 0});
                    assertThat(reserve.isPresent()).isEqualTo(referee.isPresent());
                    reserve.ifPresent(
                            nm ->
                                    assertThat(nm)
                                            .isCloseTo(
                                                    referee.orElseThrow(),
                                                    within(1e-6 * (1 + all))));
                    seen[reserve.isPresent() ? 0 : 1]++;
                });
        assertThat(seen[0]).isGreaterThan(3000);
        assertThat(seen[1]).isGreaterThan(300);
    }

    /** Seen in a mirror: the same lift and pitch; roll and yaw the other way round. */
    @Test
    void aMirroredRigHasMirroredReserves() {
        Seeded.check(
                500,
                random -> {
                    List<FanAtWork> fans = drawn(random);
                    double all = 1;
                    List<FanAtWork> mirrored = new ArrayList<>();
                    for (FanAtWork fan : fans) {
                        all += fan.thrustN();
                        Vec3 push = fan.actual().mirrored();
                        mirrored.add(
                                new FanAtWork(
                                        fan.id(),
                                        fan.arm().mirrored(),
                                        fan.thrustN(),
                                        fan.alikeN(),
                                        -fan.swirlNm(),
                                        push,
                                        push,
                                        push));
                    }
                    double size = all;
                    Allocation one = new Allocation(fans, all / 2);
                    Allocation other = new Allocation(mirrored, all / 2);
                    assertThat(other.authorityN()).isCloseTo(one.authorityN(), within(1e-8 * size));
                    for (Axis axis : Axis.values()) {
                        int way = axis == Axis.PITCH ? 1 : -1;
                        Optional<Double> here = one.reserveNm(axis, 1, true);
                        Optional<Double> there = other.reserveNm(axis, way, true);
                        assertThat(there.isPresent()).isEqualTo(here.isPresent());
                        here.ifPresent(
                                nm ->
                                        assertThat(there.orElseThrow())
                                                .isCloseTo(nm, within(1e-7 * size)));
                    }
                });
    }
}
