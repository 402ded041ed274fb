package liftwright.flight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.flight.Examples;
import liftwright.plant.Plant;
import org.junit.jupiter.api.Test;

/** The modes of a wearer in a harness are those that were asked for. */
class HarnessTest {

    private static final double DT = 0.0005;

    /** Zero crossings of a falling or rising signal, s. */
    private static double periodS(List<Double> signal) {
        List<Double> at = new ArrayList<>();
        for (int k = 1; k < signal.size(); k++) {
            double a = signal.get(k - 1);
            double b = signal.get(k);
            if (a < 0 && b >= 0) {
                at.add(DT * (k - b / (b - a)));
            }
        }
        assertThat(at).hasSizeGreaterThan(3);
        return (at.getLast() - at.getFirst()) / (at.size() - 1);
    }

    private static Airframe mudlark(Give give) {
        Plant plant = Plant.assemble(Examples.rig("mudlark"));
        return new Airframes(plant).of(plant.parameters().nominal(), give);
    }

    /** Lifted by exactly its weight, so that nothing but the modes moves. */
    private static List<Double> rings(Airframe whole, int index, double forS) {
        Airframe body =
                Bodies.with(
                        Bodies.standing(whole, List.of(), whole.ground()),
                        List.of(
                                new Airframe.FanLine(
                                        liftwright.rig.Vec3.ZERO,
                                        liftwright.rig.Vec3.ZERO,
                                        new liftwright.rig.Vec3(0, 0, -1))),
                        whole.loose(),
                        List.of(),
                        Airframe.Drag.NONE);
        Motion motion = new Motion(body, Air.still());
        BodyState state = new BodyState();
        state.rest(0, 0, 50, 0);
        state.y[index] = 0.001;
        motion.begin(state);
        FanLoads loads = new FanLoads(1);
        loads.steady(0, body.massKg() * 9.80665, 0, 0, 0);
        List<Double> signal = new ArrayList<>();
        for (int k = 0; k < forS / DT; k++) {
            motion.step(DT, loads, state);
            signal.add(state.y[index]);
        }
        return signal;
    }

    @Test
    void theWearerBobsAtTheFrequencyAskedFor() {
        for (double hz : new double[] {3, 5.5, 8}) {
            Airframe body = mudlark(new Give(hz, 0, 0.85, 0));
            List<Double> signal = rings(body, BodyState.OWN + 2, 3);
            // Legs along themselves are not quite stiff: 15 Hz of a part of the mass.
            assertThat(1 / periodS(signal)).isCloseTo(hz, within(0.06 * hz));
        }
    }

    @Test
    void theWearerSwaysForeAndAftAtTheFrequencyAskedFor() {
        Airframe body = mudlark(new Give(5, 0, 0.85, 0));
        assertThat(1 / periodS(rings(body, BodyState.OWN, 3))).isCloseTo(5, within(0.5));
    }

    @Test
    void legsSwingAtTheFrequencyAskedForWhereTheTrunkIsHeld() {
        Airframe body = mudlark(new Give(8, 0, 0.85, 0));
        List<Airframe.Loose> masses = new ArrayList<>();
        // All but the leg made so heavy that it stays where it is.
        Airframe.Loose leg = body.loose().get(1);
        masses.add(
                new Airframe.Loose(
                        leg.name(),
                        leg.massKg(),
                        leg.at(),
                        Airframe.FRAME,
                        leg.stiffnessNpm(),
                        leg.dampingNspm()));
        Airframe heavy = Bodies.rigid(1e6, 1e6, 1e6, 1e6);
        Airframe held = Bodies.with(heavy, List.of(), masses, List.of(), Airframe.Drag.NONE);
        assertThat(1 / periodS(rings(held, BodyState.OWN, 6))).isCloseTo(0.85, within(0.001));
    }

    @Test
    void ringsDownAsItsDampingSays() {
        // ln of two amplitudes a period apart: 2 π ζ/√(1 − ζ²).
        Airframe body = mudlark(new Give(3, 0.1, 0.85, 0));
        List<Double> signal = rings(body, BodyState.OWN + 2, 2);
        double first = greatest(signal, 0.2, 0.45);
        double next = greatest(signal, 0.2 + 1.0 / 3, 0.45 + 1.0 / 3);
        double zeta = 0.1;
        assertThat(Math.log(first / next))
                .isCloseTo(2 * Math.PI * zeta / Math.sqrt(1 - zeta * zeta), within(0.08));
    }

    private static double greatest(List<Double> signal, double fromS, double toS) {
        return signal.subList((int) (fromS / DT), (int) (toS / DT)).stream()
                .mapToDouble(Double::doubleValue)
                .max()
                .orElseThrow();
    }

    @Test
    void theWholeKeepsMassCentreAndInertia() {
        Plant plant = Plant.assemble(Examples.rig("mudlark"));
        Airframe body = new Airframes(plant).of(plant.parameters().nominal(), Give.USUAL);
        assertThat(body.massKg()).isCloseTo(plant.mass().massKg(), within(1e-9));
        assertThat(body.inertia().yy()).isCloseTo(plant.mass().inertia().yy(), within(1e-9));
        double worn = body.loose().stream().mapToDouble(Airframe.Loose::massKg).sum();
        double wearer = plant.rig().wearer().orElseThrow().mass().si();
        assertThat(worn).isCloseTo(wearer, within(1e-6));
        assertThat(body.loose()).hasSize(3);
        assertThat(body.loose().get(1).at().y()).isNegative();
        assertThat(body.loose().get(2).at().y()).isPositive();
    }

    @Test
    void standsOnItsSolesWithTheRigOnTheWearer() {
        Airframe whole = mudlark(Give.USUAL).withLines(List.of());
        Motion motion = new Motion(whole, Air.still());
        BodyState state = new BodyState();
        motion.stand(state, 0, 0, 0);
        BodyState first = new BodyState();
        first.set(state);
        FanLoads loads = new FanLoads(whole.fans().size());
        for (int k = 0; k < 3000; k++) {
            motion.step(0.001, loads, state);
        }
        assertThat(motion.feetDown()).isGreaterThanOrEqualTo(4);
        assertThat(motion.groundN()).isCloseTo(whole.massKg() * 9.80665, within(5.0));
        assertThat(state.heightM()).isCloseTo(first.heightM(), within(0.01));
        Optional<Double> soles = whole.soleDepthM();
        assertThat(soles.orElseThrow()).isBetween(0.8, 1.6);
    }
}
