package liftwright.review.cause;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Fan;
import liftwright.rig.Rig;

/**
 * Everything on a rig that may be at fault. A fault begins where the declared tolerance ends, or at
 * the least value below where none was declared, and ends at what can be at all; between the two
 * every octave of sizes is as likely. Each octave is a suspect of its own, with a normal size. The
 * least and most values are from memory.
 */
final class Suspects {

    /** Share of thrust that a fan lacks: a dead one lacks all. */
    static final double LEAST_WEAK = 0.03;

    static final double MOST_WEAK = 1;

    static final double LEAST_SEAT_RAD = Math.toRadians(0.5);
    static final double MOST_SEAT_RAD = Math.toRadians(16);

    /** Rotor and duct leave a jet little room to be askew. */
    static final double MOST_CROOKED_RAD = Math.toRadians(2);

    static final double LEAST_TWIST_RAD = Math.toRadians(0.25);
    static final double MOST_TWIST_RAD = Math.toRadians(8);
    static final double LEAST_ARM_RAD = Math.toRadians(2);
    static final double MOST_ARM_RAD = Math.toRadians(32);
    static final double LEAST_CENTRE_M = 0.003;
    static final double MOST_CENTRE_M = 0.1;

    /** Moments of unknown cause over thrust times the arm of the fans. */
    static final double LEAST_UNKNOWN = 0.005;

    static final double MOST_UNKNOWN = 0.16;

    static final double SWIRL_DOUBT = 0.10;

    private static final String[] JOINTS = {
        "left shoulder, flexion",
        "left shoulder, abduction",
        "left shoulder, rotation",
        "left elbow, flexion",
        "right shoulder, flexion",
        "right shoulder, abduction",
        "right shoulder, rotation",
        "right elbow, flexion"
    };

    private final Rig rig;
    private final List<Suspect> all = new ArrayList<>();

    private Suspects(Rig rig) {
        this.rig = rig;
    }

    /**
     * @param armsCarryFans whether joints of the arms count
     * @param armM arm of the fans
     * @param heldRad how well arms were held, k = 2
     */
    static List<Suspect> of(Rig rig, boolean armsCarryFans, double armM, double heldRad) {
        Suspects suspects = new Suspects(rig);
        suspects.fans();
        suspects.mounts();
        if (armsCarryFans) {
            suspects.joints(Math.max(LEAST_ARM_RAD, heldRad));
        }
        suspects.vectors(
                Blame.CENTRE,
                "",
                List.of(),
                1,
                octaves(LEAST_CENTRE_M, MOST_CENTRE_M),
                size -> new Fault.Centre(size[0], size[1]),
                (size, doubt) ->
                        way(size, 1000, "%.0f mm", "forward", "back")
                                + String.format(
                                        Locale.ROOT,
                                        ", each ± %.0f mm",
                                        2000 * Math.max(doubt[0], doubt[1])));
        suspects.spins();
        suspects.add(
                Blame.AS_DECLARED,
                "",
                List.of(),
                1,
                List.of(),
                List.of(),
                _ -> new Fault.None(),
                (_, _) -> "");
        List<Double> unknown = octaves(LEAST_UNKNOWN * armM, MOST_UNKNOWN * armM);
        for (double wide : unknown) {
            suspects.add(
                    Blame.UNKNOWN,
                    "",
                    List.of(),
                    1.0 / unknown.size(),
                    List.of(0.0, 0.0, 0.0),
                    List.of(wide, wide, wide),
                    size -> new Fault.Moments(size[0], size[1], size[2]),
                    (_, _) -> "");
        }
        return List.copyOf(suspects.all);
    }

    /** Sizes a factor of two apart, from the least to below the most; at least one. */
    private static List<Double> octaves(double least, double most) {
        List<Double> sizes = new ArrayList<>();
        double size = least;
        do {
            sizes.add(size);
            size *= 2;
        } while (size < most);
        return sizes;
    }

    /** A fault that has a size and any direction: two numbers about zero, octave by octave. */
    private void vectors(
            Blame blame,
            String place,
            List<Integer> fans,
            double weight,
            List<Double> octaves,
            java.util.function.Function<double[], Fault> fault,
            Suspect.Sizing words) {
        for (double wide : octaves) {
            add(
                    blame,
                    place,
                    fans,
                    weight / octaves.size(),
                    List.of(0.0, 0.0),
                    List.of(wide, wide),
                    fault,
                    words);
        }
    }

    private void add(
            Blame blame,
            String place,
            List<Integer> fans,
            double weight,
            List<Double> expected,
            List<Double> doubt,
            java.util.function.Function<double[], Fault> fault,
            Suspect.Sizing words) {
        all.add(new Suspect(blame, place, fans, weight, expected, doubt, fault, words));
    }

    private void fans() {
        int count = rig.fans().size();
        for (int k = 0; k < count; k++) {
            int fan = k;
            String name = rig.fans().get(k).id().text();
            List<Double> shares =
                    octaves(
                            Math.max(
                                    LEAST_WEAK,
                                    2 * sigma(rig.fans().get(k).type().scatter().tolerance())),
                            MOST_WEAK);
            for (double share : shares) {
                add(
                        Blame.WEAK_FAN,
                        name,
                        List.of(k),
                        1.0 / count / shares.size(),
                        List.of(share),
                        List.of(share / 2),
                        size -> new Fault.Weak(fan, size[0]),
                        (size, doubt) ->
                                String.format(
                                        Locale.ROOT,
                                        "%.0f %% ± %.0f %% less thrust",
                                        100 * size[0],
                                        200 * doubt[0]));
            }
            double seat = Math.max(LEAST_SEAT_RAD, 2 * sigma(rig.fans().get(k).seat()));
            vectors(
                    Blame.TURNED_SEAT,
                    name,
                    List.of(k),
                    1.0 / count,
                    octaves(seat, MOST_SEAT_RAD),
                    size -> new Fault.Seat(fan, size[0], size[1]),
                    Suspects::lean);
            vectors(
                    Blame.CROOKED_FAN,
                    name,
                    List.of(k),
                    1.0 / count,
                    octaves(LEAST_SEAT_RAD, MOST_CROOKED_RAD),
                    size -> new Fault.Crooked(fan, size[0], size[1]),
                    Suspects::lean);
        }
    }

    private void mounts() {
        Map<String, Set<Integer>> byMount = new LinkedHashMap<>();
        for (int k = 0; k < rig.fans().size(); k++) {
            byMount.computeIfAbsent(rig.fans().get(k).mount().name(), _ -> new LinkedHashSet<>())
                    .add(k);
        }
        byMount.forEach(
                (name, fans) ->
                        vectors(
                                Blame.MOUNT_TWIST,
                                name,
                                List.copyOf(fans),
                                1.0 / byMount.size(),
                                octaves(LEAST_TWIST_RAD, MOST_TWIST_RAD),
                                size -> new Fault.Twist(Set.copyOf(fans), size[0], size[1]),
                                (size, doubt) ->
                                        String.format(
                                                Locale.ROOT,
                                                "%.1f° ± %.1f° at lift-off",
                                                degrees(Math.hypot(size[0], size[1])),
                                                2 * degrees(Math.max(doubt[0], doubt[1])))));
    }

    private void joints(double leastRad) {
        List<Double> octaves = octaves(leastRad, MOST_ARM_RAD);
        for (int k = 0; k < JOINTS.length; k++) {
            for (double rad : octaves) {
                joint(k, rad, octaves.size());
                joint(k, -rad, octaves.size());
            }
        }
    }

    /** More and less are unlike, since what a joint does is not quite linear. */
    private void joint(int joint, double expectedRad, int octaves) {
        add(
                Blame.ARM_ANGLE,
                JOINTS[joint],
                List.of(),
                0.5 / JOINTS.length / octaves,
                List.of(expectedRad),
                List.of(Math.abs(expectedRad) / 2),
                size -> new Fault.Arm(joint, size[0]),
                (size, doubt) ->
                        String.format(
                                Locale.ROOT,
                                "%.1f° ± %.1f° %s",
                                degrees(Math.abs(size[0])),
                                2 * degrees(doubt[0]),
                                size[0] < 0 ? "less" : "more"));
    }

    private void spins() {
        for (SpinPatterns.Pattern pattern : SpinPatterns.of(rig)) {
            double swirl = Math.max(SWIRL_DOUBT, swirlDoubt(pattern.reversed()));
            add(
                    Blame.SPIN,
                    pattern.name(),
                    List.copyOf(pattern.reversed()),
                    pattern.share(),
                    List.of(1.0),
                    List.of(swirl),
                    size -> new Fault.Spins(pattern.reversed(), size[0]),
                    (size, doubt) ->
                            String.format(
                                    Locale.ROOT,
                                    "swirl %.0f %% ± %.0f %% of that declared",
                                    100 * size[0],
                                    200 * doubt[0]));
        }
    }

    private double swirlDoubt(Set<Integer> fans) {
        double most = 0;
        for (int k : fans) {
            Quantity swirl = rig.fans().get(k).type().swirl();
            if (swirl.si() != 0) {
                most = Math.max(most, sigma(swirl.tolerance()) / Math.abs(swirl.si()));
            }
        }
        return Math.min(1, most);
    }

    private static double sigma(List<Fan.Lean> leans) {
        return leans.stream().mapToDouble(lean -> sigma(lean.angle().tolerance())).max().orElse(0);
    }

    private static double sigma(Tolerance tolerance) {
        return Math.max(tolerance.plus(), tolerance.minus()) / 2;
    }

    private static String lean(double[] size, double[] doubt) {
        double[] inDegrees = {degrees(size[0]), degrees(size[1])};
        return "thrust leans "
                + way(inDegrees, 1, "%.1f°", "forward", "back")
                + String.format(
                        Locale.ROOT, ", each ± %.1f°", 2 * degrees(Math.max(doubt[0], doubt[1])));
    }

    private static String way(
            double[] size, double factor, String format, String front, String back) {
        return String.format(Locale.ROOT, format, Math.abs(factor * size[0]))
                + " "
                + (size[0] < 0 ? back : front)
                + " and "
                + String.format(Locale.ROOT, format, Math.abs(factor * size[1]))
                + (size[1] < 0 ? " left" : " right");
    }

    private static double degrees(double rad) {
        return Math.toDegrees(rad);
    }
}
