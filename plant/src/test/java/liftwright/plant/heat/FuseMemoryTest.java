package liftwright.plant.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.random.RandomGenerator;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.plant.RigSketch;
import liftwright.plant.supply.CellDraw;
import liftwright.rig.Element;
import liftwright.rig.FuseOpening;
import liftwright.testkit.Seeded;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/**
 * A fuse in a run at known currents: its published points from cold, what an hour of load leaves
 * behind, and bursts against dθ/dt = (g − θ)/τ integrated by an adaptive method of order 8. The
 * load is a motor that does not turn, so that the duty sets the current.
 */
class FuseMemoryTest {

    private static final double OHM = 0.15;
    private static final double RATED_A = 30;

    /**
     * Longest time over the time constant that is looked at: beyond that θ nears 1 within what a
     * tolerance tells, and the equation is none to judge by.
     */
    private static final double LONGEST = 10;

    /** A run on a stiff pack whose only load is a resistor behind the fuse. */
    private static final class Loaded {
        final Discharge run;
        final int fuse;

        final List<Double> timeS = new ArrayList<>();
        final List<Double> ampere = new ArrayList<>();

        /** Voltage of the resistor at the last moment. */
        double volt = 58;

        Loaded(Element.Fuse element) {
            RigSketch sketch = WarmSketch.sketch();
            sketch.packs.add(
                    RigSketch.pack("p", 1, WarmSketch.cellType("C", WarmSketch.STIFF), 14, 0.95));
            var numbers = WarmSketch.resistor(OHM);
            sketch.fans.add(RigSketch.fan("f", 1, WarmSketch.fanType("R", numbers)));
            sketch.wire(
                    "p.1",
                    "f.1",
                    element,
                    WarmSketch.run(
                            "w",
                            6,
                            2,
                            0.2,
                            liftwright.rig.Insulation.SILICONE,
                            453.15,
                            1e-3,
                            1,
                            0));
            WarmSketch.oneGroup(sketch);
            Plant plant = Plant.assembleHeated(sketch.rig());
            run = plant.discharge();
            run.load(plant.parameters().nominal(), new CellDraw.Expected());
            run.start();
            fuse = HeatedWiresTest.part(plant, HeatPart.Kind.FUSE, "fuse");
        }

        /** Carries about a current, duty² V / R; what flows is written down. */
        void carry(double ampere, double forS) {
            double duty = 0;
            for (int k = 0; k < 3; k++) {
                double switching = duty == 0 ? 0 : 0.08 * (1 - duty) / duty;
                double own = Math.max(0, ampere - 3 / volt) / (1 + switching);
                duty = Math.sqrt(own * OHM / volt);
            }
            run.follow(new Order.Throttle(duty), forS, this::write);
        }

        private void write(Discharge at) {
            timeS.add(at.timeS());
            ampere.add(Math.abs(at.network().chainA(0)));
            if (!at.opened(fuse)) {
                volt = at.network().loadTerminalV(0);
            }
        }
    }

    private static Element.Fuse fuse(FuseOpening.Speed speed, double timeConstantS) {
        return WarmSketch.fuse("fuse", RATED_A, 1e-3, speed, timeConstantS);
    }

    /** Each published point from cold, as the current in fact is. */
    @Test
    void everyPointFromCold() {
        for (FuseOpening.Speed speed : FuseOpening.Speed.values()) {
            Element.Fuse element = fuse(speed, speed.timeConstantS());
            for (FuseOpening.Point point : element.points()) {
                if (point.time().si() > LONGEST * speed.timeConstantS()) {
                    continue;
                }
                Loaded loaded = new Loaded(element);
                loaded.carry(point.current().si(), 1e-6);
                loaded.carry(point.current().si(), 3 * point.time().si());
                double expected = opensS(element, loaded).orElseThrow();
                // Half a per cent in current is a tenth in time where the curve is steep.
                assertThat(loaded.run.openedS(loaded.fuse).orElseThrow())
                        .as(speed + " at " + point.current().si() + " A")
                        .isCloseTo(expected, within(0.005 * expected))
                        .isCloseTo(point.time().si(), within(0.15 * point.time().si()));
            }
        }
    }

    /** Above the last point I² t stays. */
    @Test
    void beyondTheLastPointTheMeltingHeatIsSpent() {
        Element.Fuse element = fuse(FuseOpening.Speed.SLOW, 60);
        FuseOpening.Point last = element.points().getLast();
        double ampere = 1.8 * last.current().si();
        Loaded loaded = new Loaded(element);
        loaded.carry(ampere, 1e-6);
        loaded.carry(ampere, 1);
        double flowed = loaded.ampere.get(2);
        double expected = last.time().si() * Math.pow(last.current().si() / flowed, 2);
        assertThat(loaded.run.openedS(loaded.fuse).orElseThrow())
                .isCloseTo(expected, within(0.01 * expected));
    }

    /**
     * A published time of a hundred time constants opens it as well: what the state lacks to 1 is
     * then less than a number near 1 can tell.
     */
    @Test
    void aTimeOfManyTimeConstantsIsKept() {
        Element.Fuse element = fuse(FuseOpening.Speed.VERY_FAST, 0.5);
        FuseOpening.Point point = element.points().get(1);
        Loaded loaded = new Loaded(element);
        loaded.carry(point.current().si(), 1e-6);
        loaded.carry(point.current().si(), 600);
        // Half a per cent in current is a tenth in time: the curve is steep there.
        assertThat(loaded.run.openedS(loaded.fuse).orElseThrow())
                .isCloseTo(point.time().si(), within(0.2 * point.time().si()));
    }

    /** After an hour at 30 % a burst of twice the rating opens near the time from cold. */
    @Test
    void anHourAtALowLoadHardlyPreheats() {
        for (FuseOpening.Speed speed : List.of(FuseOpening.Speed.FAST, FuseOpening.Speed.SLOW)) {
            Element.Fuse element = fuse(speed, speed.timeConstantS());
            double cold = burstAfter(element, 0);
            double low = burstAfter(element, 0.3 * RATED_A);
            double half = burstAfter(element, 0.5 * RATED_A);
            double whole = burstAfter(element, RATED_A);
            assertThat(low).as(speed.toString()).isBetween(0.88 * cold, cold);
            assertThat(half).as(speed.toString()).isBetween(0.65 * cold, low);
            assertThat(whole).as(speed.toString()).isPositive().isLessThan(half);
        }
    }

    private static double burstAfter(Element.Fuse element, double beforeA) {
        Loaded loaded = new Loaded(element);
        loaded.carry(beforeA, 3600);
        assertThat(loaded.run.opened(loaded.fuse)).isFalse();
        loaded.carry(2 * RATED_A, 1e-6);
        loaded.carry(2 * RATED_A, 600);
        return loaded.run.openedS(loaded.fuse).orElseThrow() - 3600;
    }

    @Test
    void burstsOpenItWhenTheEquationSays() {
        Seeded.check(60, FuseMemoryTest::bursts);
    }

    private static void bursts(RandomGenerator random) {
        FuseOpening.Speed[] speeds = FuseOpening.Speed.values();
        FuseOpening.Speed speed = List.of(speeds).get(random.nextInt(speeds.length));
        Element.Fuse element = fuse(speed, random.nextDouble(2, 120));
        Loaded loaded = new Loaded(element);
        for (int k = 0; k < 40 && !loaded.run.opened(loaded.fuse); k++) {
            boolean burst = k % 2 == 1;
            double asked = RATED_A * (burst ? random.nextDouble(1, 3) : random.nextDouble(0, 0.8));
            loaded.carry(asked, burst ? random.nextDouble(0.1, 10) : random.nextDouble(1, 60));
        }
        OptionalDouble expected = opensS(element, loaded);
        OptionalDouble found = loaded.run.openedS(loaded.fuse);
        assertThat(found.isPresent()).isEqualTo(expected.isPresent());
        if (found.isPresent()) {
            double whenS = expected.getAsDouble();
            assertThat(found.getAsDouble()).isCloseTo(whenS, within(0.005 * whenS));
        }
    }

    /** dθ/dt = (g − θ)/τ with the currents that flowed, straight between the moments. */
    private static OptionalDouble opensS(Element.Fuse element, Loaded loaded) {
        double tau = element.timeConstant().si();
        double theta = 0;
        for (int k = 1; k < loaded.timeS.size(); k++) {
            double near = loaded.timeS.get(k - 1);
            double length = loaded.timeS.get(k) - near;
            if (length <= 0) {
                continue;
            }
            double before = loaded.ampere.get(k - 1);
            double after = loaded.ampere.get(k);
            double from = theta;
            // Where it opened nothing flows any more: until then what flowed before.
            double far = after == 0 ? before : after;
            theta = after(element, tau, from, before, far, length, length);
            if (theta >= 1 - 1e-9 || after == 0) {
                double low = 0;
                double high = after == 0 ? 1.05 * length : length;
                for (int n = 0; n < 40; n++) {
                    double middle = (low + high) / 2;
                    boolean open = after(element, tau, from, before, far, length, middle) >= 1;
                    low = open ? low : middle;
                    high = open ? middle : high;
                }
                return OptionalDouble.of(near + high);
            }
        }
        return OptionalDouble.empty();
    }

    private static double after(
            Element.Fuse element,
            double tau,
            double theta,
            double nearA,
            double farA,
            double length,
            double forS) {
        OrdinaryDifferentialEquation equation =
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 1;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        double ampere = nearA + (farA - nearA) * t / length;
                        return new double[] {(FuseReferee.gain(element, ampere) - y[0]) / tau};
                    }
                };
        if (forS <= 1e-9) {
            return theta;
        }
        return new DormandPrince853Integrator(1e-12, 10, 1e-10, 1e-10)
                .integrate(equation, new ODEState(0, new double[] {theta}), forS)
                .getPrimaryState()[0];
    }
}
