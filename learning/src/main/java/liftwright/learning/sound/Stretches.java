package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where fans are heard: stretches of a common curve that glide as something with inertia does. A
 * tone that stands from its first moment to its last is a hum, and one that leaps from pitch to
 * pitch is music; neither is a fan.
 */
final class Stretches {

    /** Silence as long as this ends a stretch, s. */
    private static final double GAP_S = 0.35;

    private static final double SHORTEST_S = 0.8;

    /** Greatest over least speed of a stretch in which something spun up or down. */
    private static final double GLIDE = 1.25;

    /** What counts as a change of speed, neper, and how many of them a hand on a throttle makes. */
    private static final double LEG = 0.1;

    private static final double MOST_LEGS_PER_S = 1.6;

    /** Mean support that a stretch needs. */
    private static final double SUPPORT = 1.0;

    /**
     * @param from first frame
     * @param to frame after the last
     */
    record Stretch(int from, int to) {}

    /**
     * @param heard stretches of fans, in order of time
     * @param refused stretches that are no fan's
     */
    record Found(List<Stretch> heard, List<Stretch> refused) {
        Found {
            heard = List.copyOf(heard);
            refused = List.copyOf(refused);
        }
    }

    private Stretches() {}

    /**
     * Every stretch, whether it glides or not: for a recording in which other things vouch for it.
     */
    static List<Stretch> all(CommonCurve curve) {
        Found found = of(curve);
        var all = new ArrayList<>(found.heard());
        all.addAll(found.refused());
        all.sort(Comparator.comparingInt(Stretch::from));
        return all;
    }

    static Found of(CommonCurve curve) {
        var heard = new ArrayList<Stretch>();
        var refused = new ArrayList<Stretch>();
        int from = -1;
        int silent = 0;
        double hopS = curve.frames() < 2 ? 1 : curve.timeS(1) - curve.timeS(0);
        for (int k = 0; k <= curve.frames(); k++) {
            boolean on = k < curve.frames() && curve.scale(k) > 0;
            if (on) {
                from = from < 0 ? k : from;
                silent = 0;
                continue;
            }
            silent++;
            if (from >= 0 && (silent * hopS > GAP_S || k == curve.frames())) {
                var stretch = new Stretch(from, k - silent + 1);
                if ((stretch.to() - stretch.from()) * hopS >= SHORTEST_S) {
                    (glides(curve, stretch) ? heard : refused).add(stretch);
                }
                from = -1;
            }
        }
        return new Found(heard, refused);
    }

    private static boolean glides(CommonCurve curve, Stretch stretch) {
        double support = 0;
        int count = 0;
        double[] leaps = new double[stretch.to() - stretch.from()];
        for (int k = stretch.from(); k < stretch.to(); k++) {
            if (curve.scale(k) > 0) {
                support += curve.support(k);
                count++;
                if (k > stretch.from() && curve.scale(k - 1) > 0) {
                    leaps[k - stretch.from()] = Math.log(curve.scale(k) / curve.scale(k - 1));
                }
            }
        }
        double lengthS = leaps.length * (curve.timeS(1) - curve.timeS(0));
        return support / count >= SUPPORT
                && glide(leaps) >= Math.log(GLIDE)
                && legs(curve, stretch) < MOST_LEGS_PER_S * lengthS;
    }

    /** How often it goes up after it went down, and the other way, by a tenth at least. */
    private static int legs(CommonCurve curve, Stretch stretch) {
        int legs = 0;
        int way = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int k = stretch.from(); k < stretch.to(); k++) {
            if (curve.scale(k) > 0) {
                double place = Math.log(curve.scale(k));
                low = Math.min(low, place);
                high = Math.max(high, place);
                if (way <= 0 && place - low > LEG) {
                    way = 1;
                    legs++;
                    high = place;
                } else if (way >= 0 && high - place > LEG) {
                    way = -1;
                    legs++;
                    low = place;
                }
            }
        }
        return legs;
    }

    /** Farthest way from a low to a high or back, without leaps that have rest to both sides. */
    private static double glide(double[] leaps) {
        double place = 0;
        double low = 0;
        double high = 0;
        double lone = 0;
        double all = 0;
        for (int k = 0; k < leaps.length; k++) {
            double about = 0;
            for (int j = Math.max(0, k - 4); j <= Math.min(leaps.length - 1, k + 4); j++) {
                about += Math.abs(leaps[j]);
            }
            double size = Math.abs(leaps[k]);
            boolean leap = size > 0.02 && size > 0.6 * about;
            all += size;
            lone += leap ? size : 0;
            place += leap ? 0 : leaps[k];
            low = Math.min(low, place);
            high = Math.max(high, place);
        }
        return lone > 0.5 * all ? 0 : high - low;
    }
}
