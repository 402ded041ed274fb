package liftwright.trials.programme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import liftwright.plant.Plant;
import liftwright.rig.Control;
import liftwright.rig.Fan;
import liftwright.rig.LimitName;
import liftwright.rig.PartId;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Run;
import liftwright.trials.TrialExamples;
import org.junit.jupiter.api.Test;

final class ProgrammeTest {

    private static final int RIGS = 250;

    /** Cards that can be passed one after the other, were one of them never to be had. */
    private static Set<CardId> reachedWithout(List<Planned> cards, CardId lost) {
        Set<CardId> passed = new HashSet<>();
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Planned card : cards) {
                boolean open =
                        card.needs().stream()
                                .allMatch(group -> group.stream().anyMatch(passed::contains));
                grows |= open && !card.id().equals(lost) && passed.add(card.id());
            }
        }
        return passed;
    }

    private static boolean isUnavoidable(Programme programme, CardId first, CardId then) {
        assertThat(programme.card(first)).as("%s", first).isPresent();
        assertThat(programme.card(then)).as("%s", then).isPresent();
        return !reachedWithout(programme.cards(), first).contains(then);
    }

    private static CardId of(CardKind kind, String subject) {
        return new CardId(kind, subject);
    }

    @Test
    void everyCardCanBeReached() {
        Seeded.check(
                RIGS,
                random -> {
                    Programme programme = Programme.of(RandomTrialRig.rig(random));
                    Set<CardId> all =
                            programme.cards().stream().map(Planned::id).collect(Collectors.toSet());
                    assertThat(all).hasSameSizeAs(programme.cards());
                    // Nothing is lost, so that a ring or a need that is not there leaves some out.
                    assertThat(reachedWithout(programme.cards(), of(CardKind.MASS, "nothing")))
                            .isEqualTo(all);
                });
    }

    @Test
    void everyFanRunsAloneThenInItsPodThenWithAll() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    CardId all = CardId.of(CardKind.ALL_FANS);
                    CardId hangs = programme.ofKind(CardKind.HANGING).getFirst().id();
                    for (Fan fan : rig.fans()) {
                        CardId pod = of(CardKind.POD, fan.mount().name());
                        for (CardKind kind :
                                List.of(
                                        CardKind.FIRST_SPIN,
                                        CardKind.PROOF_SPIN,
                                        CardKind.THRUST,
                                        CardKind.LAG)) {
                            CardId alone = of(kind, fan.type().name());
                            assertThat(isUnavoidable(programme, alone, pod))
                                    .as("%s before %s", alone, pod)
                                    .isTrue();
                        }
                        assertThat(runs(programme, pod)).contains(fan.id());
                        assertThat(isUnavoidable(programme, pod, all)).isTrue();
                        assertThat(runs(programme, all)).contains(fan.id());
                        assertThat(isUnavoidable(programme, all, hangs)).isTrue();
                    }
                });
    }

    private static List<PartId> runs(Programme programme, CardId id) {
        return programme.card(id).orElseThrow().run().orElseThrow().fans();
    }

    @Test
    void aBenchHoldsOneFanAndAPodItsOwnAlone() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    for (Planned card : programme.cards()) {
                        card.run()
                                .filter(run -> run.held() == Run.Held.BENCH)
                                .ifPresent(run -> assertThat(run.fans()).hasSize(1));
                    }
                    for (Planned pod : programme.ofKind(CardKind.POD)) {
                        Set<PartId> own =
                                rig.fans().stream()
                                        .filter(
                                                fan ->
                                                        fan.mount()
                                                                .name()
                                                                .equals(pod.id().subject()))
                                        .map(Fan::id)
                                        .collect(Collectors.toSet());
                        assertThat(Set.copyOf(pod.run().orElseThrow().fans())).isEqualTo(own);
                    }
                });
    }

    @Test
    void theKillsAreProvedBeforeAnythingTurns() {
        Seeded.check(
                RIGS,
                random -> {
                    Programme programme = Programme.of(RandomTrialRig.rig(random));
                    CardId kill = CardId.of(CardKind.KILL);
                    CardId killAll = of(CardKind.KILL, Programme.ALL);
                    for (Planned card : programme.cards()) {
                        boolean proof = card.id().kind() == CardKind.KILL;
                        if (card.run().isPresent() && !proof) {
                            assertThat(card.killProof()).as("%s", card.id()).isTrue();
                            assertThat(isUnavoidable(programme, kill, card.id())).isTrue();
                        }
                        if (card.id().kind().rung().compareTo(CardKind.ALL_FANS.rung()) >= 0) {
                            assertThat(isUnavoidable(programme, killAll, card.id())).isTrue();
                        }
                    }
                });
    }

    @Test
    void nothingIsWornBeforeTheSameWasDoneWithDeadMass() {
        int[] worn = {0};
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    for (Planned card : programme.cards()) {
                        if (card.run().map(Run::worn).orElse(false)) {
                            worn[0]++;
                            assertThat(rig.wearer()).isPresent();
                            assertThat(unwornBefore(programme, card)).as("%s", card.id()).isTrue();
                        }
                    }
                });
        assertThat(worn[0]).isGreaterThan(RIGS);
    }

    /** A card on the same restraint, or one that trusts it no less, with nobody in it. */
    private static boolean unwornBefore(Programme programme, Planned card) {
        CardKind like =
                switch (card.id().kind()) {
                    case HANGING, SCALE -> CardKind.HANGING;
                    default -> CardKind.HOP;
                };
        return programme.ofKind(like).stream()
                .filter(one -> !one.run().orElseThrow().worn())
                .anyMatch(one -> isUnavoidable(programme, one.id(), card.id()));
    }

    @Test
    void itHangsBeforeItIsWeighedOnAScaleAndBothBeforeItHops() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    CardId scale = CardId.of(CardKind.SCALE);
                    CardId hop = CardId.of(CardKind.HOP);
                    assertThat(
                                    programme.ofKind(CardKind.HANGING).stream()
                                            .anyMatch(
                                                    one ->
                                                            isUnavoidable(
                                                                    programme, one.id(), scale)))
                            .isTrue();
                    for (Planned hanging : programme.ofKind(CardKind.HANGING)) {
                        assertThat(isUnavoidable(programme, hanging.id(), hop)).isTrue();
                    }
                    assertThat(isUnavoidable(programme, scale, hop)).isTrue();
                    for (Planned card : programme.cards()) {
                        if (card.run()
                                .map(Run::held)
                                .filter(Run.Held.NOTHING::equals)
                                .isPresent()) {
                            assertThat(isUnavoidable(programme, hop, card.id())).isTrue();
                        }
                    }
                });
    }

    /**
     * With five per cent more thrust and five per cent less mass than declared, and where throttle
     * is ordered, with all that the fans can give.
     */
    @Test
    void noStepIsAboveWhatItsRungMayLift() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    double dwell = rig.limits().si(LimitName.DWELL_SHARE);
                    for (Planned card : Programme.of(rig).cards()) {
                        if (card.run().isEmpty()) {
                            continue;
                        }
                        Run run = card.run().get();
                        for (Run.Step step : run.steps()) {
                            assertThat(step.riseS()).isPositive();
                            assertThat(step.holdS()).isPositive();
                            if (held(run)) {
                                assertThat(run.worn()).as("%s", card.id()).isFalse();
                                continue;
                            }
                            double most = 1.05 / 0.95 * thrustOverWeight(rig, step);
                            switch (card.id().kind()) {
                                case HANGING -> assertThat(most).as("%s", card).isLessThan(1);
                                case SCALE ->
                                        assertThat(most)
                                                .as("%s", card)
                                                .isLessThanOrEqualTo(run.worn() ? dwell : 1);
                                case HOP, FREE_HOVER, MODULE_HOLD, MODULE_CROSS, TO_WEARER ->
                                        assertThat(most).as("%s", card).isLessThan(1.15);
                                default -> assertThat(run.worn()).as("%s", card.id()).isFalse();
                            }
                        }
                    }
                });
    }

    /** What is bolted down may push as it can. */
    private static boolean held(Run run) {
        return run.held() == Run.Held.BENCH || run.held() == Run.Held.STAND;
    }

    private static double thrustOverWeight(Rig rig, Run.Step step) {
        return switch (step.level()) {
            case Run.Level.OfWeight(double share) -> share;
            case Run.Level.Throttle(double share) -> {
                assertThat(share).isBetween(0.0, 1.0);
                yield share == 0 ? 0 : greatest(rig);
            }
        };
    }

    private static double greatest(Rig rig) {
        Plant plant = Plant.assemble(rig);
        double[] p = plant.parameters().nominal();
        double all =
                plant.fullThrust().at(p).orElseThrow().stream()
                        .mapToDouble(fan -> fan.thrustN())
                        .sum();
        return all / (9.80665 * plant.massKg(p));
    }

    /** Which packs can feed a fan, by joining the ends of wires; another way than the product's. */
    @Test
    void aPodRestsOnAllThatFeedsIt() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Map<String, Integer> patch = patches(rig);
                    for (Planned pod : Programme.of(rig).ofKind(CardKind.POD)) {
                        Set<String> parts = pod.basis().parts().orElseThrow();
                        for (PartId fan : pod.run().orElseThrow().fans()) {
                            assertThat(parts).contains(fan.text());
                            rig.packs().stream()
                                    .map(pack -> pack.id().text())
                                    .filter(pack -> feeds(rig, pack, fan.text(), patch))
                                    .forEach(pack -> assertThat(parts).contains(pack));
                        }
                    }
                });
    }

    private static boolean feeds(Rig rig, String pack, String fan, Map<String, Integer> patch) {
        return rig.wiring().chains().stream()
                .filter(chain -> chain.to().equals(fan) || chain.from().equals(fan))
                .map(chain -> chain.to().equals(fan) ? chain.from() : chain.to())
                .anyMatch(
                        end ->
                                end.equals(pack)
                                        || (patch.containsKey(end)
                                                && patch.get(end).equals(patch.get(pack))));
    }

    /** Number of the patch of wires that every node but the fans is in. */
    private static Map<String, Integer> patches(Rig rig) {
        Set<String> fans =
                rig.fans().stream().map(fan -> fan.id().text()).collect(Collectors.toSet());
        Map<String, Integer> patch = new HashMap<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            for (String end : List.of(chain.from(), chain.to())) {
                if (!fans.contains(end)) {
                    patch.putIfAbsent(end, patch.size());
                }
            }
        }
        for (int round = 0; round < rig.wiring().chains().size(); round++) {
            for (Wiring.Chain chain : rig.wiring().chains()) {
                Integer one = patch.get(chain.from());
                Integer other = patch.get(chain.to());
                if (one != null && other != null) {
                    patch.put(chain.from(), Math.min(one, other));
                    patch.put(chain.to(), Math.min(one, other));
                }
            }
        }
        return patch;
    }

    @Test
    void aModuleComesToItsWearerLastAndOnlyWithAComputer() {
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    boolean alone =
                            rig.wearer().isEmpty()
                                    && rig.control().kind() == Control.Kind.FLIGHT_COMPUTER;
                    CardId comes = CardId.of(CardKind.TO_WEARER);
                    assertThat(programme.card(comes).isPresent()).isEqualTo(alone);
                    if (alone) {
                        CardId hold = CardId.of(CardKind.MODULE_HOLD);
                        CardId cross = CardId.of(CardKind.MODULE_CROSS);
                        assertThat(isUnavoidable(programme, hold, cross)).isTrue();
                        assertThat(isUnavoidable(programme, cross, comes)).isTrue();
                    }
                    assertThat(programme.card(CardId.of(CardKind.FREE_HOVER)).isPresent())
                            .isEqualTo(rig.wearer().isPresent());
                });
    }

    @Test
    void whatIsNotDeclaredIsPlannedAndToldOfMudlark() {
        Rig mudlark = TrialExamples.rig("mudlark");
        Programme programme = Programme.of(mudlark);
        assertThat(paths(mudlark, programme, CardId.of(CardKind.ALL_FANS))).isEmpty();
        assertThat(paths(mudlark, programme, CardId.of(CardKind.HANGING))).isEmpty();
        assertThat(paths(mudlark, programme, CardId.of(CardKind.HOP))).isEmpty();
        assertThat(paths(mudlark, programme, CardId.of(CardKind.FREE_HOVER)))
                .containsExactly("demands/thrust to weight");
        assertThat(paths(mudlark, programme, CardId.of(CardKind.MASS))).isEmpty();
    }

    /**
     * Whatever a rig lacks of stand, tether and scale is told on the cards that need it, and there
     * alone.
     */
    @Test
    void whatHoldsNothingIsToldWhereItIsNeeded() {
        int[] stands = {0};
        int[] tethers = {0};
        Seeded.check(
                RIGS,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    for (Planned card : Programme.of(rig).cards()) {
                        List<String> missing =
                                Missing.of(rig, card).stream()
                                        .map(one -> one.at().toString())
                                        .toList();
                        Run.Held held = card.run().map(Run::held).orElse(Run.Held.NOTHING);
                        boolean stand = held == Run.Held.STAND && rig.restraint().stand().isEmpty();
                        boolean tether =
                                held == Run.Held.TETHER && rig.restraint().tether().isEmpty();
                        assertThat(missing.contains("restraint/stand")).isEqualTo(stand);
                        assertThat(missing.contains("restraint/tether")).isEqualTo(tether);
                        assertThat(missing.contains("restraint/platform"))
                                .isEqualTo(
                                        held == Run.Held.SCALE
                                                && rig.restraint().platform().isEmpty());
                        stands[0] += stand ? 1 : 0;
                        tethers[0] += tether ? 1 : 0;
                    }
                });
        assertThat(stands[0]).isPositive();
        assertThat(tethers[0]).isPositive();
    }

    @Test
    void whatIsNotDeclaredIsPlannedAndToldOfSandpiper() {
        Rig sandpiper = TrialExamples.rig("sandpiper");
        Programme programme = Programme.of(sandpiper);
        assertThat(paths(sandpiper, programme, of(CardKind.FIRST_SPIN, "F460")))
                .containsExactly("wiring/kills");
        assertThat(paths(sandpiper, programme, CardId.of(CardKind.ALL_FANS)))
                .containsExactly("wiring/kills");
        assertThat(paths(sandpiper, programme, CardId.of(CardKind.HANGING)))
                .containsExactly("wiring/kills", "restraint/tether");
    }

    private static List<String> paths(Rig rig, Programme programme, CardId id) {
        return Missing.of(rig, programme.card(id).orElseThrow()).stream()
                .map(missing -> missing.at().toString())
                .toList();
    }

    @Test
    void aProgrammeInTheWrongOrderIsNone() {
        Programme right = Programme.of(TrialExamples.rig("curlew"));
        List<Planned> turned = right.cards().reversed();
        assertThatThrownBy(() -> new Programme(right.rig(), turned))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
