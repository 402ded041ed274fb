package liftwright.trials.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import liftwright.answer.Answer;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Sentence;
import liftwright.trials.CardId;
import liftwright.trials.Planned;

/** Whether a card may be done today. */
public sealed interface Gate {

    /** Nothing that is computed or recorded here speaks against it. */
    record Open() implements Gate {}

    /**
     * @param reasons all of one kind of cost: those of the review are looked for only where there
     *     is no other
     */
    record Closed(List<Reason> reasons) implements Gate {
        public Closed {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("closed for no reason");
            }
        }
    }

    /** Why a card is closed. */
    sealed interface Reason {

        /** For a reader, without an end mark. */
        String words();

        /**
         * A card that it rests on does not count today.
         *
         * @param anyOf one of these would do
         * @param states in the same order
         */
        record Unproved(List<CardId> anyOf, List<Standing.State> states) implements Reason {
            public Unproved {
                anyOf = List.copyOf(anyOf);
                states = List.copyOf(states);
            }

            @Override
            public String words() {
                var each = new ArrayList<String>();
                for (int i = 0; i < anyOf.size(); i++) {
                    each.add(anyOf.get(i).text() + " " + StateWords.of(states.get(i)));
                }
                return String.join(", or ", each);
            }
        }

        /**
         * A way to stop was not shown to work today.
         *
         * @param words what is left to do
         */
        record Kill(String words) implements Reason {}

        /**
         * The rig file does not say what the card needs.
         *
         * @param words what to declare
         */
        record Undeclared(String words) implements Reason {}

        /**
         * Files of passes cannot be read, so that an abort may be missing.
         *
         * @param words which
         */
        record Unread(String words) implements Reason {}

        /**
         * A question has a finding that stops.
         *
         * @param question which
         * @param code of the finding
         * @param sentence of the finding
         */
        record Stops(String question, String code, Sentence sentence) implements Reason {
            @Override
            public String words() {
                return question + ": " + SentenceText.of(sentence);
            }
        }

        /**
         * A question was not answered with yes.
         *
         * @param question which
         * @param outcome what it was answered with
         */
        record NotMet(String question, Outcome outcome) implements Reason {
            @Override
            public String words() {
                return question + ": " + outcome.label();
            }
        }
    }

    /**
     * What is known besides the passes.
     *
     * @param undeclared by card: what the rig file does not say and the card needs, in words
     * @param kills of today
     * @param unread files of passes that cannot be read, in words
     * @param answers asked for a question by its name; only when nothing cheaper closes the card
     */
    record Conditions(
            Function<Planned, List<String>> undeclared,
            KillsToday kills,
            List<String> unread,
            Function<String, Answer> answers) {
        public Conditions {
            unread = List.copyOf(unread);
        }
    }

    /** The gate of a card. */
    static Gate of(Planned card, Standing standing, Conditions conditions) {
        var reasons = new ArrayList<Reason>();
        conditions.unread().forEach(words -> reasons.add(new Reason.Unread(words)));
        for (Set<CardId> group : card.needs()) {
            if (group.stream().noneMatch(standing::isPassed)) {
                var sorted = List.copyOf(new TreeSet<>(group));
                reasons.add(
                        new Reason.Unproved(sorted, sorted.stream().map(standing::of).toList()));
            }
        }
        conditions
                .undeclared()
                .apply(card)
                .forEach(words -> reasons.add(new Reason.Undeclared(words)));
        if (card.killProof()) {
            conditions.kills().open().forEach(words -> reasons.add(new Reason.Kill(words)));
        }
        if (reasons.isEmpty()) {
            for (String question : new TreeSet<>(card.questions())) {
                reasons.addAll(ofReview(question, conditions.answers().apply(question)));
            }
        }
        return reasons.isEmpty() ? new Open() : new Closed(reasons);
    }

    private static List<Reason> ofReview(String question, Answer answer) {
        var reasons = new ArrayList<Reason>();
        if (!answer.question().equals(question)) {
            throw new IllegalStateException(
                    "asked for " + question + ", answered " + answer.question());
        }
        if (answer.verdict().outcome() != Outcome.HOLDS) {
            reasons.add(new Reason.NotMet(question, answer.verdict().outcome()));
        }
        for (Finding finding : answer.findings()) {
            if (finding.severity() == Finding.Severity.STOPS) {
                reasons.add(new Reason.Stops(question, finding.code(), finding.sentence()));
            }
        }
        return reasons;
    }

    /** All reasons in one line. */
    static String words(List<Reason> reasons) {
        return reasons.stream().map(Reason::words).collect(Collectors.joining("; "));
    }
}
