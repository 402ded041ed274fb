package liftwright.trials.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.plant.hold.FanAlone;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.TrialExamples;
import liftwright.trials.programme.Programme;
import org.junit.jupiter.api.Test;

final class CardLoadsTest {

    /** The whole rig with all other fans at rest, where the card takes them away. */
    private static List<FanAlone> alone(Rig rig) {
        Plant plant = Plant.assemble(rig);
        return plant.fullThrust().at(plant.parameters().nominal()).orElseThrow();
    }

    @Test
    void aBenchBearsTwiceWhatAFanAloneGives() {
        int[] seen = {0};
        Seeded.check(
                30,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    double factor = rig.limits().si(LimitName.RESTRAINT_FACTOR);
                    List<FanAlone> alone = alone(rig);
                    for (Planned card : Programme.of(rig).ofKind(CardKind.THRUST)) {
                        var fan = card.run().orElseThrow().fans().getFirst();
                        double thrustN =
                                alone.stream()
                                        .filter(one -> one.id().equals(fan))
                                        .findFirst()
                                        .orElseThrow()
                                        .thrustN();
                        List<Value> row = row(Printed.of(rig, card.id()), "bench holds its thrust");
                        // Controllers at rest draw a few watts from a shared pack.
                        assertThat(si(row.get(2))).isCloseTo(thrustN, within(2e-3 * thrustN));
                        assertThat(si(row.get(4)))
                                .isCloseTo(factor * thrustN, within(2e-3 * factor * thrustN));
                        seen[0]++;
                    }
                });
        assertThat(seen[0]).isGreaterThanOrEqualTo(30);
    }

    @Test
    void aRotorThatLostABladeShakesItsSeat() {
        Rig rig = TrialExamples.rig("curlew");
        CardId id = new CardId(CardKind.FIRST_SPIN, "F140");
        // m r Ω² of 6 g at 48 mm (as declared); Ω from the thrust, which goes with its square,
        // and the declared point 92 N at 26 000 rpm in air of 1.225 kg/m³.
        double thrustN = alone(rig).getFirst().thrustN();
        double load = si(row(Printed.of(rig, id), "lost a blade").get(2));
        double omega = Math.sqrt(load / (0.006 * 0.048));
        double declared = 26000 * 2 * Math.PI / 60;
        // Grille and installation lower the thrust, so that the speed is above what thrust alone
        // says.
        assertThat(omega).isGreaterThan(declared * Math.sqrt(thrustN / 92 * 1.225 / 1.24));
        assertThat(omega).isLessThan(1.1 * declared * Math.sqrt(thrustN / 92 * 1.225 / 1.24));
    }

    @Test
    void whatIsNotDeclaredStillHasALoad() {
        int[] seen = {0};
        Seeded.check(
                30,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    if (rig.restraint().stand().isPresent()) {
                        return;
                    }
                    seen[0]++;
                    double up = 0;
                    double forward = 0;
                    double right = 0;
                    for (FanAlone fan : alone(rig)) {
                        up -= fan.thrustN() * fan.direction().z();
                        forward += fan.thrustN() * fan.direction().x();
                        right += fan.thrustN() * fan.direction().y();
                    }
                    double sum = Math.sqrt(up * up + forward * forward + right * right);
                    Printed printed = Printed.of(rig, CardId.of(CardKind.ALL_FANS));
                    assertThat(si(row(printed, "holds them down").get(2)))
                            .isCloseTo(sum, within(1e-6 * sum));
                });
        assertThat(seen[0]).isPositive();
    }

    /** The stand of Sandpiper against sums by hand: four fans up, weight and bolts down. */
    @Test
    void aDeclaredStandIsHeldAgainstTheFansThatRun() {
        Rig rig = TrialExamples.rig("sandpiper");
        Section.Table loads =
                Printed.of(rig, CardId.of(CardKind.ALL_FANS)).table("loads").orElseThrow();
        assertThat(loads.rows()).isNotEmpty();
        double up = 0;
        for (FanAlone fan : alone(rig)) {
            up -= fan.thrustN() * fan.direction().z();
        }
        Plant plant = Plant.assemble(rig);
        double weight = 9.80665 * (60 + plant.massKg(plant.parameters().nominal()));
        // A bolt is pulled by no more than a quarter of all that lifts, and by no less than what
        // is left of it above the weight.
        double pulled = si(row(loads, "a bolt is pulled").get(2));
        assertThat(pulled).isLessThanOrEqualTo(up).isGreaterThan(0);
        assertThat(4 * pulled).isGreaterThan(up - weight);
    }

    private static List<Value> row(Printed printed, String hold) {
        return row(printed.table("loads").orElseThrow(), hold);
    }

    private static List<Value> row(Section.Table table, String hold) {
        return table.rows().stream()
                .filter(row -> Printed.words(row.getFirst()).contains(hold))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + hold + " in " + table));
    }

    private static double si(Value value) {
        return Printed.amount(value).findFirst().orElseThrow();
    }
}
