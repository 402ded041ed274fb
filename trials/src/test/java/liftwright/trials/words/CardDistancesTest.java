package liftwright.trials.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.plant.hold.FanAlone;
import liftwright.rig.FanType;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.TrialExamples;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

/** Distances on cards against flights and jets of the test's own. */
final class CardDistancesTest {

    private static final double G = 9.80665;

    @Test
    void nobodyIsNearerThanAPieceFlies() {
        int beyond = 0;
        for (String name : TrialExamples.NAMES) {
            Rig rig = TrialExamples.rig(name);
            for (Planned card : Programme.of(rig).cards()) {
                // How fast the fans of a pod turn by themselves lies between these two.
                if (card.run().isEmpty() || card.id().kind() == CardKind.POD) {
                    continue;
                }
                Printed printed = Printed.of(rig, card.id());
                double keepM =
                        printed.number("distances", value -> value.field().equals("keep-out"));
                double blade = bladeM(rig, card);
                double third = thirdM(rig, card);
                // Its own referee flies the two pieces of a rotor; a fan as a whole flies less far.
                double flown = Math.max(20, Math.max(blade, third));
                assertThat(keepM)
                        .as("%s of %s: blade %s, third %s", card.id(), name, blade, third)
                        .isCloseTo(flown, within(0.02 * flown));
                beyond += flown > 20 ? 1 : 0;
            }
        }
        assertThat(beyond).as("cards where a piece flies beyond the limit").isPositive();
    }

    @Test
    void aPodKeepsPeopleBetweenWhatOneFanAndAllDo() {
        Rig rig = TrialExamples.rig("mudlark");
        double one = keepM(rig, CardKind.FIRST_SPIN);
        double all =
                Printed.of(rig, CardId.of(CardKind.ALL_FANS))
                        .number("distances", value -> value.field().equals("keep-out"));
        assertThat(one).isGreaterThan(all);
        for (Planned pod : Programme.of(rig).ofKind(CardKind.POD)) {
            double keepM =
                    Printed.of(rig, pod.id())
                            .number("distances", value -> value.field().equals("keep-out"));
            assertThat(keepM).isBetween(all - 1e-9, one + 1e-9);
        }
    }

    /** Speed of the fastest of the fans that run: thrust goes with its square. */
    private static double fastestRadps(Rig rig, Planned card) {
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState all = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), all);
        List<FanAlone> alone = plant.fullThrust().at(p).orElseThrow();
        Set<PartId> running = Set.copyOf(card.run().orElseThrow().fans());
        double fastest = 0;
        for (int k = 0; k < alone.size(); k++) {
            if (running.contains(alone.get(k).id())) {
                boolean single = running.size() == 1;
                double grows = single ? Math.sqrt(alone.get(k).thrustN() / all.fanThrustN(k)) : 1;
                fastest = Math.max(fastest, all.fanSpeedRadps(k) * grows);
            }
        }
        return fastest;
    }

    private static double bladeM(Rig rig, Planned card) {
        FanType.Rotor rotor = rig.fanTypes().getFirst().rotor();
        double kg = rotor.bladeMass().orElseThrow().si();
        double mps = fastestRadps(rig, card) * rotor.bladeCentre().orElseThrow().si();
        return flownM(rig, mps, kg, sphereM2(kg, 2700));
    }

    private static double thirdM(Rig rig, Planned card) {
        FanType.Rotor rotor = rig.fanTypes().getFirst().rotor();
        if (rotor.inertia().isEmpty()) {
            return 0;
        }
        double kg = rotor.mass().orElseThrow().si();
        double mps = fastestRadps(rig, card) * Math.sqrt(rotor.inertia().orElseThrow().si() / kg);
        return flownM(rig, mps, kg / 3, sphereM2(kg / 3, 7850));
    }

    /** Drag area of a sphere of the mass: radius from its volume, coefficient 0.47. */
    private static double sphereM2(double kg, double kgpm3) {
        double radiusM = Math.cbrt(3 * kg / kgpm3 / (4 * Math.PI));
        return 0.47 * Math.PI * radiusM * radiusM;
    }

    /** Farthest over angles, flown in small steps of time. */
    private static double flownM(Rig rig, double mps, double kg, double dragM2) {
        double most = 0;
        for (double degrees = -10; degrees <= 60; degrees += 1) {
            most = Math.max(most, flownM(rig, mps, kg, dragM2, Math.toRadians(degrees)));
        }
        return most;
    }

    private static double flownM(Rig rig, double mps, double kg, double dragM2, double angle) {
        double k = airKgpm3(rig) * dragM2 / (2 * kg);
        double vx = mps * Math.cos(angle);
        double vy = mps * Math.sin(angle);
        double x = 0;
        double y = fromM(rig);
        double dt = 1e-3;
        while (y > 0) {
            // Midpoint rule.
            double v = Math.hypot(vx, vy);
            double mx = vx - dt / 2 * k * v * vx;
            double my = vy - dt / 2 * (G + k * v * vy);
            double m = Math.hypot(mx, my);
            x += dt * mx;
            y += dt * my;
            vx -= dt * k * m * mx;
            vy -= dt * (G + k * m * my);
        }
        return x;
    }

    private static double airKgpm3(Rig rig) {
        Plant plant = Plant.assemble(rig);
        return plant.siteDensityKgpm3(plant.parameters().nominal());
    }

    /** As high as the fans get: told by the review, which has referees of its own. */
    private static double fromM(Rig rig) {
        double demand = rig.demands().height().si();
        if (rig.wearer().isEmpty()) {
            return demand + rig.restraint().stand().map(stand -> stand.height().si()).orElse(1.0);
        }
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        double top = Double.POSITIVE_INFINITY;
        for (int k = 0; k < rig.fans().size(); k++) {
            top = Math.min(top, plant.fanPlace(p, k).z());
        }
        double sole =
                plant.balancing().limbs(p).stream()
                        .mapToDouble(limb -> Math.max(limb.from().z(), limb.to().z()))
                        .max()
                        .orElseThrow();
        return demand + sole - top;
    }

    /** The wall jet of all that runs, by bisection on its law, twice as far as 5.5 m/s. */
    @Test
    void theGroundIsSweptToTwiceWhatTheJetsStir() {
        Rig rig = TrialExamples.rig("curlew");
        CardId id = CardId.of(CardKind.ALL_FANS);
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        SteadyState all = plant.state();
        plant.solve(p, Effects.ALL.withCharge(false), plant.workspace(), all);
        double thrust = 0;
        for (int k = 0; k < all.fans(); k++) {
            thrust += all.fanThrustN(k);
        }
        double area = rig.fans().size() * 0.0128;
        double exitMps = Math.sqrt(thrust / (airKgpm3(rig) * area));
        double diameter = Math.sqrt(4 * area / Math.PI);
        double low = 2 * diameter;
        double high = 1000;
        for (int k = 0; k < 100; k++) {
            double middle = (low + high) / 2;
            if (exitMps * Math.pow(middle / diameter, -1.1) > 5.5) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(
                        Printed.of(rig, id)
                                .number("distances", value -> value.field().equals("swept-radius")))
                .isCloseTo(2 * low, within(1e-6 * low));
    }

    /** N equal sources, each as far away as the crew: + 10 log N − 20 log d. */
    @Test
    void itIsAsLoudAsSoManyFans() {
        Rig rig = TrialExamples.rig("curlew");
        assertThat(noise(rig, new CardId(CardKind.FIRST_SPIN, "F140")))
                .isCloseTo(108 - 20 * Math.log10(10), within(1e-6));
        assertThat(noise(rig, CardId.of(CardKind.ALL_FANS)))
                .isCloseTo(108 + 10 * Math.log10(8) - 20 * Math.log10(10), within(1e-6));
    }

    private static double noise(Rig rig, CardId id) {
        return Printed.of(rig, id).number("noise", value -> value.field().equals("noise-level"));
    }

    /** NIOSH 98-126: eight hours at 85 dBA, half for each 3 dB more; an exchange by hand. */
    @Test
    void earsBearLessTheLouderItIs() {
        Rig rig = TrialExamples.rig("curlew");
        double level = 108 + 10 * Math.log10(8) - 20 * Math.log10(10);
        double hours = 8 / Math.pow(2, (level - 85) / 3);
        String words =
                Printed.of(rig, CardId.of(CardKind.ALL_FANS))
                        .column("noise", "hearing-day")
                        .map(Printed::words)
                        .findFirst()
                        .orElseThrow();
        assertThat(words).endsWith(" min");
        double told = Double.parseDouble(words.replace(" min", ""));
        assertThat(told).isLessThanOrEqualTo(60 * hours).isGreaterThan(0.9 * 60 * hours);
        assertThat(Distances.lasts(3599.9)).isEqualTo("59 min");
        assertThat(Distances.lasts(9202)).isEqualTo("2.5 h");
        assertThat(Distances.lasts(1.164)).isEqualTo("1.1 s");
        assertThat(Distances.lasts(90000)).isEqualTo("the whole day");
    }

    /** A proof spin is faster than full throttle, and its pieces fly farther. */
    @Test
    void aProofSpinKeepsPeopleFartherAway() {
        Rig rig = TrialExamples.rig("mudlark");
        double full = keepM(rig, CardKind.FIRST_SPIN);
        double proof = keepM(rig, CardKind.PROOF_SPIN);
        Planned spin =
                Programme.of(rig).card(new CardId(CardKind.FIRST_SPIN, "F140")).orElseThrow();
        double top = 30000 * 2 * Math.PI / 60;
        double faster = 1.05 * top / fastestRadps(rig, spin);
        assertThat(proof).isCloseTo(full * faster * faster, within(0.01 * proof));
        FanType.Rotor rotor = rig.fanTypes().getFirst().rotor();
        double kg = rotor.mass().orElseThrow().si();
        double mps = 1.05 * top * Math.sqrt(rotor.inertia().orElseThrow().si() / kg);
        double flown = flownM(rig, mps, kg / 3, sphereM2(kg / 3, 7850));
        assertThat(proof).isGreaterThanOrEqualTo(flown);
    }

    private static double keepM(Rig rig, CardKind kind) {
        return Printed.of(rig, new CardId(kind, "F140"))
                .number("distances", value -> value.field().equals("keep-out"));
    }

    @Test
    void theFireReachIsTheReviews() {
        Rig rig = TrialExamples.rig("curlew");
        List<Value> reaches =
                Printed.of(rig, CardId.of(CardKind.HOP)).column("distances", "distance").toList();
        assertThat(reaches).hasSize(4).allMatch(value -> Printed.amount(value).count() == 1);
    }
}
