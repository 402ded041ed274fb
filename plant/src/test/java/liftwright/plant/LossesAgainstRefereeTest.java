package liftwright.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import liftwright.plant.balance.Allocation.Axis;
import liftwright.plant.fault.Effect;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/**
 * Losses of random rigs against a rig that was built without what is lost: its currents and thrusts
 * by the nodal referee, what its thrusts do by the referee of points, and trims and reserves by a
 * library's linear programmes. Nothing of the referee's side calls what it judges.
 */
class LossesAgainstRefereeTest {

    private static final double SAME = 1e-9;

    /** The same rig with nobody in it and everything on its frame: no jet meets anything. */
    private static RigSketch bare(Rig rig) {
        RigSketch sketch = RigSketch.of(rig);
        sketch.wearer = Optional.empty();
        sketch.fans.replaceAll(fan -> Copies.of(fan).mount(onFrame(fan.mount())).made());
        sketch.packs.replaceAll(pack -> Copies.of(pack).mount(onFrame(pack.mount())).made());
        sketch.others.replaceAll(
                part ->
                        new OtherPart(
                                part.id(),
                                part.declaredAt(),
                                part.mass(),
                                onFrame(part.mount()),
                                part.at(),
                                Optional.empty()));
        return sketch;
    }

    private static Mount onFrame(Mount mount) {
        return new Mount(
                mount.name(),
                Mount.Carrier.FRAME,
                mount.at(),
                RigSketch.si(0),
                mount.turnForward(),
                mount.turnRight(),
                mount.beam());
    }

    /**
     * Such a rig of a flight computer, most with their fans about the middle, as heavy as some
     * share of all its thrust.
     */
    private static Rig steered(RandomGenerator random) {
        Rig drawn = LossesTest.drawn(random, Control.Kind.FLIGHT_COMPUTER);
        while (drawn.fans().size() < 5) {
            drawn = LossesTest.drawn(random, Control.Kind.FLIGHT_COMPUTER);
        }
        RigSketch sketch = bare(drawn);
        Referee whole = new Referee(sketch.rig(), Effects.ALL);
        double allN = 0;
        for (double newton : whole.thrustN) {
            allN += newton;
        }
        if (random.nextInt(5) > 0) {
            ring(sketch, random);
        }
        sketch.others.clear();
        sketch.others.add(
                new OtherPart(
                        new PartId("ballast"),
                        RigPath.of("other parts", "0"),
                        RigSketch.si(allN / 9.80665 * random.nextDouble(0.02, 0.35)),
                        RigSketch.FRAME,
                        Vec3.ZERO,
                        Optional.empty()));
        return sketch.rig();
    }

    /** Fans about the middle, canted a little, spins in turn; packs in the middle. */
    private static void ring(RigSketch sketch, RandomGenerator random) {
        for (int k = 0; k < sketch.fans.size(); k++) {
            Fan fan = sketch.fans.get(k);
            double angle = 2 * Math.PI * (k + random.nextDouble(-0.2, 0.2)) / sketch.fans.size();
            Vec3 blows = new Vec3(random.nextDouble(-0.2, 0.2), random.nextDouble(-0.2, 0.2), 1);
            sketch.fans.set(
                    k,
                    Copies.of(fan)
                            .mount(RigSketch.FRAME)
                            .at(new Vec3(0.7 * Math.cos(angle), 0.7 * Math.sin(angle), 0))
                            .blows(blows.times(1 / blows.length()))
                            .leans(List.of())
                            .spin(k % 2 == 0 ? Fan.Spin.LEFT_HAND : Fan.Spin.RIGHT_HAND)
                            .made());
        }
        sketch.packs.replaceAll(
                pack ->
                        Copies.of(pack)
                                .mass(RigSketch.si(random.nextDouble(0.1, 1)))
                                .mount(RigSketch.FRAME)
                                .at(Vec3.ZERO)
                                .made());
    }

    /** What is lost at random, and the rig without it. */
    private static final class Loss {
        final Effect effect;
        final Rig rest;
        final int[] fans;
        final int[] packs;
        final int[] chains;

        Loss(Rig rig, RandomGenerator random, boolean someStay) {
            int fanCount = rig.fans().size();
            int packCount = rig.packs().size();
            int chainCount = rig.wiring().chains().size();
            int[] dead = some(fanCount, random, someStay);
            int[] lost = some(packCount, random, someStay);
            int[] open = some(chainCount, random, someStay);
            effect = Effect.dead(dead).and(Effect.lost(lost)).and(Effect.open(open));
            fans = others(fanCount, dead);
            packs = others(packCount, lost);
            chains = others(chainCount, open);
            RigSketch sketch = RigSketch.of(rig);
            keep(sketch.fans, fans);
            keep(sketch.packs, packs);
            keep(sketch.chains, chains);
            sketch.groups.replaceAll(
                    group ->
                            new Control.Group(
                                    group.name(),
                                    group.declaredAt(),
                                    group.fans().stream()
                                            .filter(
                                                    id ->
                                                            sketch.fans.stream()
                                                                    .anyMatch(
                                                                            f -> f.id().equals(id)))
                                            .toList(),
                                    group.share()));
            rest = sketch.rig();
        }

        private static int[] some(int count, RandomGenerator random, boolean someStay) {
            int most = random.nextInt(3);
            int[] chosen =
                    IntStream.range(0, count)
                            .filter(k -> most > 0 && random.nextInt(count) < most)
                            .toArray();
            return someStay && chosen.length == count ? new int[0] : chosen;
        }

        private static int[] others(int count, int[] without) {
            return IntStream.range(0, count)
                    .filter(k -> IntStream.of(without).noneMatch(one -> one == k))
                    .toArray();
        }

        private static <T> void keep(List<T> list, int[] kept) {
            List<T> stay = new ArrayList<>();
            for (int k : kept) {
                stay.add(list.get(k));
            }
            list.clear();
            list.addAll(stay);
        }
    }

    /** Currents, voltages and thrusts of the survivors with all at full throttle. */
    @Test
    void survivorsDrawWhatTheRefereeSays() {
        int[] seen = new int[3];
        Seeded.check(
                400,
                random -> {
                    Rig rig = bare(RandomRigs.exact(random)).rig();
                    Loss loss = new Loss(rig, random, false);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    LossPoint point =
                            plant.losses(Losses.Charge.JUDGED).worker().at(p, loss.effect, 1e9);
                    Referee referee = new Referee(loss.rest, Effects.ALL);
                    assertThat(point.converged()).isTrue();
                    LossPoint.Flow flow = point.flow();
                    assertThat(flow.hover()).isFalse();
                    double currents = 1;
                    for (double amps : referee.busA) {
                        currents += amps;
                    }
                    double[] thrusts = new double[rig.fans().size()];
                    for (int k = 0; k < loss.fans.length; k++) {
                        int fan = loss.fans[k];
                        thrusts[fan] = referee.thrustN[k];
                        same(flow.thrustN().get(fan), referee.thrustN[k], "thrust");
                        same(flow.terminalV().get(fan), referee.terminalV[k], "voltage");
                        same(flow.fanA().get(fan), referee.busA[k], "current");
                        same(flow.windingA().get(fan), referee.windingA[k], "winding current");
                        int dead = Arrays.binarySearch(point.whole().deadFans(), fan);
                        assertThat(dead >= 0).isEqualTo(!referee.fed[k]);
                        seen[0] += dead >= 0 ? 1 : 0;
                    }
                    for (int fan : loss.effect.deadFans()) {
                        assertThat(flow.thrustN().get(fan)).isZero();
                        assertThat(flow.fanA().get(fan)).isZero();
                    }
                    same(point.liftN(), referee.liftN, "lift");
                    for (int k = 0; k < loss.packs.length; k++) {
                        assertThat(flow.packA().get(loss.packs[k]))
                                .isCloseTo(referee.packA[k], within(SAME * currents));
                    }
                    for (int pack : loss.effect.lostPacks()) {
                        assertThat(flow.packA().get(pack)).isCloseTo(0, within(SAME * currents));
                        seen[1]++;
                    }
                    for (int k = 0; k < loss.chains.length; k++) {
                        assertThat(flow.chainA().get(loss.chains[k]))
                                .isCloseTo(referee.chainA[k], within(SAME * currents));
                    }
                    for (int chain : loss.effect.openChains()) {
                        assertThat(flow.chainA().get(chain)).isCloseTo(0, within(SAME * currents));
                        seen[2]++;
                    }
                });
        assertThat(seen[0]).isGreaterThan(50);
        assertThat(seen[1]).isGreaterThan(50);
        assertThat(seen[2]).isGreaterThan(50);
    }

    private static void same(double actual, double expected, String what) {
        assertThat(actual).as(what).isCloseTo(expected, within(SAME * (1 + Math.abs(expected))));
    }

    /** What a newton of each surviving fan does: lift, roll, pitch, yaw. */
    private static double[][] effects(Rig rig, Referee referee, int[] numbers, double[] sense) {
        PointBodies points = new PointBodies(rig);
        double[] centre = points.centre();
        double[][] b = new double[4][numbers.length];
        for (int k = 0; k < numbers.length; k++) {
            Fan fan = rig.fans().get(numbers[k]);
            double[] place = points.place(fan.mount(), fan.at());
            double[] push = points.thrust(fan);
            double[] arm = {place[0] - centre[0], place[1] - centre[1], place[2] - centre[2]};
            double[] turn = PointBodies.cross(arm, push);
            double speed = referee.speed[k];
            double torqueNm = torque(fan) * referee.density / 1.225 * speed * speed;
            double swirlM =
                    referee.thrustN[k] == 0
                            ? 0
                            : (fan.spin() == Fan.Spin.RIGHT_HAND ? -1 : 1)
                                    * fan.type().swirl().si()
                                    * torqueNm
                                    / referee.thrustN[k];
            b[0][k] = -push[2] * sense[k];
            for (int i = 0; i < 3; i++) {
                b[1 + i][k] = turn[i] * sense[k] + Math.signum(sense[k]) * swirlM * push[i];
            }
        }
        return b;
    }

    private static double torque(Fan fan) {
        return switch (fan.type().performance()) {
            case FanType.Performance.AtSpeed at ->
                    at.shaftPower().si() / Math.pow(at.speed().si(), 3);
            case FanType.Performance.Coefficients of -> of.torque().si();
            case FanType.Performance.Measured _ -> throw new IllegalStateException("no table here");
        };
    }

    /** Greatest of one row of b with others at their values; empty where no point is. */
    private static Optional<Double> byLibrary(
            double[][] b, double[] mostN, int row, int sign, int[] held, double liftN) {
        return byLibrary(b, new double[mostN.length], mostN, row, sign, held, liftN);
    }

    private static Optional<Double> byLibrary(
            double[][] b,
            double[] leastN,
            double[] mostN,
            int row,
            int sign,
            int[] held,
            double liftN) {
        var model = new ExpressionsBasedModel();
        Expression[] rows = new Expression[held.length];
        for (int i = 0; i < held.length; i++) {
            rows[i] = model.addExpression("row" + i).level(held[i] == 0 ? liftN : 0);
        }
        for (int k = 0; k < mostN.length; k++) {
            var x =
                    model.addVariable("u" + k)
                            .lower(leastN[k])
                            .upper(mostN[k])
                            .weight(sign * b[row][k]);
            for (int i = 0; i < held.length; i++) {
                rows[i].set(x, b[held[i]][k]);
            }
        }
        Optimisation.Result result = model.maximise();
        return result.getState().isFeasible() ? Optional.of(result.getValue()) : Optional.empty();
    }

    private static int[] heldBeside(int row, boolean yaw) {
        return IntStream.range(0, 4).filter(i -> i != row && (i != 3 || yaw)).toArray();
    }

    /** 10,000 rigs in a deep run, each with none to several losses. */
    @Test
    void trimsAndReservesAreThoseOfTheLibrary() {
        int[] seen = new int[5];
        Seeded.check(
                Seeded.deep() ? 1000 : 150,
                random -> {
                    Rig rig = steered(random);
                    Plant plant = Plant.assemble(rig);
                    double[] p = plant.parameters().nominal();
                    Loss loss = new Loss(rig, random, true);
                    boolean turned = random.nextInt(4) == 0;
                    int reversed = loss.fans[random.nextInt(loss.fans.length)];
                    Effect effect =
                            turned ? loss.effect.and(Effect.reversed(reversed)) : loss.effect;
                    Referee referee = new Referee(loss.rest, Effects.ALL);
                    double[] sense = new double[loss.fans.length];
                    for (int k = 0; k < sense.length; k++) {
                        sense[k] =
                                turned && loss.fans[k] == reversed
                                        ? -rig.fans().get(reversed).type().reversedThrust().si()
                                        : 1;
                    }
                    double[][] b = effects(rig, referee, loss.fans, sense);
                    LossPoint point = plant.losses(Losses.Charge.JUDGED).worker().at(p, effect);
                    double weightN = new PointBodies(rig).massKg() * 9.80665;
                    same(point.weightN(), weightN, "weight");
                    double size = 1;
                    for (double newton : referee.thrustN) {
                        size += newton;
                    }
                    for (boolean yaw : new boolean[] {true, false}) {
                        LossPoint.Computer computer = point.computer().orElseThrow();
                        LossPoint.Trims trims = yaw ? computer.held() : computer.free();
                        assertThat(trims.gap()).isLessThan(1e-9);
                        int[] moments = yaw ? new int[] {1, 2, 3} : new int[] {1, 2};
                        assertThat(trims.greatestLiftN().orElseThrow())
                                .isCloseTo(
                                        byLibrary(b, referee.thrustN, 0, 1, moments, 0)
                                                .orElseThrow(),
                                        within(1e-6 * size));
                        Axis axis = List.of(Axis.ROLL, Axis.PITCH, Axis.YAW).get(random.nextInt(3));
                        int sign = random.nextBoolean() ? 1 : -1;
                        OptionalDouble found = trims.reserve(axis, sign).momentNm();
                        Optional<Double> best =
                                byLibrary(
                                        b,
                                        referee.thrustN,
                                        axis.row(),
                                        sign,
                                        heldBeside(axis.row(), yaw),
                                        weightN);
                        assertThat(found.isPresent()).isEqualTo(best.isPresent());
                        if (found.isPresent()) {
                            assertThat(found.getAsDouble())
                                    .isCloseTo(best.orElseThrow(), within(1e-6 * size));
                        }
                        seen[found.isPresent() ? 0 : 1]++;
                        Optional<Double> trimmed =
                                byLibrary(
                                        b,
                                        referee.thrustN,
                                        0,
                                        0,
                                        yaw ? new int[] {0, 1, 2, 3} : new int[] {0, 1, 2},
                                        weightN);
                        assertThat(trims.holds()).isEqualTo(trimmed.isPresent());
                        seen[trims.holds() ? 2 : 3]++;
                        seen[4] += turned ? 1 : 0;
                    }
                    hovers(point, b, loss.fans, sense);
                });
        for (int cases : seen) {
            assertThat(cases).isGreaterThan(30);
        }
    }

    /** Where the trim holds, the thrusts told hold the weight and turn nothing. */
    private static void hovers(LossPoint point, double[][] b, int[] fans, double[] sense) {
        LossPoint.Computer computer = point.computer().orElseThrow();
        assertThat(point.flow().hover())
                .isEqualTo(computer.held().holds() || computer.free().holds());
        if (!point.flow().hover()) {
            return;
        }
        double[] sum = new double[4];
        for (int k = 0; k < fans.length; k++) {
            double drivenN = point.flow().thrustN().get(fans[k]) / sense[k];
            for (int row = 0; row < 4; row++) {
                sum[row] += b[row][k] * drivenN;
            }
        }
        double size = 1e-7 * (1 + point.liftN() + point.weightN());
        assertThat(sum[0]).isCloseTo(point.weightN(), within(size));
        assertThat(sum[1]).isCloseTo(0, within(size));
        assertThat(sum[2]).isCloseTo(0, within(size));
        if (computer.held().holds()) {
            assertThat(sum[3]).isCloseTo(0, within(size));
        }
    }

    /** A stuck fan pushes in any case: its thrust is the same in every trim and reserve. */
    @Test
    void stuckFansPushWhateverIsAsked() {
        int[] seen = new int[2];
        Seeded.check(
                100,
                random -> {
                    Rig rig = steered(random);
                    int fan = random.nextInt(rig.fans().size());
                    double duty = random.nextBoolean() ? 1 : random.nextDouble(0.2, 0.9);
                    RigSketch full = RigSketch.of(rig);
                    full.groups.clear();
                    for (int k = 0; k < rig.fans().size(); k++) {
                        PartId id = rig.fans().get(k).id();
                        double share = k == fan ? duty : share(rig, id);
                        full.groups.add(
                                new Control.Group(
                                        "own " + k,
                                        RigPath.of("control", "groups", "own " + k),
                                        List.of(id),
                                        RigSketch.si(share)));
                    }
                    Referee referee = new Referee(full.rig(), Effects.ALL);
                    int[] all = IntStream.range(0, rig.fans().size()).toArray();
                    double[] sense = new double[all.length];
                    Arrays.fill(sense, 1);
                    double[][] b = effects(rig, referee, all, sense);
                    Plant plant = Plant.assemble(rig);
                    LossPoint point =
                            plant.losses(Losses.Charge.JUDGED)
                                    .worker()
                                    .at(plant.parameters().nominal(), Effect.stuck(fan, duty));
                    same(point.liftN(), referee.liftN, "lift");
                    double[] mostN = referee.thrustN.clone();
                    if (point.flow().hover()) {
                        double thereN = point.flow().thrustN().get(fan);
                        assertThat(thereN).isGreaterThanOrEqualTo(mostN[fan] * (1 - 1e-9));
                        mostN[fan] = thereN;
                    }
                    double[] leastN = new double[mostN.length];
                    leastN[fan] = mostN[fan];
                    double size = 1 + Arrays.stream(mostN).sum();
                    for (boolean yaw : new boolean[] {true, false}) {
                        LossPoint.Computer computer = point.computer().orElseThrow();
                        LossPoint.Trims trims = yaw ? computer.held() : computer.free();
                        int[] moments = yaw ? new int[] {1, 2, 3} : new int[] {1, 2};
                        compare(
                                trims.greatestLiftN(),
                                byLibrary(b, leastN, mostN, 0, 1, moments, 0),
                                size);
                        Axis axis = List.of(Axis.ROLL, Axis.PITCH, Axis.YAW).get(random.nextInt(3));
                        OptionalDouble found = trims.reserve(axis, -1).momentNm();
                        compare(
                                found,
                                byLibrary(
                                        b,
                                        leastN,
                                        mostN,
                                        axis.row(),
                                        -1,
                                        heldBeside(axis.row(), yaw),
                                        point.weightN()),
                                size);
                        seen[found.isPresent() ? 0 : 1]++;
                    }
                });
        assertThat(seen[0]).isGreaterThan(10);
        assertThat(seen[1]).isGreaterThan(10);
    }

    private static double share(Rig rig, PartId fan) {
        return rig.control().groups().stream()
                .filter(group -> group.fans().contains(fan))
                .mapToDouble(group -> group.share().si())
                .findFirst()
                .orElse(1);
    }

    private static void compare(OptionalDouble found, Optional<Double> best, double size) {
        assertThat(found.isPresent()).isEqualTo(best.isPresent());
        if (found.isPresent()) {
            assertThat(found.getAsDouble()).isCloseTo(best.orElseThrow(), within(1e-6 * size));
        }
    }
}
