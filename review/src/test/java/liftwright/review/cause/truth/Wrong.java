package liftwright.review.cause.truth;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.review.cause.truth.Hidden.Part;

/**
 * One thing at fault, and how large it may be: log-uniform between two sizes with soft ends, in any
 * direction where it has one.
 *
 * @param place number of the fan, mount, joint or pattern of spins
 * @param name of the place
 * @param least size, rad, m or a share
 */
public record Wrong(Kind kind, int place, String name, double least, double most) {

    /** The six that are drawn, and a jet askew in its fan, which an observer reckons with. */
    public enum Kind {
        WEAK_FAN,
        TURNED_SEAT,
        MOUNT_TWIST,
        ARM_ANGLE,
        CENTRE,
        SPIN,
        CROOKED_FAN;

        /** Numbers that tell a fault of this kind. */
        int sizes() {
            return switch (this) {
                case WEAK_FAN, ARM_ANGLE -> 1;
                case TURNED_SEAT, MOUNT_TWIST, CENTRE, CROOKED_FAN -> 2;
                case SPIN -> 0;
            };
        }

        /** Whether a true rig may have it. */
        boolean isDrawn() {
            return this != CROOKED_FAN;
        }

        /** How often it is met, against the others: as the product says of what was tested. */
        double prior() {
            return this == CROOKED_FAN ? 0.3 : 1;
        }

        /** Whether it goes one way only. */
        boolean oneWay() {
            return this == WEAK_FAN;
        }
    }

    /** All places that may be at fault in this way. */
    static List<Wrong> places(Plan plan, Kind kind) {
        List<Wrong> places = new ArrayList<>();
        switch (kind) {
            case WEAK_FAN -> fans(plan, kind, 0.02, 0.5, places);
            case TURNED_SEAT -> fans(plan, kind, Math.toRadians(0.5), Math.toRadians(12), places);
            case CROOKED_FAN -> fans(plan, kind, Math.toRadians(0.5), Math.toRadians(2), places);
            case MOUNT_TWIST -> {
                for (int k = 0; k < plan.mounts().size(); k++) {
                    String name = plan.mounts().get(k).name();
                    places.add(new Wrong(kind, k, name, Math.toRadians(0.4), Math.toRadians(6)));
                }
            }
            case ARM_ANGLE -> {
                for (int k = 0; k < Body.JOINTS; k++) {
                    places.add(
                            new Wrong(
                                    kind, k, "joint " + k, Math.toRadians(2), Math.toRadians(25)));
                }
            }
            case CENTRE -> places.add(new Wrong(kind, 0, "", 0.003, 0.08));
            case SPIN -> {
                for (int k = 0; k < plan.fans() + PATTERNS.size(); k++) {
                    String name =
                            k < plan.fans()
                                    ? plan.seats().get(k).id()
                                    : PATTERNS.get(k - plan.fans());
                    places.add(new Wrong(kind, k, name, 1, 1));
                }
            }
        }
        return places;
    }

    /** Ends of sizes are soft by so much, in logarithms. */
    private static final double SOFT = 0.25;

    /** Groups whose fans all spin alike, right- or left-hand. */
    private static final List<String> PATTERNS =
            List.of("back +", "back -", "left-boom +", "left-boom -", "right-pod +", "right-pod -");

    private static void fans(Plan plan, Kind kind, double least, double most, List<Wrong> places) {
        for (int k = 0; k < plan.fans(); k++) {
            places.add(new Wrong(kind, k, plan.seats().get(k).id(), least, most));
        }
    }

    /** One place, each as likely; of spins a single fan or a group, each as likely. */
    static Wrong drawn(Plan plan, Kind kind, RandomGenerator random) {
        List<Wrong> places = places(plan, kind);
        if (kind == Kind.SPIN) {
            boolean single = random.nextBoolean();
            return single
                    ? places.get(random.nextInt(plan.fans()))
                    : places.get(plan.fans() + random.nextInt(PATTERNS.size()));
        }
        return places.get(random.nextInt(places.size()));
    }

    /** How likely this place is among those of its kind. */
    double share(Plan plan) {
        if (kind != Kind.SPIN) {
            return 1.0 / places(plan, kind).size();
        }
        return place < plan.fans() ? 0.5 / plan.fans() : 0.5 / PATTERNS.size();
    }

    double[] size(RandomGenerator random) {
        double size =
                Math.exp(
                        random.nextDouble(Math.log(least), Math.log(most) + 1e-12)
                                + SOFT * random.nextGaussian());
        double way = random.nextDouble(0, 2 * Math.PI);
        return switch (kind.sizes()) {
            case 0 -> new double[0];
            case 1 -> new double[] {kind.oneWay() || random.nextBoolean() ? size : -size};
            default -> new double[] {size * Math.cos(way), size * Math.sin(way)};
        };
    }

    /** The normal distribution (Abramowitz and Stegun 26.2.17, good to 7.5e-8). */
    private static double below(double x) {
        double t = 1 / (1 + 0.2316419 * Math.abs(x));
        double tail =
                Math.exp(-x * x / 2)
                        / Math.sqrt(2 * Math.PI)
                        * t
                        * (0.319381530
                                + t
                                        * (-0.356563782
                                                + t
                                                        * (1.781477937
                                                                + t
                                                                        * (-1.821255978
                                                                                + t
                                                                                        * 1.330274429))));
        return x > 0 ? 1 - tail : tail;
    }

    /** Density of a size. */
    double density(double[] size) {
        if (size.length == 0) {
            return 1;
        }
        double whole = size.length == 1 ? Math.abs(size[0]) : Math.hypot(size[0], size[1]);
        if (whole == 0 || (kind.oneWay() && size[0] < 0)) {
            return 0;
        }
        double within =
                below(Math.log(whole / least) / SOFT) - below(Math.log(whole / most) / SOFT);
        double radial = within / (whole * Math.log(most / least));
        return size.length == 2
                ? radial / (2 * Math.PI * whole)
                : radial * (kind.oneWay() ? 1 : 0.5);
    }

    /** The rig with this at fault. */
    Hidden in(Hidden hidden, double[] size) {
        Hidden wrong = hidden.copy();
        switch (kind) {
            case WEAK_FAN ->
                    wrong.set(Part.GIVES, place, hidden.get(Part.GIVES, place) * (1 - size[0]));
            case TURNED_SEAT -> both(wrong, Part.SEAT, 2 * place, size);
            case CROOKED_FAN -> both(wrong, Part.LEAN, 2 * place, size);
            case MOUNT_TWIST -> both(wrong, Part.TWIST, 2 * place, size);
            case ARM_ANGLE -> wrong.add(Part.ARM, place, size[0]);
            case CENTRE -> both(wrong, Part.CENTRE, 0, size);
            case SPIN -> spins(wrong);
        }
        return wrong;
    }

    private static void both(Hidden wrong, Part part, int at, double[] size) {
        wrong.add(part, at, size[0]).add(part, at + 1, size[1]);
    }

    private void spins(Hidden wrong) {
        Plan plan = wrong.plan;
        if (place < plan.fans()) {
            wrong.reverse(place);
            return;
        }
        String pattern = PATTERNS.get(place - plan.fans());
        String group = pattern.substring(0, pattern.indexOf(' '));
        int alike = pattern.endsWith("+") ? 1 : -1;
        for (int k = 0; k < plan.fans(); k++) {
            if (plan.seats().get(k).id().startsWith(group)
                    && plan.seats().get(k).sense() != alike) {
                wrong.reverse(k);
            }
        }
    }
}
