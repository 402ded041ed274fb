package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.physics.Air;
import liftwright.physics.AircraftWire;
import liftwright.physics.SurfaceExchange;
import liftwright.physics.WireHeat;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.rig.Covering;
import liftwright.rig.Element;
import liftwright.rig.Insulation;
import liftwright.rig.PartId;
import liftwright.rig.RigPath;
import liftwright.rig.book.PartsBook;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** When a current harms a wire. */
class WireHarmTest {

    static Element.Run run(int gauge, Insulation material, double wallM, double classC) {
        return new Element.Run(
                new PartId("run"),
                RigPath.of("wiring", "run"),
                gauge,
                1,
                Sketch.si(1),
                new Covering(
                        material,
                        true,
                        Quantity.exact(wallM, Dimension.NONE),
                        1,
                        Quantity.exact(0, Dimension.NONE),
                        Quantity.exact(classC + 273.15, Dimension.NONE)));
    }

    /**
     * Faster than heat leaves the copper: I² t = ∫ C/R dT between the two temperatures, with the
     * copper and the resistance of the table, by K² S² of IEC 60949 brought to that resistance.
     */
    @Test
    void fastOverloadsMeetTheAdiabaticLaw() {
        for (int gauge : new int[] {16, 12, 8, 4}) {
            Element.Run run = run(gauge, Insulation.XLPE, 0.8e-3, 90);
            WireHarm wire = new WireHarm(run, gauge, 293.15, Air.SEA_LEVEL_PA, 20);
            AircraftWire row = AircraftWire.of(gauge);
            double mm2 = row.areaM2() * 1e6;
            double withstand = 226 * mm2 * Math.sqrt(Math.log((250 + 234.5) / (20 + 234.5)));
            double strand = row.ohmpm() / (1.7241e-8 / row.areaM2());
            double a2s = withstand * withstand / strand;
            double ampere = Math.sqrt(a2s / 0.002);
            var course = wire.new Course(0);
            assertThat(course.carry(ampere, 1)).isTrue();
            assertThat(course.timeS())
                    .as("%d AWG, %.0f A", gauge, ampere)
                    .isBetween(0.002 * 0.985, 0.002 * 1.08); // heat that enters the insulation
        }
    }

    /** The greatest current that does no harm is the one at which the wire rests at its limit. */
    @Test
    void steadyCurrentsAgreeWithTheWireAtRest() {
        Seeded.check(
                16,
                random -> {
                    int gauge = List.of(AircraftWire.values()).get(random.nextInt(17)).gauge();
                    Insulation material = List.of(Insulation.values()).get(random.nextInt(6));
                    double wall = random.nextDouble(0.3e-3, 1.5e-3);
                    Element.Run run = run(gauge, material, wall, random.nextDouble(80, 200));
                    WireHarm wire = new WireHarm(run, gauge, 293.15, Air.SEA_LEVEL_PA, 20);
                    var book = PartsBook.insulation(material);
                    WireHeat heat =
                            WireHeat.of(
                                    AircraftWire.of(gauge).areaM2(),
                                    wall,
                                    book.conductivityWpmK(),
                                    book.heatJpm3K(),
                                    1);
                    assertThat(restK(heat, gauge, wire.steadyA()))
                            .isCloseTo(wire.limitK(), within(0.03));
                    var below = wire.new Course(0);
                    assertThat(below.carry(0.99 * wire.steadyA(), 4 * 3600)).isFalse();
                    assertThat(below.conductorK())
                            .isCloseTo(restK(heat, gauge, 0.99 * wire.steadyA()), within(0.2));
                    assertThat(wire.new Course(0).carry(1.05 * wire.steadyA(), 4 * 3600)).isTrue();
                });
    }

    /** Heat made equals heat given, found by trial of surfaces a hundredth of a kelvin apart. */
    private static double restK(WireHeat heat, int gauge, double ampere) {
        for (double surface = 293.15; ; surface += 0.01) {
            double out =
                    SurfaceExchange.wireWpmK(
                                    heat.outerM(), surface, 293.15, Air.SEA_LEVEL_PA, 0, 0.9)
                            * (surface - 293.15);
            double conductor = surface + out / heat.wallWpmK();
            double factor = 1 + 0.00393 * (conductor - 293.15);
            if (out >= ampere * ampere * AircraftWire.of(gauge).ohmpm() * factor) {
                return conductor;
            }
        }
    }

    /** Short of the short-circuit temperature a wire bears more than its limit for 5 s. */
    @Test
    void aShortPassageAboveTheLimitIsBorne() {
        Element.Run run = run(10, Insulation.SILICONE, 1e-3, 180);
        WireHarm wire = new WireHarm(run, 10, 293.15, Air.SEA_LEVEL_PA, 20);
        double ampere = 3 * wire.steadyA();
        var course = wire.new Course(0);
        double step = 0.05;
        double above = 0;
        boolean harmed = false;
        while (!harmed && above <= 6) {
            harmed = course.carry(ampere, step);
            above += course.conductorK() > wire.limitK() ? step : 0;
            assertThat(course.conductorK()).isLessThan(wire.shortK() + 3);
        }
        assertThat(harmed).isTrue();
        assertThat(above > 4.9 || course.conductorK() >= wire.shortK()).isTrue();
    }
}
