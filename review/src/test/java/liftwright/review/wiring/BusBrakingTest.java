package liftwright.review.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.physics.FastEffects;
import liftwright.plant.Effects;
import liftwright.plant.LeadLoop;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/** What fans of one bus give back together. */
class BusBrakingTest {

    private static final String COAST = "braking: coast";
    private static final String FREEWHEEL = "braking: freewheel";

    private static List<Finding> findings(String example, String... replacements) {
        return BusBraking.findings(Plant.assemble(Sketch.example(example, replacements)));
    }

    @Test
    void coastingFansGiveNothing() {
        for (String name : List.of("mudlark", "curlew", "sandpiper")) {
            assertThat(findings(name)).as(name).isEmpty();
        }
    }

    /** Two fans behind one pole of Mudlark: both rotors into both capacitors. */
    @Test
    void fansOfOneBusThatBrakeIntoAnOpenContactorStop() {
        Finding finding =
                findings("mudlark", COAST, FREEWHEEL).stream()
                        .filter(one -> one.code().equals("bus-brake-open"))
                        .findFirst()
                        .orElseThrow();
        assertThat(finding.severity()).isEqualTo(Severity.STOPS);
        Rig rig = Sketch.example("mudlark");
        Plant plant = Plant.assemble(rig);
        SteadyState full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
        double least = 1;
        for (var trunk : rig.wiring().chains()) {
            double stored = 0;
            double volt = 0;
            int fans = 0;
            for (var branch : rig.wiring().chains()) {
                for (int fan = 0; fan < full.fans(); fan++) {
                    if (branch.from().equals(trunk.to())
                            && branch.to().equals(rig.fans().get(fan).id().text())) {
                        double speed = full.fanSpeedRadps(fan);
                        stored += 110e-6 * speed * speed; // twice the energy
                        volt = Math.max(volt, full.fanTerminalV(fan));
                        fans++;
                    }
                }
            }
            if (fans > 1) {
                least = Math.min(least, fans * 940e-6 * (75.0 * 75 - volt * volt) / stored);
            }
        }
        assertThat(Sketch.si(finding)).isCloseTo(least, within(1e-9));
    }

    @Test
    void thePacksTakeUpWhatTheyCan() {
        Finding finding =
                findings("curlew", COAST, FREEWHEEL).stream()
                        .filter(one -> one.code().equals("bus-brake-rise"))
                        .findFirst()
                        .orElseThrow();
        assertThat(finding.sentence().toString()).contains("2 fans");
        assertThat(Sketch.si(finding)).isGreaterThan(50).isLessThan(75);
    }

    /**
     * Rotors braked by controllers at random duties that keep their current limit, with the pack
     * and the bus's capacitors, in small steps: never above the bound.
     */
    @Test
    void aRunInTimeNeverExceedsTheBound() {
        double[] nearest = {0};
        Seeded.check(
                60,
                random -> {
                    int fans = random.nextInt(1, 5);
                    double sourceV = random.nextDouble(20, 100);
                    double ohm = random.nextDouble(0.005, 0.1);
                    double limitA = random.nextDouble(20, 300);
                    double motorOhm = random.nextDouble(0.01, 0.06);
                    double emf = sourceV * random.nextDouble(0.5, 0.98);
                    double bound =
                            FastEffects.fedBackV(
                                    sourceV,
                                    ohm,
                                    fans * FastEffects.mostBrakingW(emf, motorOhm, limitA));
                    double farad = 1e-3 * fans;
                    double volt = sourceV;
                    double speed = 1; // share of the speed before
                    double step = 0.02 * ohm * farad;
                    double brakeA = Math.min(emf / (2 * motorOhm), limitA);
                    double most = 0;
                    for (int k = 0; k < 4000; k++) {
                        double own = emf * speed;
                        double ampere =
                                Math.min(own / (2 * motorOhm), brakeA * random.nextDouble(0.9, 1));
                        double power = fans * ampere * (own - motorOhm * ampere);
                        volt += step / farad * (power / volt - (volt - sourceV) / ohm);
                        speed *= 1 - 1e-5;
                        most = Math.max(most, volt);
                    }
                    assertThat(most).isLessThanOrEqualTo(bound * (1 + 1e-9));
                    nearest[0] = Math.max(nearest[0], (most - sourceV) / (bound - sourceV));
                });
        assertThat(nearest[0]).as("the bound is not idle").isGreaterThan(0.9);
    }

    @Test
    void aLoopWithoutPacksDoesNotExist() {
        Plant plant = Plant.assemble(Sketch.example("curlew"));
        SteadyState full = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                full);
        List<LeadLoop> loops = plant.cut(plant.parameters().nominal(), full);
        assertThat(loops).hasSize(4).allMatch(loop -> loop.fans().size() == 2);
    }
}
