package liftwright.review.wiring;

import java.util.Arrays;
import java.util.List;
import liftwright.physics.FuseCurve;
import liftwright.quantity.Tolerance;
import liftwright.rig.Element;
import liftwright.rig.FuseOpening;
import liftwright.rig.book.FuseSeries;

/**
 * Forms of fuse: within which window of time the standard of a form lets one open.
 *
 * @param words what the form is called
 * @param series which ratings it comes in
 * @param earlyMultiple currents of the earliest fuse that the standard allows, over the rating
 * @param earlyS its times, s
 * @param lateMultiple the same of the latest
 * @param lateS its times, s
 * @param source where ratings and windows come from
 */
@SuppressWarnings("ArrayRecordComponent") // tables, read and never compared
record FuseForms(
        String words,
        FuseSeries series,
        double[] earlyMultiple,
        double[] earlyS,
        double[] lateMultiple,
        double[] lateS,
        String source) {

    /** Least current, over the rating, that a fuse holds for good: 100 hours at 110 %. */
    private static final double HUNDRED_HOURS_S = 360_000;

    private static final FuseForms BLADE =
            new FuseForms(
                    "blade",
                    FuseSeries.BLADE,
                    new double[] {1.1, 1.35, 1.6, 2, 3.5, 6},
                    new double[] {HUNDRED_HOURS_S, 0.75, 0.25, 0.15, 0.04, 0.02},
                    new double[] {1.35, 1.6, 2, 3.5, 6},
                    new double[] {600, 50, 5, 0.5, 0.1},
                    "ISO 8820-3; all but 160 % and 200 % from memory");

    private static final FuseForms LARGE =
            new FuseForms(
                    "large blade or bolt-down link",
                    FuseSeries.LARGE,
                    new double[] {1, 1.35, 2, 3.5, 6},
                    new double[] {HUNDRED_HOURS_S, 60, 2, 0.2, 0.04},
                    new double[] {1.35, 2, 3.5, 6},
                    new double[] {1800, 50, 7, 1},
                    "ISO 8820-3, a large blade of 40 A; ratings from 100 A up ISO 8820-5, from"
                            + " memory");

    private static final FuseForms CARTRIDGE =
            new FuseForms(
                    "fast cartridge",
                    FuseSeries.CARTRIDGE,
                    new double[] {1.5, 2.75, 4},
                    new double[] {3600, 0.05, 0.01},
                    new double[] {2.1, 2.75, 4, 10},
                    new double[] {1800, 2, 0.3, 0.02},
                    "IEC 60127-2, fast; ratings of the R 10 series (ISO 3)");

    /** The form that a fuse is. */
    static FuseForms of(FuseOpening.Speed speed, double ratingA) {
        return switch (FuseSeries.of(speed, ratingA)) {
            case BLADE -> BLADE;
            case LARGE -> LARGE;
            case CARTRIDGE -> CARTRIDGE;
        };
    }

    /**
     * How early and how late one fuse may open.
     *
     * @param early the first to open
     * @param late the last to open
     */
    record Window(FuseCurve early, FuseCurve late) {}

    /**
     * The window of a fuse like a declared one, of another rating. Where the curve is the usual one
     * of its form, the standard's window; where it is declared, its points with their doubt, their
     * currents in proportion to the rating.
     */
    static Window window(Element.Fuse like, double ratingA) {
        FuseOpening opening = like.opening();
        double declaredA = like.rating().si();
        double tau = opening.timeConstant().si();
        if (isUsual(opening, declaredA)) {
            FuseForms form = of(opening.speed(), declaredA);
            return new Window(
                    curve(form.earlyMultiple, form.earlyS, ratingA, 1, tau),
                    curve(form.lateMultiple, form.lateS, ratingA, 1, tau));
        }
        List<FuseOpening.Point> points = opening.points();
        double[] multiple = new double[points.size()];
        double[] time = new double[points.size()];
        for (int k = 0; k < multiple.length; k++) {
            multiple[k] = points.get(k).current().si() / declaredA;
            time[k] = points.get(k).time().si();
        }
        double doubt = opening.timeDoubt().si();
        Tolerance off = opening.timeDoubt().tolerance();
        return new Window(
                curve(multiple, time, ratingA, Math.max(doubt - off.minus(), LEAST_SHARE), tau),
                curve(multiple, time, ratingA, doubt + off.plus(), tau));
    }

    /** However much doubt is declared, no time falls below this share of itself. */
    private static final double LEAST_SHARE = 0.02;

    private static FuseCurve curve(
            double[] multiple, double[] time, double ratingA, double factor, double tau) {
        return new FuseCurve(
                Arrays.stream(multiple).map(m -> m * ratingA).toArray(),
                Arrays.stream(time).map(t -> t * factor).toArray(),
                tau);
    }

    /** Whether nothing of the curve was declared. */
    static boolean isUsual(FuseOpening opening, double ratingA) {
        List<FuseOpening.Point> usual = FuseOpening.usual(opening.speed(), ratingA).points();
        if (usual.size() != opening.points().size()) {
            return false;
        }
        for (int k = 0; k < usual.size(); k++) {
            if (isOff(usual.get(k).current().si(), opening.points().get(k).current().si())
                    || isOff(usual.get(k).time().si(), opening.points().get(k).time().si())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isOff(double one, double other) {
        return Math.abs(one - other) > 1e-9 * one;
    }
}
