package liftwright.trials.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.testkit.Seeded;
import liftwright.trials.CardId;
import liftwright.trials.Planned;
import liftwright.trials.evidence.Standing.State;
import org.junit.jupiter.api.Test;

/** Whether a gate opens over nothing that has to keep it closed. */
class GateTest {

    private static final List<String> QUESTIONS = List.of("lift", "heat", "failures");

    /** An answer that says no more than a gate may look at. */
    private record Stub(String question, Outcome outcome, List<Severity> severities)
            implements Answer {
        @Override
        public Verdict verdict() {
            return new Verdict(outcome, Sentence.words("a verdict"), Optional.empty(), List.of());
        }

        @Override
        public List<Finding> findings() {
            return severities.stream()
                    .map(s -> Finding.of(s, "a-finding", Sentence.words("It is so."), "why"))
                    .toList();
        }

        @Override
        public List<Section> sections() {
            return List.of();
        }

        @Override
        public Evidence evidence() {
            throw new AssertionError("a gate asks for no evidence");
        }
    }

    private static boolean chance(RandomGenerator random, double share) {
        return random.nextDouble() < share;
    }

    private static State state(RandomGenerator random) {
        var day = Cards.DAY;
        return switch (random.nextInt(14)) {
            case 0 -> new State.Begun(day, 3, 10);
            case 1 ->
                    new State.Voided(
                            day, List.of(new Inputs.Difference("packs/p.1/series", "12", "14")));
            case 2 -> new State.Expired(day, day);
            case 3 -> new State.Failed(day, Pass.Outcome.UNEXPLAINED);
            case 4 -> new State.Never();
            default -> new State.Passed(day, Optional.of(day), 10);
        };
    }

    @Test
    void noGateOpensOverAnythingThatHasToKeepItClosed() {
        int[] open = {0};
        Set<String> closedBy = new HashSet<>();
        Seeded.check(
                6000,
                random -> {
                    var states = new TreeMap<CardId, State>();
                    int many = 2 + random.nextInt(6);
                    for (int i = 0; i < many; i++) {
                        states.put(Cards.id(i), state(random));
                    }
                    var needs = new ArrayList<Set<CardId>>();
                    for (int i = random.nextInt(4); i > 0; i--) {
                        Set<CardId> group = new TreeSet<>();
                        for (int k = random.nextInt(3); k >= 0; k--) {
                            group.add(Cards.id(random.nextInt(many + 1)));
                        }
                        needs.add(group);
                    }
                    Set<String> questions = new TreeSet<>(QUESTIONS);
                    questions.removeIf(_ -> random.nextBoolean());
                    Planned card =
                            Cards.card(
                                    Cards.id(20),
                                    needs,
                                    questions,
                                    random.nextBoolean(),
                                    Cards.ALL,
                                    Optional.empty(),
                                    10,
                                    1);
                    List<String> undeclared = chance(random, 0.1) ? List.of("a stand") : List.of();
                    List<String> unread = chance(random, 0.05) ? List.of("0003.yaml") : List.of();
                    Set<String> declared = new TreeSet<>(Set.of("remote", "cord"));
                    declared.removeIf(_ -> chance(random, 0.15));
                    Set<String> proved = new TreeSet<>(declared);
                    proved.removeIf(_ -> chance(random, 0.1));
                    List<String> doubts = chance(random, 0.1) ? List.of("too slow") : List.of();
                    var asked = new ArrayList<String>();
                    var answers = new TreeMap<String, Stub>();
                    for (String question : QUESTIONS) {
                        Outcome outcome =
                                chance(random, 0.75)
                                        ? Outcome.HOLDS
                                        : List.of(Outcome.values()).get(random.nextInt(4));
                        var severities = new ArrayList<Severity>();
                        if (chance(random, 0.15)) {
                            severities.add(Severity.STOPS);
                        }
                        if (chance(random, 0.5)) {
                            severities.add(Severity.WARNS);
                        }
                        answers.put(question, new Stub(question, outcome, severities));
                    }
                    Gate gate =
                            Gate.of(
                                    card,
                                    new Standing(Cards.DAY, states),
                                    new Gate.Conditions(
                                            _ -> undeclared,
                                            new KillsToday(declared, proved, doubts),
                                            unread,
                                            question -> {
                                                asked.add(question);
                                                return Objects.requireNonNull(
                                                        answers.get(question));
                                            }));

                    // The rule again, from what was drawn.
                    boolean needed = true;
                    for (Set<CardId> group : needs) {
                        boolean any = false;
                        for (CardId one : group) {
                            any |= states.get(one) instanceof State.Passed;
                        }
                        needed &= any;
                    }
                    boolean kills =
                            !card.killProof()
                                    || (!declared.isEmpty()
                                            && proved.equals(declared)
                                            && doubts.isEmpty());
                    boolean cheap = needed && kills && undeclared.isEmpty() && unread.isEmpty();
                    boolean review = true;
                    for (String question : questions) {
                        Stub answer = Objects.requireNonNull(answers.get(question));
                        review &=
                                answer.outcome() == Outcome.HOLDS
                                        && !answer.severities().contains(Severity.STOPS);
                    }
                    assertThat(gate instanceof Gate.Open).isEqualTo(cheap && review);
                    assertThat(asked)
                            .containsExactlyElementsOf(cheap ? questions : Set.<String>of());
                    if (gate instanceof Gate.Closed(var reasons)) {
                        reasons.forEach(r -> closedBy.add(r.getClass().getSimpleName()));
                        assertThat(reasons).allMatch(r -> !r.words().isBlank());
                    } else {
                        open[0]++;
                    }
                });
        assertThat(open[0]).isGreaterThan(300);
        assertThat(closedBy)
                .containsExactlyInAnyOrder(
                        "Unproved", "Kill", "Undeclared", "Unread", "Stops", "NotMet");
    }
}
