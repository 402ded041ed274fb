package liftwright.learning.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;

/** What the throttle does: fans one by one, stairs of all, up and down, with holds. */
public final class Profile {

    /**
     * Throttle of some fans or of all (none named), straight from the last level in {@code riseS},
     * then held.
     */
    private record Leg(
            List<Integer> fans, double from, double to, double startS, double riseS, double holdS) {
        double endS() {
            return startS + riseS + holdS;
        }
    }

    /** A hold over which means are taken. */
    record Hold(double fromS, double toS) {}

    private static final double SLOPE_PS = 0.28;
    private static final List<Integer> ALL = List.of();

    private final List<Leg> legs = new ArrayList<>();
    private final List<Hold> means = new ArrayList<>();
    private final boolean single;
    private double nowS = 2;
    private double level;

    private Profile(boolean single) {
        this.single = single;
    }

    /** A random one. */
    static Profile draw(int fans, RandomGenerator random) {
        boolean single = fans > 1 && random.nextDouble() < 0.65;
        boolean first = random.nextBoolean();
        Profile made = new Profile(single);
        if (single && first) {
            made.oneByOne(fans, random);
        }
        made.stairs(random);
        if (single && !first) {
            made.oneByOne(fans, random);
        }
        return made;
    }

    /** Stairs of all fans by levels, each held. */
    public static Profile stairs(double holdS, double... levels) {
        Profile made = new Profile(false);
        for (double to : levels) {
            made.go(ALL, to, holdS);
        }
        made.go(ALL, 0, 1);
        return made;
    }

    /** Some fans at a time at a level, each lot held. */
    public static Profile lots(List<List<Integer>> lots, double level, double holdS) {
        Profile made = new Profile(true);
        for (List<Integer> lot : lots) {
            made.go(lot, level, holdS);
            made.go(lot, 0, 1);
        }
        return made;
    }

    /** Stairs of one fan. */
    public static Profile one(int fan, double holdS, double... levels) {
        Profile made = new Profile(true);
        for (double to : levels) {
            made.go(List.of(fan), to, holdS);
        }
        made.go(List.of(fan), 0, 1);
        return made;
    }

    private void oneByOne(int fans, RandomGenerator random) {
        double to = 0.5 + 0.3 * random.nextDouble();
        double hold = 3 + 2 * random.nextDouble();
        for (int fan = 0; fan < fans; fan++) {
            go(List.of(fan), to, hold);
            go(List.of(fan), 0, 0.5);
        }
    }

    private void stairs(RandomGenerator random) {
        double top = 0.65 + 0.3 * random.nextDouble();
        int up = 2 + random.nextInt(3);
        double hold = 4 + 5 * random.nextDouble();
        for (int k = 1; k <= up; k++) {
            go(ALL, top * k / up, hold);
        }
        if (random.nextBoolean()) {
            go(ALL, 0.6 * top, hold);
        }
        go(ALL, 0, 1 + random.nextDouble());
    }

    private void go(List<Integer> fans, double to, double holdS) {
        double rise = Math.abs(to - level) / SLOPE_PS;
        legs.add(new Leg(fans, level, to, nowS, rise, holdS));
        if (to > 0) {
            means.add(new Hold(nowS + rise + 0.8, nowS + rise + holdS));
        }
        nowS += rise + holdS;
        level = to;
    }

    public double lengthS() {
        return nowS;
    }

    List<Hold> holds() {
        return means;
    }

    /** Whether some fans are told what others are not. */
    boolean single() {
        return single;
    }

    /** Throttle of a fan, 0 to 1. */
    public double at(int fan, double timeS) {
        for (Leg leg : legs) {
            if (timeS < leg.endS() && timeS >= leg.startS()) {
                if (!leg.fans().isEmpty() && !leg.fans().contains(fan)) {
                    return 0;
                }
                double part = Math.min(1, (timeS - leg.startS()) / Math.max(leg.riseS(), 1e-9));
                return leg.from() + part * (leg.to() - leg.from());
            }
        }
        return 0;
    }

    /** The greatest throttle of all fans together. */
    double top() {
        return legs.stream()
                .filter(leg -> leg.fans().isEmpty())
                .mapToDouble(Leg::to)
                .max()
                .orElse(0);
    }

    /** When all fans have reached it. */
    double topFromS() {
        return legs.stream()
                .filter(leg -> leg.fans().isEmpty() && leg.to() >= top() - 1e-12)
                .mapToDouble(leg -> leg.startS() + leg.riseS())
                .min()
                .orElse(0);
    }
}
