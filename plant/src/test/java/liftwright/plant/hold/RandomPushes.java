package liftwright.plant.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/** Invented fans on invented stands: upright, lying, every way between, some without thrust. */
final class RandomPushes {

    private RandomPushes() {}

    static List<FanAlone> fans(RandomGenerator random, int count) {
        List<FanAlone> fans = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            Vec3 at =
                    new Vec3(
                            random.nextDouble(-0.5, 0.5),
                            random.nextDouble(-0.5, 0.5),
                            random.nextDouble(-0.4, 0.4));
            double thrustN = random.nextInt(10) == 0 ? 0 : random.nextDouble(10, 120);
            fans.add(
                    new FanAlone(
                            PartId.of("f", k + 1),
                            at,
                            random.nextInt(3) == 0 ? new Vec3(0, 0, -1) : direction(random),
                            thrustN,
                            random.nextDouble(-0.05, 0.05) * thrustN));
        }
        return fans;
    }

    static Vec3 direction(RandomGenerator random) {
        while (true) {
            Vec3 v =
                    new Vec3(
                            random.nextDouble(-1, 1),
                            random.nextDouble(-1, 1),
                            random.nextDouble(-1, 1));
            if (v.length() > 0.1 && v.length() < 1) {
                return v.times(1 / v.length());
            }
        }
    }

    static List<Push> pushes(RandomGenerator random, int most) {
        return Push.onStand(
                fans(random, random.nextInt(1, most + 1)),
                random.nextBoolean() ? new Vec3(0, 0, -1) : direction(random),
                random.nextDouble(0.1, 1.8));
    }

    static Footprint feet(RandomGenerator random) {
        return new Footprint(random.nextDouble(0.3, 2), random.nextDouble(0.3, 2));
    }

    /** All together of those whose bit is set. */
    static Push sum(List<Push> fans, int bits) {
        Vec3 force = Vec3.ZERO;
        Vec3 moment = Vec3.ZERO;
        for (int k = 0; k < fans.size(); k++) {
            if ((bits >> k & 1) == 1) {
                force = force.plus(fans.get(k).force());
                moment = moment.plus(fans.get(k).moment());
            }
        }
        return new Push(force, moment);
    }
}
