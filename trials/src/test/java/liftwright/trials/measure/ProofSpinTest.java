package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Reading;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

/** A fan above its top speed, against hand calculation from the records. */
class ProofSpinTest {

    @Test
    void piecesAndVoltageAreThoseByHand() {
        int[] seen = {0, 0};
        Seeded.check(
                100,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Measured card = Made.card(rig, CardKind.PROOF_SPIN);
                    Map<String, Reading> read = Made.readings(card);
                    Section.Table pieces = Made.table(card, "proof-spin-pieces");
                    for (FanType type : rig.fanTypes()) {
                        Optional<Fan> fan =
                                rig.fans().stream()
                                        .filter(one -> one.type().equals(type))
                                        .findFirst();
                        if (fan.isEmpty() || type.rotor().topSpeed().isEmpty()) {
                            continue;
                        }
                        double radps = 1.05 * type.rotor().topSpeed().get().si();
                        blade(pieces, type, radps);
                        third(pieces, type, radps);
                        seen[0]++;
                        Set<String> packs = ThrustTest.nearest(rig, fan.get());
                        if (packs.size() == 1) {
                            volts(rig, fan.get(), packs.iterator().next(), radps, read);
                            seen[1]++;
                        }
                    }
                });
        assertThat(seen[0]).isGreaterThan(100);
        assertThat(seen[1]).isGreaterThan(50);
    }

    private static List<Value> row(Section.Table table, String what) {
        return table.rows().stream()
                .filter(row -> row.getFirst().equals(Value.words("measuring-what", what)))
                .findFirst()
                .orElseThrow();
    }

    private static void blade(Section.Table pieces, FanType type, double radps) {
        double kg = type.rotor().bladeMass().orElseThrow().si();
        double r = type.rotor().bladeCentre().orElseThrow().si();
        List<Value> row = row(pieces, type.name() + ", a blade");
        close(Made.amount(row.get(1)), kg);
        close(Made.amount(row.get(2)), radps * r);
        close(Made.amount(row.get(3)), kg * radps * radps * r * r / 2);
        close(Made.amount(row.get(4)), kg * r * radps * radps);
    }

    /** Energy of a third: at most a third of what the rotor stores. */
    private static void third(Section.Table pieces, FanType type, double radps) {
        double inertia = type.rotor().inertia().orElseThrow().si();
        List<Value> row = row(pieces, type.name() + ", a third of the rotor");
        close(Made.amount(row.get(1)), type.rotor().mass().orElseThrow().si() / 3);
        close(Made.amount(row.get(3)), inertia * radps * radps / 2 / 3);
    }

    private static void volts(
            Rig rig, Fan fan, String pack, double radps, Map<String, Reading> read) {
        Pack feeding =
                rig.packs().stream()
                        .filter(one -> one.id().text().equals(pack))
                        .findFirst()
                        .orElseThrow();
        var bench = new ThrustTest.Bench(rig, fan, feeding);
        double amp = bench.noLoad + bench.torque * bench.kv * radps * radps;
        double volt = amp * bench.ohm + radps / bench.kv;
        String name = fan.type().name();
        close(
                Made.of(read, name + ", voltage at the controller, full throttle").expectedSi(),
                volt);
        close(
                Made.of(read, name + ", current of the supply").expectedSi(),
                amp + bench.fixed / volt);
    }

    private static void close(double told, double byHand) {
        assertThat(told).isCloseTo(byHand, within(1e-9 * byHand));
    }

    @Test
    void gradesOfBalanceShakeAsByHand() {
        // 0.24 kg at 30000 rpm: G2.5 lets its centre lie 2.5 mm/s / 3141.6 rad/s = 0.796 µm off.
        double offM = 0.0025 / (30000 * Math.PI / 30);
        double byHand = 0.24 * offM * Math.pow(30000 * Math.PI / 30, 2);
        assertThat(ProofSpinCard.unbalanceN(0.24, 0.0025, 30000 * Math.PI / 30))
                .isCloseTo(byHand, within(1e-12));
        assertThat(byHand).isCloseTo(1.885, within(0.0005));
        assertThat(Made.card(TrialExamples.rig("curlew"), CardKind.PROOF_SPIN).blocks().toString())
                .contains("si=" + ProofSpinCard.unbalanceN(0.24, 0.0025, 30000 * Math.PI / 30));
    }

    @Test
    void theThrottleForASpeedGivesThatSpeed() {
        int[] seen = {0};
        Seeded.check(
                60,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Asked asked =
                            new Asked(
                                    rig,
                                    Made.planned(CardKind.PROOF_SPIN),
                                    Optional.empty(),
                                    1,
                                    1,
                                    Work.quiet());
                    Fan fan = rig.fans().getFirst();
                    Doubts doubts = new Doubts("proof-spin");
                    Optional<OneFan> one = OneFan.declare(asked, fan.type(), doubts);
                    Set<String> packs = ThrustTest.nearest(rig, fan);
                    if (one.isEmpty() || packs.size() != 1) {
                        return;
                    }
                    OneFan.Bench bench = one.get().bench();
                    bench.load(doubts.rows().table().nominal());
                    Pack pack =
                            rig.packs().stream()
                                    .filter(p -> packs.contains(p.id().text()))
                                    .findFirst()
                                    .orElseThrow();
                    var referee = new ThrustTest.Bench(rig, fan, pack);
                    double top = referee.at(1)[2];
                    double duty = ProofSpinCard.throttle(bench, 0.8 * top).orElseThrow();
                    assertThat(referee.at(duty)[2]).isCloseTo(0.8 * top, within(1e-7 * top));
                    assertThat(ProofSpinCard.throttle(bench, 1.01 * top)).isEmpty();
                    seen[0]++;
                });
        assertThat(seen[0]).isGreaterThan(30);
    }
}
