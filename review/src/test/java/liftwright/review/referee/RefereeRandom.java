package liftwright.review.referee;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** Draws rigs that a workshop could build, from small modules to wearable ones. */
final class RefereeRandom {

    private RefereeRandom() {}

    static RefereeRig rig(RandomGenerator random) {
        List<Integer> fansOfPack = new ArrayList<>();
        for (int packs = random.nextInt(1, 5); packs > 0; packs--) {
            fansOfPack.add(random.nextInt(1, 4));
        }
        int series = random.nextInt(8, 15);
        double restV = series * 3.85;
        RefereeRig.FanUnit fan = fan(random, restV);
        double currentA = fan.shaftPowerW().value() / (0.8 * restV) * 2.5;
        return new RefereeRig(
                Math.round(random.nextDouble(0, 1500)),
                Math.round(random.nextDouble(-5, 35)),
                Math.round(random.nextDouble(0, 100)) / 100.0,
                Math.round(random.nextDouble(10, 90)) / 100.0,
                1,
                fan,
                cell(random, restV / series, currentA),
                series,
                Doubtful.of(random, random.nextDouble(0.1, 0.4), "kg", 0.1),
                tenths(random, 0.5, 3),
                fansOfPack,
                random.nextInt(4) == 0 ? 0.9 : 1,
                new RefereeRig.Wire(random.nextBoolean() ? 8 : 6, length(random, 100, 700)),
                tenths(random, 0.1, 0.6),
                tenths(random, 0.2, 0.6),
                new RefereeRig.Wire(random.nextBoolean() ? 12 : 10, length(random, 100, 800)),
                tenths(random, 0.1, 0.6),
                Doubtful.of(random, random.nextDouble(1, 12), "°", 0.06),
                parts(
                        random,
                        fan.thrustN().value()
                                * fansOfPack.stream().mapToInt(Integer::intValue).sum()),
                random.nextInt(4) == 0);
    }

    private static RefereeRig.FanUnit fan(RandomGenerator random, double restV) {
        double tipMm = Math.round(random.nextDouble(70, 200));
        double hubMm = Math.round(tipMm * random.nextDouble(0.3, 0.42));
        double areaM2 =
                Math.PI / 4 * (tipMm * tipMm - hubMm * hubMm) * 1e-6 * random.nextDouble(0.9, 1.1);
        // 170 to 190 m/s at the tip leaves room below the tip Mach limit.
        double omega = random.nextDouble(140, 170) / (tipMm / 2000);
        double exitSpeed = random.nextDouble(50, 80);
        double thrustN = 1.225 * areaM2 * exitSpeed * exitSpeed;
        double shaftW = thrustN * exitSpeed / 2 / random.nextDouble(0.6, 0.8);
        double kvSi = omega / (restV * random.nextDouble(0.78, 0.92));
        double currentA = shaftW / omega * kvSi;
        double ohm = random.nextDouble(0.02, 0.05) * restV / currentA;
        return new RefereeRig.FanUnit(
                tipMm,
                hubMm,
                Doubtful.of(random, areaM2 * 1e4, "cm²", 0.03),
                Doubtful.of(random, thrustN / 120, "kg", 0.05),
                random.nextInt(4) == 0,
                Math.round(omega * 30 / Math.PI),
                Doubtful.of(random, thrustN, "N", 0.06),
                Doubtful.of(random, shaftW, "W", 0.06),
                new Doubtful(1, "", 0.001 * random.nextInt(1, 50), 0, false, true).symmetric(),
                Doubtful.of(random, kvSi * 30 / Math.PI, "rpm/V", 0.03),
                Doubtful.of(random, ohm * 900, "mΩ", 0.15),
                Doubtful.of(random, currentA * random.nextDouble(0.01, 0.05), "A", 0.2),
                Doubtful.of(random, ohm * 100, "mΩ", 0.2),
                random.nextInt(5) == 0
                        ? Optional.of((double) Math.round(currentA * random.nextDouble(0.7, 0.95)))
                        : Optional.empty(),
                random.nextInt(5) == 0
                        ? Optional.of((double) Math.round(restV * 0.6))
                        : Optional.empty(),
                Math.round(random.nextDouble(1, 10)),
                Math.round(random.nextDouble(20, 200)) / 1000.0,
                random.nextBoolean() ? Optional.of(screen(random, areaM2)) : Optional.empty(),
                Doubtful.of(random, random.nextDouble(0.85, 0.98), "", 0.06));
    }

    /** Open enough for the law: K stays below about 0.25. */
    private static RefereeRig.Screen screen(RandomGenerator random, double areaM2) {
        double free = random.nextDouble(0.55, 0.9);
        double root = 0.707 * Math.pow(1 - free, 0.375) + 1 - free;
        double zeta = root * root / (free * free);
        double faceM2 = areaM2 * Math.max(1.1, Math.sqrt(zeta / random.nextDouble(0.05, 0.25)));
        return new RefereeRig.Screen(Doubtful.of(random, free, "", 0.02), Math.round(faceM2 * 1e4));
    }

    private static RefereeRig.Cell cell(RandomGenerator random, double restV, double currentA) {
        double sag = random.nextDouble(0.03, 0.08) * restV / currentA * 1000;
        return new RefereeRig.Cell(
                Doubtful.of(random, sag * 0.7, "mΩ", 0.12).forEach(),
                Doubtful.of(random, sag * 0.3, "mΩ", 0.15),
                Doubtful.of(random, random.nextDouble(60, 300), "g", 0.04),
                List.of(0.0, 0.1, 0.2, 0.5, 0.8, 1.0),
                List.of(3.3, 3.61, 3.73, 3.83, 4.0, 4.2));
    }

    private static Doubtful length(RandomGenerator random, double low, double high) {
        return Doubtful.of(random, random.nextDouble(low, high), "mm", 0.1);
    }

    /** Heavy enough that lift over weight comes out between about a half and two. */
    private static List<Doubtful> parts(RandomGenerator random, double ratedN) {
        int count = random.nextInt(1, 5);
        double eachKg = ratedN / 9.8 / random.nextDouble(1.4, 3) / count;
        List<Doubtful> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double kg = Math.max(0.2, eachKg * random.nextDouble(0.5, 1.5));
            parts.add(Doubtful.of(random, kg, "kg", 0.05));
        }
        return parts;
    }

    private static double tenths(RandomGenerator random, double low, double high) {
        return Math.round(10 * random.nextDouble(low, high)) / 10.0;
    }
}
