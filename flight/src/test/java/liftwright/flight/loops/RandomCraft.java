package liftwright.flight.loops;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.plant.body.Inertia;
import liftwright.rig.PartId;
import liftwright.rig.Vec3;

/**
 * Invented craft of 4 to 16 fans round a centre, each with lags, cants and swirl of its own kind.
 */
final class RandomCraft {

    private RandomCraft() {}

    static double between(RandomGenerator random, double least, double most) {
        return least + (most - least) * random.nextDouble();
    }

    /** A craft that can be steered: ample thrust, cants that turn it, short lags. */
    static Craft able(RandomGenerator random) {
        double massKg = between(random, 8, 160);
        double sizeM = between(random, 0.3, 0.9);
        double radius = between(random, 0.25, 0.5) * sizeM;
        Inertia inertia =
                new Inertia(
                        massKg * radius * radius * between(random, 0.7, 1.3),
                        massKg * radius * radius * between(random, 0.7, 1.3),
                        massKg * radius * radius * between(random, 1.2, 1.9),
                        0,
                        0,
                        0);
        int fans = 4 + 2 * random.nextInt(7);
        double spoolS = between(random, 0.005, 0.06);
        double share = between(random, 1.5, 2.6);
        double weightN = massKg * 9.80665;
        List<Lifter> lifters = new ArrayList<>();
        for (int f = 0; f < fans; f++) {
            double round = 2 * Math.PI * (f + between(random, -0.15, 0.15)) / fans;
            Vec3 at =
                    new Vec3(
                            sizeM * Math.cos(round),
                            sizeM * Math.sin(round),
                            between(random, -0.2, 0.05));
            int spin = f % 2 == 0 ? 1 : -1;
            // Canted about its own radius, as its spin turns: swirl and cant then help each other.
            double cant = -spin * Math.toRadians(between(random, 3, 8));
            Vec3 axis =
                    new Vec3(
                            -Math.sin(round) * Math.sin(cant),
                            Math.cos(round) * Math.sin(cant),
                            -Math.cos(cant));
            lifters.add(
                    lifter(
                            f,
                            at,
                            axis,
                            spin,
                            weightN / fans,
                            share * weightN / fans,
                            spoolS * between(random, 0.9, 1.1)));
        }
        return new Craft(
                massKg,
                inertia,
                lifters,
                Collections.nCopies(fans, 50.0),
                lags(random),
                Flexible.RIGID,
                true);
    }

    static Lifter lifter(
            int number, Vec3 at, Vec3 axis, int spin, double hoverN, double mostN, double spoolS) {
        double speed = 2000;
        double torqueM = 0.02;
        double swirl = 0.2;
        Vec3 moment = at.cross(axis).plus(axis.times(-spin * swirl * torqueM));
        // Two thirds of 50 V at hover go into back voltage, so that full duty gives about the most.
        Lifter.Volts volts = new Lifter.Volts(0.2, 45 / Math.sqrt(mostN), 4.8 / mostN);
        return new Lifter(
                new PartId("f." + number),
                axis,
                moment,
                axis,
                spin,
                hoverN,
                mostN,
                Double.POSITIVE_INFINITY,
                0.02 * mostN,
                volts,
                new Lifter.Rotor(1e-4 * hoverN / 40, speed, spoolS, 2 * hoverN / speed));
    }

    static Lags lags(RandomGenerator random) {
        return new Lags(
                between(random, 250, 1000),
                between(random, 0.001, 0.006),
                between(random, 0.001, 0.006),
                between(random, 0.0005, 0.003),
                2000,
                between(random, 40, 150),
                between(random, 0.02, 0.08),
                between(random, 0.05, 0.15));
    }
}
