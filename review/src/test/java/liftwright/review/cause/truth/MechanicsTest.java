package liftwright.review.cause.truth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import liftwright.plant.Balancing;
import liftwright.plant.HoverPoint;
import liftwright.plant.body.Inertia;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.table.TurningTable.Swap;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Two models that share nothing agree where nothing is hidden, on rigs with a wearer and jets. */
class MechanicsTest {

    private static final Swap STILL = new Swap.None();

    @Test
    void bothModelsAgreeOnWhatWasDeclared() {
        Seeded.check(
                12,
                random -> {
                    Plan plan = Plan.drawn(random);
                    Rig rig = TrueRig.read(PlanText.yaml(plan));
                    Balancing balancing = Balancing.of(rig);
                    Balancing.Worker worker = balancing.worker();
                    double[] p = balancing.parameters().nominal();
                    HoverPoint hop = worker.liftOff(p);
                    assertThat(hop.lifts()).isTrue();
                    Mechanics mechanics = new Mechanics(plan);
                    Cloud cloud = mechanics.whole(plan.held());
                    double[] centre = cloud.centre();
                    assertThat(hop.mass().massKg()).isCloseTo(cloud.kg(), within(1e-6));
                    near(hop.mass().centre(), centre, 1e-8);
                    Inertia inertia = hop.mass().inertia();
                    double[][] own = cloud.inertia(centre);
                    assertThat(
                                    new double[] {
                                        inertia.xx(), inertia.yy(), inertia.zz(),
                                        inertia.xy(), inertia.xz(), inertia.yz()
                                    })
                            .containsExactly(
                                    new double[] {
                                        own[0][0], own[1][1], own[2][2],
                                        own[0][1], own[0][2], own[1][2]
                                    },
                                    within(1e-6));
                    Hidden none = new Hidden(plan);
                    double[] still = new double[Body.JOINTS];
                    double[] ours = mechanics.rates(none, OptionalDouble.empty(), STILL, still);
                    // Few rays miss an edge now and then: a share of 1.5 % of a jet.
                    double yaw = 0.015 * plan.thrustN() * 0.4 / inertia.zz();
                    Vec3 theirs = hop.ledger().acceleration();
                    near(theirs, ours, new double[] {0.08, 0.08, yaw});
                    HoverPoint stand = worker.atThrottle(p, TrueRig.STAND);
                    double[] there =
                            mechanics.rates(none, OptionalDouble.of(TrueRig.STAND), STILL, still);
                    near(stand.ledger().acceleration(), there, new double[] {0.06, 0.06, yaw});
                    double thrustN = stand.ledger().fans().getFirst().thrustN();
                    assertThat(new Motors(plan).thrustN(TrueRig.STAND) / thrustN)
                            .isCloseTo(1, within(0.03));
                });
    }

    private static void near(Vec3 one, double[] other, double within) {
        near(one, other, new double[] {within, within, within});
    }

    private static void near(Vec3 one, double[] other, double[] within) {
        assertThat(one.x()).isCloseTo(other[0], within(within[0]));
        assertThat(one.y()).isCloseTo(other[1], within(within[1]));
        assertThat(one.z()).isCloseTo(other[2], within(within[2]));
    }

    /** A joint of an arm moves fans, mass and jets alike in both. */
    @Test
    void bothModelsTurnWithTheArms() {
        Seeded.check(
                6,
                random -> {
                    Plan plan = Plan.drawn(random);
                    Balancing balancing = Balancing.of(TrueRig.read(PlanText.yaml(plan)));
                    Balancing.Worker worker = balancing.worker();
                    double[] p = balancing.parameters().nominal();
                    double[] turn = new double[Body.JOINTS];
                    int joint = random.nextInt(turn.length);
                    turn[joint] = Math.toRadians(random.nextBoolean() ? 15 : -15);
                    Mechanics mechanics = new Mechanics(plan);
                    Hidden none = new Hidden(plan);
                    OptionalDouble hop = OptionalDouble.empty();
                    double[] before = mechanics.rates(none, hop, STILL, new double[Body.JOINTS]);
                    double[] after = mechanics.rates(none, hop, STILL, turn);
                    Vec3 change =
                            worker.liftOff(p, turn)
                                    .ledger()
                                    .acceleration()
                                    .minus(worker.liftOff(p).ledger().acceleration());
                    assertThat(change.length()).isGreaterThan(0.01);
                    near(change, Solid.minus(after, before), 0.12 + 0.05 * change.length());
                });
    }

    /** What is hidden does what its name says: signs by hand. */
    @Test
    void whatIsHiddenTurnsTheRigAsItsNameSays() {
        Seeded.check(
                10,
                random -> {
                    Plan plan = Plan.drawn(random);
                    Mechanics mechanics = new Mechanics(plan);
                    Hidden none = new Hidden(plan);
                    int rightBoom = plan.seats().size() - 6;
                    assertThat(plan.seats().get(rightBoom + 2).id()).isEqualTo("right-boom.1");
                    Hidden ahead = none.copy().add(Hidden.Part.CENTRE, 0, 0.02);
                    // A centre ahead of the lift drops the nose: pitch falls by m g d/I.
                    assertThat(change(mechanics, none, ahead)[1]).isNegative();
                    Hidden weak = none.copy();
                    weak.set(Hidden.Part.GIVES, rightBoom + 2, 0.8);
                    // Less on the right: the right side goes down.
                    assertThat(change(mechanics, none, weak)[0]).isPositive();
                    Hidden seat = none.copy().add(Hidden.Part.SEAT, 2 * (rightBoom + 2), 0.1);
                    // A push to the front out on the right turns to the left.
                    assertThat(change(mechanics, none, seat)[2]).isNegative();
                    Hidden spins = none.copy();
                    for (int k = 0; k < plan.fans(); k++) {
                        if (plan.seats().get(k).sense() > 0) {
                            spins.reverse(k);
                        }
                    }
                    // All left-hand: the rig turns right-hand about the thrust, seen up; left is
                    // minus about down.
                    assertThat(change(mechanics, none, spins)[2]).isNegative();
                });
    }

    private static double[] change(Mechanics mechanics, Hidden before, Hidden after) {
        double[] still = new double[Body.JOINTS];
        OptionalDouble hop = OptionalDouble.empty();
        return Solid.minus(
                mechanics.rates(after, hop, STILL, still),
                mechanics.rates(before, hop, STILL, still));
    }
}
