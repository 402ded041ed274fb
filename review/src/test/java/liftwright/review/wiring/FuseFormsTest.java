package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import liftwright.physics.Conductor;
import liftwright.physics.FuseCurve;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Element;
import liftwright.rig.FuseOpening;
import liftwright.rig.FuseOpening.Speed;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** Windows of the standards, as data sheets print them. */
class FuseFormsTest {

    /** At its first point itself a curve may as well never open. */
    private static final double ABOVE = 1 + 1e-9;

    private static Element.Fuse fuse(FuseOpening opening, double ratingA) {
        Element.Fuse plain =
                new Element.Fuse(
                        new PartId("f"),
                        RigPath.of("wiring", "f"),
                        Sketch.si(ratingA),
                        Sketch.si(1e-3),
                        Optional.empty(),
                        Optional.empty());
        return new Element.Fuse(
                plain.id(),
                plain.declaredAt(),
                plain.rating(),
                plain.resistance(),
                plain.breaks(),
                plain.voltage(),
                opening,
                plain.heatCapacity());
    }

    private static FuseForms.Window window(Speed speed, double ratingA) {
        return FuseForms.window(fuse(FuseOpening.usual(speed, ratingA), ratingA), ratingA);
    }

    private static void opens(
            FuseForms.Window window, double ampere, double earliestS, double latestS) {
        assertThat(window.early().timeS(ampere)).isCloseTo(earliestS, within(1e-6 * earliestS));
        assertThat(window.late().timeS(ampere)).isCloseTo(latestS, within(1e-6 * latestS));
    }

    /** ISO 8820-3, blade (ATO size): a data sheet for 160 % and 200 %; the rest from memory. */
    @Test
    void bladeFuses() {
        FuseForms.Window window = window(Speed.FAST, 30);
        opens(window, 1.6 * 30, 0.25, 50);
        opens(window, 2.0 * 30, 0.15, 5);
        opens(window, ABOVE * 1.35 * 30, 0.75, 600);
        assertThat(window.late().timeS(6 * 30)).isCloseTo(0.1, within(1e-9));
        assertThat(window.early().timeS(1.1 * 30)).isGreaterThanOrEqualTo(100 * 3600 * 0.999);
    }

    /** ISO 8820-3, MAXI size, 40 A: a data sheet. */
    @Test
    void largeBladeFuses() {
        FuseForms.Window window = window(Speed.SLOW, 40);
        assertThat(window.early().timeS(40)).isGreaterThanOrEqualTo(360_000 * 0.999);
        opens(window, ABOVE * 1.35 * 40, 60, 1800);
        opens(window, 2 * 40, 2, 50);
        opens(window, 3.5 * 40, 0.2, 7);
        opens(window, 6 * 40, 0.04, 1);
        // 240 A melt it in 0.148 s by its I²t of 8500 A²s: within the window.
        double melts = 8500 / (240.0 * 240);
        assertThat(melts).isCloseTo(0.148, within(5e-4));
        assertThat(melts).isBetween(window.early().timeS(240), window.late().timeS(240));
        // On 10 AWG of the 143 class, (143 × 5.261)² = 5.66e5 A²s: far above what even the
        // latest lets through.
        double bears = Math.pow(143 * 1e6 * Conductor.solidAreaM2(10), 2);
        assertThat(bears).isCloseTo(5.66e5, within(0.005e5));
        assertThat(240.0 * 240 * window.late().timeS(240)).isLessThan(bears / 5);
    }

    /** IEC 60127-2, fast: a table of times. */
    @Test
    void fastCartridges() {
        FuseForms.Window window = window(Speed.VERY_FAST, 10);
        assertThat(window.early().timeS(15)).isGreaterThanOrEqualTo(3600 * 0.999);
        assertThat(window.late().timeS(ABOVE * 21)).isLessThanOrEqualTo(1800 * 1.001);
        opens(window, 27.5, 0.05, 2);
        opens(window, 40, 0.01, 0.3);
        assertThat(window.late().timeS(100)).isLessThanOrEqualTo(0.02 * 1.001);
    }

    /** Whatever the current: early before late, the usual middle between them. */
    @Test
    void theMiddleLiesWithinTheWindow() {
        Seeded.check(
                300,
                random -> {
                    Speed speed = List.of(Speed.values()).get(random.nextInt(3));
                    double rating = random.nextDouble(1, 40);
                    FuseForms.Window window = window(speed, rating);
                    double ampere = rating * random.nextDouble(0.5, 9);
                    FuseOpening usual = FuseOpening.usual(speed, rating);
                    var middle =
                            new FuseCurve(
                                    usual.points().stream()
                                            .mapToDouble(point -> point.current().si())
                                            .toArray(),
                                    usual.points().stream()
                                            .mapToDouble(point -> point.time().si())
                                            .toArray(),
                                    usual.timeConstant().si());
                    assertThat(window.early().timeS(ampere))
                            .isLessThanOrEqualTo(window.late().timeS(ampere));
                    if (ampere > 2.2 * rating) {
                        assertThat(middle.timeS(ampere))
                                .isBetween(
                                        window.early().timeS(ampere) * 0.5,
                                        window.late().timeS(ampere) * 1.01);
                    }
                });
    }

    /** Declared points keep their shape at another rating, with their own doubt to both sides. */
    @Test
    void aDeclaredCurveGoesWithItsRating() {
        Dimension second = new Dimension(0, 0, 1, 0, 0, 0);
        var opening =
                new FuseOpening(
                        Speed.SLOW,
                        List.of(
                                new FuseOpening.Point(Sketch.si(90), Quantity.exact(300, second)),
                                new FuseOpening.Point(Sketch.si(200), Quantity.exact(2, second))),
                        new Quantity(
                                1,
                                Dimension.NONE,
                                new Tolerance(
                                        0.5, 0.25, Tolerance.Form.BOUND, Tolerance.Scope.SHARED)),
                        Quantity.exact(20, second));
        FuseForms.Window window = FuseForms.window(fuse(opening, 60), 120);
        opens(window, ABOVE * 180, 0.75 * 300, 1.5 * 300);
        opens(window, 400, 0.75 * 2, 1.5 * 2);
    }
}
