package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import liftwright.testkit.Seeded;
import liftwright.trials.Planned;
import liftwright.trials.evidence.Pass.Outcome;
import liftwright.trials.evidence.Standing.State;
import org.junit.jupiter.api.Test;

/** What passes are worth on a day. */
class StandingTest {

    private static final Inputs NOW = inputs("14");

    private static Inputs inputs(String series) {
        return new Inputs(
                new TreeMap<>(Map.of("packs/p.1/series", series, "site/humidity", "0.8")));
    }

    private static Planned card(Optional<Integer> ages, int repeats) {
        return Cards.card(Cards.id(0), List.of(), Set.of(), false, Cards.ALL, ages, 10, repeats);
    }

    private static State state(Planned card, LocalDate today, Pass... passes) {
        return Standing.of(List.of(card), List.of(passes), NOW, today).of(card.id());
    }

    @Test
    void aPassAgesOnItsLastDay() {
        Planned card = card(Optional.of(14), 10);
        Pass pass = Cards.pass(1, card, NOW, Cards.DAY, 10);
        LocalDate last = Cards.DAY.plusDays(14);
        assertThat(state(card, last, pass))
                .isEqualTo(new State.Passed(Cards.DAY, Optional.of(last), 10));
        assertThat(state(card, last.plusDays(1), pass))
                .isEqualTo(new State.Expired(Cards.DAY, last));
        Planned forToday = card(Optional.of(0), 10);
        assertThat(state(forToday, Cards.DAY, pass)).isInstanceOf(State.Passed.class);
        assertThat(state(forToday, Cards.DAY.plusDays(1), pass)).isInstanceOf(State.Expired.class);
        assertThat(state(card, Cards.DAY.minusDays(1), pass)).isEqualTo(new State.Never());
    }

    @Test
    void whateverWentWrongAfterItTakesAPassAway() {
        Planned card = card(Optional.empty(), 10);
        Pass pass = Cards.pass(1, card, NOW, Cards.DAY, 10);
        for (Outcome outcome : List.of(Outcome.ABORTED, Outcome.FAILED, Outcome.UNEXPLAINED)) {
            Pass bad = Cards.record(2, card, NOW, Cards.DAY, outcome, 3);
            assertThat(state(card, Cards.DAY, pass, bad))
                    .isEqualTo(new State.Failed(Cards.DAY, outcome));
            assertThat(state(card, Cards.DAY, bad, pass))
                    .as("the order in which they are given does not matter")
                    .isInstanceOf(State.Failed.class);
            Pass again = Cards.pass(3, card, NOW, Cards.DAY, 4);
            assertThat(state(card, Cards.DAY, pass, bad, again))
                    .isEqualTo(new State.Begun(Cards.DAY, 4, 10));
            // On another build it was, and the card is not done again by going back.
            Pass elsewhere = Cards.record(2, card, inputs("12"), Cards.DAY, outcome, 0);
            assertThat(state(card, Cards.DAY, pass, elsewhere)).isInstanceOf(State.Failed.class);
        }
    }

    @Test
    void cleanRunsOfSeveralDaysAddUpOnOneBuildAlone() {
        Planned card = card(Optional.of(14), 10);
        LocalDate later = Cards.DAY.plusDays(5);
        Pass first = Cards.pass(1, card, NOW, Cards.DAY, 6);
        Pass second = Cards.pass(2, card, NOW, later, 4);
        assertThat(state(card, later, first)).isEqualTo(new State.Begun(Cards.DAY, 6, 10));
        assertThat(state(card, later, first, second))
                .isEqualTo(new State.Passed(later, Optional.of(Cards.DAY.plusDays(14)), 10));
        assertThat(state(card, Cards.DAY.plusDays(15), first, second))
                .as("what is left once the first is old")
                .isEqualTo(new State.Begun(later, 4, 10));
        Pass elsewhere = Cards.pass(1, card, inputs("12"), Cards.DAY, 6);
        assertThat(state(card, later, elsewhere, second)).isEqualTo(new State.Begun(later, 4, 10));
        assertThat(state(card, later, elsewhere))
                .isEqualTo(
                        new State.Voided(
                                Cards.DAY,
                                List.of(new Inputs.Difference("packs/p.1/series", "12", "14"))));
    }

    /** The same rule from the other end: every stretch of records is tried. */
    @Test
    void statesAreThoseOfASecondReadingOfTheRules() {
        Seeded.check(
                1500,
                random -> {
                    int repeats = 1 + random.nextInt(6);
                    Optional<Integer> ages =
                            random.nextBoolean()
                                    ? Optional.empty()
                                    : Optional.of(random.nextInt(6));
                    Planned card = card(ages, repeats);
                    LocalDate today = Cards.DAY.plusDays(8);
                    var passes = new ArrayList<Pass>();
                    for (int i = random.nextInt(6); i > 0; i--) {
                        Outcome outcome = random.nextInt(5) == 0 ? Outcome.ABORTED : Outcome.PASSED;
                        passes.add(
                                Cards.record(
                                        passes.size() + 1,
                                        card,
                                        random.nextInt(3) == 0 ? inputs("12") : NOW,
                                        Cards.DAY.plusDays(random.nextInt(10)),
                                        outcome,
                                        1 + random.nextInt(4)));
                    }
                    State found = Standing.of(List.of(card), passes, NOW, today).of(card.id());
                    int runs = 0;
                    for (Pass pass : passes) {
                        boolean revoked =
                                passes.stream()
                                        .anyMatch(
                                                other ->
                                                        other.outcome() != Outcome.PASSED
                                                                && (other.on().isAfter(pass.on())
                                                                        || (other.on()
                                                                                        .equals(
                                                                                                pass
                                                                                                        .on())
                                                                                && other.number()
                                                                                        > pass
                                                                                                .number())));
                        boolean old =
                                ages.isPresent() && pass.on().plusDays(ages.get()).isBefore(today);
                        if (pass.outcome() == Outcome.PASSED
                                && !revoked
                                && !old
                                && !pass.on().isAfter(today)
                                && pass.inputs().equals(NOW)) {
                            runs += pass.cleanRuns();
                        }
                    }
                    assertThat(found instanceof State.Passed).isEqualTo(runs >= repeats);
                    assertThat(found instanceof State.Begun).isEqualTo(runs > 0 && runs < repeats);
                    if (found instanceof State.Passed(var _, var until, var _)
                            && until.isPresent()) {
                        assertThat(
                                        Standing.of(List.of(card), passes, NOW, until.get())
                                                .isPassed(card.id()))
                                .isTrue();
                    }
                });
    }

    @Test
    void cleanRunsShowWhatTheyShow() {
        assertThat(CleanRuns.needed(0.9)).isEqualTo(29);
        assertThat(CleanRuns.of(0).reliability()).isZero();
        for (int runs = 1; runs < 60; runs++) {
            // None of n fails: the bound solves R^n = 1 − C.
            assertThat(CleanRuns.of(runs).reliability())
                    .isCloseTo(Math.pow(0.05, 1.0 / runs), within(1e-9));
        }
        assertThat(CleanRuns.of(28).reliability()).isLessThan(0.9);
        assertThat(CleanRuns.of(29).reliability()).isGreaterThanOrEqualTo(0.9);
        assertThat(CleanRuns.of(29).clause()).contains("29 clean runs", "90 %");
    }
}
