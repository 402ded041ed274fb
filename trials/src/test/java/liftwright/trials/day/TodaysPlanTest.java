package liftwright.trials.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.RandomTrialRig;
import liftwright.trials.Run;
import liftwright.trials.Rung;
import liftwright.trials.day.Reason.Rule;
import liftwright.trials.day.TodaysPlan.Allowed;
import liftwright.trials.day.TodaysPlan.Refused;
import liftwright.trials.programme.Programme;
import liftwright.trials.proof.KillProof;
import liftwright.trials.proof.ProofPath;
import org.junit.jupiter.api.Test;

/**
 * Random days and standings of random rigs. The rules are written a second time here: what is
 * allowed breaks none of them at its turn, and what is refused breaks just those that are told.
 */
class TodaysPlanTest {

    private static final double DEFAULT_WAIT_S = 1800;

    @Test
    void nothingAllowedBreaksARuleAndNothingIsRefusedWithoutOne() {
        Map<Rule, Integer> seen = new EnumMap<>(Rule.class);
        int[] allowed = new int[1];
        Seeded.check(
                400,
                random -> {
                    Rig rig = RandomTrialRig.rig(random);
                    Programme programme = Programme.of(rig);
                    Day day = RandomDay.day(random, rig);
                    List<DayCard> cards = RandomDay.cards(random, programme);
                    Optional<KillProof> proof = RandomDay.proof(random, rig, day.date());
                    OptionalDouble wait =
                            random.nextInt(4) == 0
                                    ? OptionalDouble.empty()
                                    : OptionalDouble.of(random.nextDouble(0, 3000));
                    TodaysPlan plan = TodaysPlan.of(rig, day, cards, proof, RandomDay.DIGEST, wait);
                    new Judge(rig, day, cards, proof, wait.orElse(DEFAULT_WAIT_S)).judge(plan);
                    allowed[0] += plan.allowed().size();
                    plan.refused()
                            .forEach(
                                    one ->
                                            one.reasons()
                                                    .forEach(
                                                            why ->
                                                                    seen.merge(
                                                                            why.rule(),
                                                                            1,
                                                                            Integer::sum)));
                });
        assertThat(seen.keySet()).as(seen.toString()).isEqualTo(EnumSet.allOf(Rule.class));
        assertThat(allowed[0]).isGreaterThan(400);
    }

    /** The rules again, one card after the other in the order of the sheet's answers. */
    private static final class Judge {
        private final Rig rig;
        private final Day day;
        private final List<DayCard> cards;
        private final double waitS;
        private final Set<CardId> done = new HashSet<>();
        private final Map<String, Double> charge = new HashMap<>();
        private boolean kills;
        private double now;
        private double hotEnd = -1e9;

        Judge(Rig rig, Day day, List<DayCard> cards, Optional<KillProof> proof, double waitS) {
            this.rig = rig;
            this.day = day;
            this.cards = cards;
            this.waitS = waitS;
            now = day.start().toSecondOfDay();
            day.packs().forEach((id, pack) -> charge.put(id, pack.charge()));
            for (DayCard card : cards) {
                if (card.passed()) {
                    done.add(card.planned().id());
                }
            }
            kills =
                    proof.isPresent()
                            && proof.get().date().equals(day.date())
                            && proof.get().rigDigest().equals(RandomDay.DIGEST)
                            && proof.get().paths().stream()
                                    .allMatch(path -> path.outcome().label().equals("met"))
                            && !ProofPath.of(rig).isEmpty();
        }

        void judge(TodaysPlan plan) {
            Map<CardId, Allowed> yes = new HashMap<>();
            plan.allowed().forEach(one -> yes.put(one.card().planned().id(), one));
            Map<CardId, Refused> no = new HashMap<>();
            plan.refused().forEach(one -> no.put(one.card().planned().id(), one));
            assertThat(yes.keySet()).noneMatch(no::containsKey);
            List<DayCard> order = order();
            Set<CardId> asked = new HashSet<>();
            order.forEach(card -> asked.add(card.planned().id()));
            Set<CardId> answered = new HashSet<>(yes.keySet());
            answered.addAll(no.keySet());
            assertThat(answered).isEqualTo(asked);
            List<CardId> inOrder = new ArrayList<>();
            for (DayCard card : order) {
                CardId id = card.planned().id();
                Set<Rule> broken = broken(card);
                if (yes.containsKey(id)) {
                    assertThat(broken).as(id + " is allowed").isEmpty();
                    inOrder.add(id);
                    allow(card, yes.get(id));
                } else {
                    Set<Rule> told = EnumSet.noneOf(Rule.class);
                    Objects.requireNonNull(no.get(id))
                            .reasons()
                            .forEach(why -> told.add(why.rule()));
                    assertThat(told).as(id + " is refused").isEqualTo(broken);
                }
            }
            assertThat(plan.allowed().stream().map(one -> one.card().planned().id()).toList())
                    .isEqualTo(inOrder);
        }

        /** The day's kill card, then rung by rung. */
        private List<DayCard> order() {
            List<DayCard> order = new ArrayList<>();
            if (!kills) {
                DayCard last = null;
                for (DayCard card : cards) {
                    if (card.planned().id().kind() == CardKind.KILL && needs(card.planned())) {
                        last = card;
                    }
                }
                if (last != null) {
                    order.add(last);
                }
            }
            for (Rung rung : Rung.values()) {
                for (DayCard card : cards) {
                    if (card.planned().id().kind().rung() == rung
                            && !card.passed()
                            && !order.contains(card)) {
                        order.add(card);
                    }
                }
            }
            return order;
        }

        private boolean needs(Planned card) {
            for (Set<CardId> group : card.needs()) {
                boolean one = false;
                for (CardId id : group) {
                    one |= done.contains(id);
                }
                if (!one) {
                    return false;
                }
            }
            return true;
        }

        private Set<Rule> broken(DayCard card) {
            Set<Rule> broken = EnumSet.noneOf(Rule.class);
            Planned planned = card.planned();
            boolean runs = planned.run().isPresent();
            boolean turns = runs || planned.id().kind().compareTo(CardKind.KILL) >= 0;
            if (turns && (day.unexplained() || day.aborts() > 1)) {
                broken.add(Rule.STOPPED);
            }
            if (!card.closedBy().isEmpty()) {
                broken.add(Rule.CLOSED);
            }
            if (!needs(planned)) {
                broken.add(Rule.NEEDS);
            }
            if (planned.killProof() && !kills) {
                broken.add(Rule.KILLS);
            }
            boolean flies =
                    switch (planned.id().kind()) {
                        case HOP, FREE_HOVER, MODULE_HOLD, MODULE_CROSS, TO_WEARER -> true;
                        default -> false;
                    };
            if (flies && (day.windMps() > 3 || day.gustMps() > 5)) {
                broken.add(Rule.WIND);
            }
            if (!crewed(planned)) {
                broken.add(Rule.PEOPLE);
            }
            if (runs) {
                packs(card, broken);
            }
            double end = end(planned, Math.max(1, runsLeft(card)));
            double crewEnd = Math.min(24 * 3600, day.start().toSecondOfDay() + day.hoursS());
            if (end > crewEnd) {
                broken.add(Rule.HOURS);
            }
            if (turns && end > day.lightUntil().toSecondOfDay()) {
                broken.add(Rule.LIGHT);
            }
            return broken;
        }

        private void packs(DayCard card, Set<Rule> broken) {
            if (card.chargePerRun().isEmpty()) {
                broken.add(Rule.CHARGE);
            }
            card.chargePerRun()
                    .forEach(
                            (id, share) -> {
                                if (share > 0 && !fit(id)) {
                                    broken.add(Rule.PACKS);
                                } else if (share > 0
                                        && Objects.requireNonNull(charge.get(id))
                                                        - rig.demands().reserve().si()
                                                < share * (1 - 1e-9)) {
                                    broken.add(Rule.CHARGE);
                                }
                            });
        }

        private boolean fit(String id) {
            Day.ReadyPack pack = day.packs().get(id);
            return pack != null
                    && pack.spreadV().isPresent()
                    && pack.spreadV().get() <= 0.05
                    && pack.kelvin() >= rig.limits().si(LimitName.CELL_AT_START)
                    && pack.kelvin() <= 273.15 + 45;
        }

        private int runsLeft(DayCard card) {
            int runs = card.planned().repeats();
            if (card.planned().run().isEmpty()) {
                return runs;
            }
            if (card.chargePerRun().isEmpty()) {
                return 0;
            }
            for (Map.Entry<String, Double> one : card.chargePerRun().entrySet()) {
                if (one.getValue() > 0) {
                    double free =
                            charge.getOrDefault(one.getKey(), 0.0) - rig.demands().reserve().si();
                    int own = 0;
                    while (fit(one.getKey())
                            && own < runs
                            && (own + 1) * one.getValue() <= free + 1e-9 * one.getValue()) {
                        own++;
                    }
                    runs = own;
                }
            }
            return runs;
        }

        /** Somebody is there, and every permutation is tried for one that fills the roles. */
        private boolean crewed(Planned card) {
            if (day.people().isEmpty()) {
                return false;
            }
            if (card.run().isEmpty() && card.id().kind().compareTo(CardKind.KILL) < 0) {
                return true;
            }
            boolean worn = card.run().isPresent() && card.run().get().worn();
            Set<String> roles = new HashSet<>();
            rig.wiring()
                    .kills()
                    .forEach(
                            kill ->
                                    kill.heldBy()
                                            .filter(who -> !who.equals("wearer"))
                                            .ifPresent(roles::add));
            if (roles.isEmpty()) {
                roles.add("kill");
            }
            roles.add("fire");
            boolean wearer = worn || card.id().kind() == CardKind.TO_WEARER;
            if (wearer) {
                roles.add("wearer");
            }
            if (!worn) {
                roles.add("throttle");
            }
            if (card.run().isPresent() && card.run().get().held() == Run.Held.TETHER) {
                roles.add("lines");
            }
            return fill(new ArrayList<>(roles), 0, new HashSet<>());
        }

        private boolean fill(List<String> roles, int at, Set<String> busy) {
            if (at == roles.size()) {
                return true;
            }
            for (Map.Entry<String, Set<String>> person : day.people().entrySet()) {
                if (!busy.contains(person.getKey()) && person.getValue().contains(roles.get(at))) {
                    busy.add(person.getKey());
                    if (fill(roles, at + 1, busy)) {
                        return true;
                    }
                    busy.remove(person.getKey());
                }
            }
            return false;
        }

        private boolean hot(Planned card) {
            if (card.run().isEmpty()) {
                return false;
            }
            for (Run.Step step : card.run().get().steps()) {
                if (step.level() instanceof Run.Level.OfWeight
                        || (step.level() instanceof Run.Level.Throttle(double share)
                                && share >= 0.5)) {
                    return true;
                }
            }
            return false;
        }

        private double begin(Planned card) {
            return hot(card) ? Math.max(now, hotEnd + waitS) : now;
        }

        private double end(Planned card, int runs) {
            double runS = 0;
            if (card.run().isPresent()) {
                for (Run.Step step : card.run().get().steps()) {
                    runS += step.riseS() + step.holdS();
                }
            }
            double spaced = runs * runS + (hot(card) ? (runs - 1) * waitS : 0);
            return begin(card) + Math.max(60 * card.minutes(), spaced);
        }

        private void allow(DayCard card, Allowed told) {
            Planned planned = card.planned();
            int runs = runsLeft(card);
            assertThat(told.runs()).isEqualTo(runs).isPositive();
            assertThat(told.beginS()).isEqualTo(begin(planned));
            assertThat(told.pauseS()).isEqualTo(begin(planned) - now);
            assertThat(told.endS()).isEqualTo(end(planned, runs));
            assertThat(new HashSet<>(told.people().values()))
                    .as("each person has one role")
                    .hasSameSizeAs(told.people().keySet());
            told.people().forEach((role, who) -> assertThat(day.people().get(who)).contains(role));
            now = told.endS();
            if (hot(planned)) {
                hotEnd = now;
            }
            card.chargePerRun()
                    .forEach((id, share) -> charge.merge(id, -runs * share, Double::sum));
            if (runs == planned.repeats()) {
                done.add(planned.id());
                kills |= planned.id().kind() == CardKind.KILL;
            }
        }
    }
}
